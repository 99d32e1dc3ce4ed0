import type { ElectricityPlan } from "../books/prices.ts";
import type { ReportProgress } from "../declaration/topic.ts";
import { toBase } from "../units/convert.ts";
import { type DayProgram, dearHours, mostChanges, planYear, type Setting } from "./day-program.ts";
import { dayPrices, priceHours } from "./price-year.ts";
import type { Household } from "./sample-day.ts";
import { VALVE_C } from "./size-case.ts";
import type { RunMode, UnitCase } from "./unit-case.ts";
import { type SampledYear, type SimulatedYear, sampleYear, simulateYear } from "./year.ts";

export interface ScheduleFacts {
  readonly people: number;
  readonly bathrooms: number;
  readonly wanted_C: number;
  readonly mixing_valve: boolean | undefined;
}
/** A program with what its year came to. */
export interface ProgramYear {
  readonly program: DayProgram;
  readonly changes: number;
  readonly cost_usd: number;
  readonly energy_kWh: number;
  readonly coldDays: number;
  readonly shortfall_L: number;
  /** Share of the electricity that was used in dear hours. */
  readonly dearShare: number;
}
export interface SchedulePlan {
  readonly leftAlone: ProgramYear;
  /** The cheapest that leaves nobody colder; nothing where none is cheaper than leaving it alone. */
  readonly best: ProgramYear | undefined;
  /** The cheapest of all, where it was refused because somebody would run cold more often. */
  readonly refused: ProgramYear | undefined;
  readonly tried: number;
}

/** Hours of heating ahead that are tried. */
const AHEAD_h = [0, 2, 4] as const;
/** How far the tank may be let down outside the hours ahead, so that there is something to heat up to [K]. */
const LET_DOWN_K = toBase(9, "F_diff");
/** Above the wanted temperature by this, a lowered setpoint still delivers it: judgement [K]. */
const OVER_WANTED_K = toBase(5, "F_diff");
/** With a mixing valve heat may be stored up to here, where health guidance wants it anyway [C]. */
const STORE_AHEAD_C = toBase(140, "F");
/** Less than this is no change worth making [K]. */
const LEAST_CHANGE_K = 1;
/** Water that may be short beyond leaving it alone, in the whole year: rounding, not a shower [L]. */
const HAIR_L = 1;

/**
 * Searches a small set of day programs for the cheapest year that leaves nobody colder than leaving the unit alone.
 * @param known unit, place, setpoint, a plan with dear hours
 * @param facts household, and whether a mixing valve lets the tank be stored hotter
 * @returns the unit left alone, the best program, and the cheapest one that was refused
 * @source every program is run through the same year of sampled days (`simulateYear`) and priced by the hour
 * @limits a search over stated candidates, not a proof that none better exists; one year of sampled days
 */
export function planSchedule(known: UnitCase, facts: ScheduleFacts, report: ReportProgress): SchedulePlan {
  const household: Household = { people: facts.people, bathrooms: facts.bathrooms };
  const year = sampleYear(household, facts.wanted_C);
  const programs = candidates(known, facts);
  const total = programs.length + 1;
  const leftAlone = runProgram(known, facts, leaveAlone(known), year);
  report(1, total);
  const runs = programs.map((program, index) => {
    const run = runProgram(known, facts, program, year);
    report(index + 2, total);
    return run;
  });
  const cheapest = runs.filter(({ cost_usd }) => cost_usd < leftAlone.cost_usd).sort((a, b) => a.cost_usd - b.cost_usd);
  const best = cheapest.find((run) => leavesNobodyColder(run, leftAlone));
  const [first] = cheapest;
  return { leftAlone, best, refused: first === best ? undefined : first, tried: programs.length };
}

/** True where a plan has hours that are worth avoiding. */
export function hasDearHours({ seasons }: ElectricityPlan): boolean {
  const days = seasons.flatMap((season) => [dayPrices(season, false), dayPrices(season, true)]);
  return days.some((prices) => dearHours(prices).includes(true));
}

/** True when no more days are cold, and no more water is, than when the unit is left alone. */
export function leavesNobodyColder(run: ProgramYear, leftAlone: ProgramYear): boolean {
  return run.coldDays <= leftAlone.coldDays && run.shortfall_L <= leftAlone.shortfall_L + HAIR_L;
}

function leaveAlone({ mode, setpoint_C }: UnitCase): DayProgram {
  const usual: Setting = { mode, setpoint_C };
  return { ahead_h: 0, settings: { dear: usual, before: usual, other: usual, level: usual } };
}

/**
 * The programs that are tried: in dear hours up to three setpoints, in the usual mode or with the heat pump alone; before
 * them two or four hours of heating ahead, from a tank that was let down or, with a mixing valve, to a hotter one.
 */
export function candidates(known: UnitCase, facts: ScheduleFacts): readonly DayProgram[] {
  const { model, mode, plan } = known;
  const modes = new Set<RunMode>([mode]);
  if (model.heater.controls.policies.includes("heat_pump_only")) modes.add("heat_pump_only");
  const programs = [...modes].flatMap((dearMode) =>
    dearSetpoints_C(known, facts).flatMap((dear_C) =>
      aheadOf(known, facts).map(({ ahead_h, before_C, other_C }): DayProgram => {
        const usual: Setting = { mode, setpoint_C: known.setpoint_C };
        return {
          ahead_h,
          settings: {
            dear: { mode: dearMode, setpoint_C: Math.min(dear_C, other_C) },
            before: { mode, setpoint_C: before_C },
            other: { mode, setpoint_C: other_C },
            level: usual,
          },
        };
      }),
    ),
  );
  return programs.filter((program) => {
    const changes = mostChanges(program, plan);
    return changes > 0 && changes <= model.changesADay;
  });
}

/** Setpoints for dear hours: the usual one, one that still delivers what is wanted, and the lowest of the unit. */
function dearSetpoints_C({ model, setpoint_C }: UnitCase, { wanted_C }: ScheduleFacts): readonly number[] {
  const [lowest_C] = model.heater.controls.setpoint_C;
  const still_C = wanted_C + OVER_WANTED_K;
  const all = [setpoint_C, still_C, lowest_C];
  return [...new Set(all.map((low_C) => Math.min(setpoint_C, Math.max(lowest_C, low_C))))];
}

interface Ahead {
  readonly ahead_h: number;
  readonly before_C: number;
  readonly other_C: number;
}

function aheadOf({ model, setpoint_C }: UnitCase, { wanted_C, mixing_valve }: ScheduleFacts): readonly Ahead[] {
  const [lowest_C, highest_C] = model.heater.controls.setpoint_C;
  const letDown_C = Math.max(lowest_C, wanted_C, setpoint_C - LET_DOWN_K);
  const hotter_C = Math.min(highest_C, STORE_AHEAD_C);
  return AHEAD_h.flatMap((ahead_h): Ahead[] => {
    if (ahead_h === 0) return [{ ahead_h, before_C: setpoint_C, other_C: setpoint_C }];
    const letDown = { ahead_h, before_C: setpoint_C, other_C: letDown_C };
    const hotter = { ahead_h, before_C: hotter_C, other_C: setpoint_C };
    return [
      ...(letDown_C <= setpoint_C - LEAST_CHANGE_K ? [letDown] : []),
      ...(mixing_valve === true && hotter_C >= setpoint_C + LEAST_CHANGE_K ? [hotter] : []),
    ];
  });
}

function runProgram(known: UnitCase, facts: ScheduleFacts, program: DayProgram, year: SampledYear): ProgramYear {
  const { model, place, supply_V, plan } = known;
  const valve = facts.mixing_valve === true ? { mixingValve_C: VALVE_C } : {};
  const run = simulateYear({ unit: model.heater, place, supply_V, plan: planYear(program, plan), ...valve }, year);
  return {
    program,
    changes: mostChanges(program, plan),
    cost_usd: priceHours(run.hourly_kWh, plan).total_usd,
    energy_kWh: run.summary.electricity_kWh,
    coldDays: run.coldDays,
    shortfall_L: run.summary.shortfall_L,
    dearShare: dearShare(known, run),
  };
}

/** Prices the year at 1 in dear hours and 0 in all others. */
function dearShare({ plan }: UnitCase, { hourly_kWh, summary }: SimulatedYear): number {
  const mark = (prices: readonly number[]) => dearHours(prices).map(Number);
  const marked = plan.seasons.map((season) => ({
    ...season,
    weekday_usd_kWh: mark(dayPrices(season, false)),
    weekend_usd_kWh: mark(dayPrices(season, true)),
  }));
  const [first, ...others] = marked;
  if (first === undefined || summary.electricity_kWh <= 0) return 0;
  return priceHours(hourly_kWh, { ...plan, seasons: [first, ...others] }).total_usd / summary.electricity_kWh;
}
