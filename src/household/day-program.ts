import type { ElectricityPlan } from "../books/prices.ts";
import { POLICIES } from "../equipment/policies.ts";
import type { PlanStep } from "../physics/tank/simulate.ts";
import { DAY_s, DAYS_A_YEAR, HOUR_s, HOURS_A_DAY, isWeekend, monthOfDay } from "./calendar.ts";
import { dayPrices, seasonOf } from "./price-year.ts";
import type { RunMode } from "./unit-case.ts";

/** What a unit is set to for some hours. */
export interface Setting {
  readonly mode: RunMode;
  readonly setpoint_C: number;
}
/** Part of a day: dear hours, hours before them, all others of such a day; or a day without dear hours. */
export type DayPart = "dear" | "before" | "other" | "level";
/** A way to run a unit around the dear hours of a price plan. */
export interface DayProgram {
  /** Hours before the dear ones in which it heats ahead; 0 for none. */
  readonly ahead_h: number;
  readonly settings: Readonly<Record<DayPart, Setting>>;
}

const ALL_DAYS: readonly number[] = Array.from({ length: DAYS_A_YEAR }, (_, day) => day);
/** Hours that cost this much more than the day's mean are dear: judgement. */
const DEAR = 1.2;

/** The hours of a day that cost clearly more than the others. */
export function dearHours(prices: readonly number[]): readonly boolean[] {
  const mean = prices.reduce((sum, price) => sum + price, 0) / prices.length;
  return prices.map((price) => price > DEAR * mean);
}

/** The part of the day that each hour is in, hour 0 first. */
export function partsOfDay(prices: readonly number[], ahead_h: number): readonly DayPart[] {
  const isDear = dearHours(prices);
  if (!isDear.includes(true)) return isDear.map(() => "level");
  return isDear.map((dear, hour) => {
    if (dear) return "dear";
    return isDear.slice(hour + 1, hour + 1 + ahead_h).includes(true) ? "before" : "other";
  });
}

/** The setting of each hour of a day, hour 0 first. */
export function settingsOfDay({ ahead_h, settings }: DayProgram, prices: readonly number[]): readonly Setting[] {
  return partsOfDay(prices, ahead_h).map((part) => settings[part]);
}

/** Hours at which the setting changes when this day follows itself. */
export function changesOfDay(program: DayProgram, prices: readonly number[]): readonly number[] {
  const hourly = settingsOfDay(program, prices);
  return hourly.flatMap((setting, hour) => (isSame(setting, hourly.at(hour - 1)) ? [] : [hour]));
}

/** The most changes on any day of the year. */
export function mostChanges(program: DayProgram, plan: ElectricityPlan): number {
  const days = plan.seasons.flatMap((season) => [dayPrices(season, false), dayPrices(season, true)]);
  return Math.max(...days.map((prices) => changesOfDay(program, prices).length));
}

/**
 * A program as the simulation takes it: every change of a year, in order.
 * @param days days of the year that are run, one after the other; all of them where absent
 */
export function planYear(
  program: DayProgram,
  plan: ElectricityPlan,
  days: readonly number[] = ALL_DAYS,
): readonly [PlanStep, ...PlanStep[]] {
  const steps: PlanStep[] = [];
  let last: Setting | undefined;
  days.forEach((day, place) => {
    const prices = dayPrices(seasonOf(plan, monthOfDay(day)), isWeekend(day));
    const hourly = settingsOfDay(program, prices);
    for (let hour = 0; hour < HOURS_A_DAY; hour++) {
      const setting = hourly[hour];
      if (setting === undefined || isSame(setting, last)) continue;
      steps.push(stepOf(setting, place * DAY_s + hour * HOUR_s));
      last = setting;
    }
  });
  const [first = stepOf(program.settings.level, 0), ...others] = steps;
  return [first, ...others];
}

function stepOf({ mode, setpoint_C }: Setting, from_s: number): PlanStep {
  return { from_s, policy: POLICIES[mode], setpoint_C };
}

function isSame(a: Setting, b: Setting | undefined): boolean {
  return b !== undefined && a.mode === b.mode && a.setpoint_C === b.setpoint_C;
}
