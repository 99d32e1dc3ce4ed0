import type { Books } from "../books/books.ts";
import type { ElectricityPlan, Season } from "../books/prices.ts";
import { type NumberResult, q } from "../declaration/answer.ts";
import type { Chart, ChartSeries } from "../declaration/chart.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { DAYS_A_YEAR, HOURS_A_DAY, MONTHS_A_YEAR } from "./calendar.ts";
import { changesOfDay, type DayPart, type DayProgram, partsOfDay, type Setting, settingsOfDay } from "./day-program.ts";
import { dayPrices } from "./price-year.ts";
import type { SchedulePlan } from "./schedule-plan.ts";
import { bookSource, type UnitCase } from "./unit-case.ts";
import { SIMULATED_YEAR, YEAR_SEED } from "./year.ts";

type ScheduleId =
  | "saving_per_year"
  | "cost_per_year"
  | "cost_left_alone"
  | "energy_per_year"
  | "changes_a_day"
  | "cold_days"
  | "cold_days_left_alone"
  | "dear_share"
  | "dear_share_left_alone";

const SEARCH: Source = { basis: "computed", document: "Search over stated day programs, each through the same year" };

/** The numbers of the program that is advised, or of leaving the unit alone. */
export function scheduleResults(
  known: UnitCase,
  found: SchedulePlan,
  books: Books,
): readonly NumberResult<ScheduleId>[] {
  const { leftAlone, best = leftAlone, tried } = found;
  const prices = { ...bookSource(books.company, known.plan.name), edition: books.prices.setOn };
  const C_alone = q("money", leftAlone.cost_usd);
  const C = q("money", best.cost_usd);
  const E = q("energy", best.energy_kWh);
  const sample = { n: q("count", DAYS_A_YEAR), seed: q("count", YEAR_SEED) };
  const searched = { ...sample, n_tried: q("count", tried) };
  const cold = "n_cold = days with ≥ 1 L under t_want";
  const share = "E_dear / E";
  const E_alone = q("energy", leftAlone.energy_kWh);
  return [
    numberResult("saving_per_year", q("money", C_alone.value - C.value), "C_alone − C", { C_alone, C }, SEARCH, prices),
    numberResult("cost_per_year", C, "C = Σ_h E_h · p_h", { E, ...searched }, SIMULATED_YEAR, prices),
    numberResult("cost_left_alone", C_alone, "C = Σ_h E_h · p_h", { E: E_alone, ...sample }, SIMULATED_YEAR, prices),
    numberResult("energy_per_year", E, "E = Σ_h P_h · 1 h", sample, SIMULATED_YEAR, known.model.heater.source),
    numberResult("changes_a_day", q("count", best.changes), "max changes of a day", {}, SEARCH),
    numberResult("cold_days", q("count", best.coldDays), cold, sample, SIMULATED_YEAR),
    numberResult("cold_days_left_alone", q("count", leftAlone.coldDays), cold, sample, SIMULATED_YEAR),
    numberResult("dear_share", q("share", best.dearShare), share, { E }, SIMULATED_YEAR),
    numberResult("dear_share_left_alone", q("share", leftAlone.dearShare), share, { E: E_alone }, SIMULATED_YEAR),
  ];
}

/** One line of a program: from this hour on, on these days, this setting. */
export interface ProgramLine {
  readonly days: "weekdays" | "weekends";
  /** "6–9" and the like; empty for all the year. */
  readonly months: string;
  readonly hour: number;
  readonly setting: Setting;
}

/** The changes of a program, days that are alike told once. */
export function programLines(program: DayProgram, { seasons }: ElectricityPlan): readonly ProgramLine[] {
  const groups = new Map<string, { days: ProgramLine["days"]; months: number[]; lines: [number, Setting][] }>();
  for (const season of seasons)
    for (const days of ["weekdays", "weekends"] as const) {
      const prices = dayPrices(season, days === "weekends");
      const hourly = settingsOfDay(program, prices);
      const lines = changesOfDay(program, prices).flatMap((hour): [number, Setting][] => {
        const setting = hourly[hour];
        return setting === undefined ? [] : [[hour, setting]];
      });
      const key = JSON.stringify([days, lines]);
      const group = groups.get(key) ?? { days, months: [], lines };
      group.months.push(...season.months);
      groups.set(key, group);
    }
  return [...groups.values()].flatMap(({ days, months, lines }) =>
    lines.map(([hour, setting]) => ({ days, months: nameMonths(months), hour, setting })),
  );
}

/** "6–9", "1–5, 10–12"; empty for all twelve. */
function nameMonths(months: readonly number[]): string {
  if (months.length === MONTHS_A_YEAR) return "";
  const runs: [number, number][] = [];
  for (const month of [...months].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last !== undefined && last[1] === month - 1) last[1] = month;
    else runs.push([month, month]);
  }
  return runs.map(([from, to]) => (from === to ? `${from}` : `${from}–${to}`)).join(", ");
}

/** The weekday with the dearest hour: its prices, and what the program does in it. */
export function scheduleChart(plan: ElectricityPlan, program: DayProgram | undefined): Chart {
  const prices = dayPrices(dearestSeason(plan), false);
  const hours = Array.from({ length: HOURS_A_DAY }, (_, hour) => hour);
  const parts = partsOfDay(prices, program?.ahead_h ?? 0);
  const strip = (id: string, part: DayPart): ChartSeries => ({
    id,
    mark: "strip",
    kind: "share",
    x: hours,
    y: parts.map((one) => (one === part ? 1 : 0)),
  });
  const strips = [strip("heat_ahead", "before"), strip("dear_hours", "dear")];
  const setpoint: ChartSeries[] = program === undefined ? [] : [setpointLine(program, prices)];
  const price: ChartSeries = { id: "price", mark: "bar", kind: "energy_price", x: hours, y: prices };
  return {
    id: "schedule_day",
    xKind: "hour_of_day",
    series: [...setpoint, price, ...strips.filter(({ y }) => y.includes(1))],
  };
}

function dearestSeason({ seasons }: ElectricityPlan): Season {
  const dearest = (season: Season) => Math.max(...season.weekday_usd_kWh);
  return seasons.reduce((a, b) => (dearest(b) > dearest(a) ? b : a));
}

/** A line that goes straight up or down where the setpoint changes. */
function setpointLine(program: DayProgram, prices: readonly number[]): ChartSeries {
  const hourly = settingsOfDay(program, prices).map(({ setpoint_C }) => setpoint_C);
  const points = hourly.flatMap((setpoint_C, hour) => {
    const before_C = hourly[hour - 1] ?? setpoint_C;
    const corner = before_C === setpoint_C ? [] : [[hour - JUST_BEFORE_h, before_C] as const];
    return [...corner, [hour, setpoint_C] as const];
  });
  points.push([HOURS_A_DAY, hourly.at(-1) ?? 0]);
  return {
    id: "setpoint",
    mark: "line",
    kind: "temperature",
    x: points.map(([hour]) => hour),
    y: points.map(([, setpoint_C]) => setpoint_C),
  };
}

/** So near that the picture shows one upright line [h]. */
const JUST_BEFORE_h = 1e-3;
