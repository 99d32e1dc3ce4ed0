import type { ElectricityPlan } from "../books/prices.ts";
import type { ReportProgress } from "../declaration/topic.ts";
import { DAY_s } from "./calendar.ts";
import { isCold } from "./cold-risk.ts";
import { type DayProgram, dearHours, mostChanges, planYear } from "./day-program.ts";
import { dayPrices, priceHours } from "./price-year.ts";
import type { Household } from "./sample-day.ts";
import { candidates, leaveAlone, type ScheduleFacts } from "./schedule-candidates.ts";
import { VALVE_C } from "./size-case.ts";
import type { UnitCase } from "./unit-case.ts";
import { type SampledYear, type SimulatedYear, sampleWeeks, sampleYear, simulateYear } from "./year.ts";

/** A program with what its year came to. */
export interface ProgramYear {
  readonly program: DayProgram;
  readonly changes: number;
  readonly cost_usd: number;
  readonly energy_kWh: number;
  readonly coldDays: number;
  readonly shortfall_L: number;
  /** Water delivered too cold on each day [L]. */
  readonly short_L: Float64Array;
  /** False where the run was ended early, colder than leaving the unit alone; its numbers then stop there. */
  readonly isWhole: boolean;
  /** Share of the electricity that was used in dear hours. */
  readonly dearShare: number;
}
/** Cold days of two programs, day by day. */
interface ColdDaysCompared {
  readonly both: number;
  readonly onlyWith: number;
  readonly onlyAlone: number;
}
export interface SchedulePlan {
  readonly leftAlone: ProgramYear;
  /** The cheapest that leaves nobody colder; nothing where none is cheaper than leaving it alone. */
  readonly best: ProgramYear | undefined;
  /** The cheapest of all, where it was refused because somebody would run cold more often. */
  readonly refused: ProgramYear | undefined;
  readonly tried: number;
  /** How many days of the year all were tried on; how many then went through all of it, or until they were colder. */
  readonly lookedAt_days: number;
  readonly ranWhole: number;
}

/** Water that may be short beyond leaving it alone, in the whole year: rounding, not a shower [L]. */
const HAIR_L = 1;

/** A program whose looked-at weeks cost this much more than the best's, of leaving it alone, is not run whole: judgement. */
const MARGIN = 0.03;
/** The cheapest looks, of which one is nearly always the cheapest year too: judgement. */
const LOOKS_RUN_OUT = 2;

/**
 * Searches a small set of day programs for the cheapest year that leaves nobody colder than leaving the unit alone.
 * @param known unit, place, setpoint, a plan with dear hours
 * @param facts household, and whether a mixing valve lets the tank be stored hotter
 * @returns the unit left alone, the best program, and the cheapest one that was refused
 * @source every program is run through the same 28 days (`sampleWeeks`) and priced by the hour; those that may be the
 * cheapest are run through the whole year of sampled days (`simulateYear`), and only that decides
 * @limits a search over stated candidates, not a proof that none better exists; one year of sampled days
 */
export function planSchedule(known: UnitCase, facts: ScheduleFacts, report: ReportProgress): SchedulePlan {
  const year = sampleYear(householdOf(facts), facts.wanted_C);
  const programs = candidates(known, facts);
  const total = 2 * programs.length + 1;
  const leftAlone = runProgram(known, facts, leaveAlone(known), year);
  const weeks = sampleWeeks(year);
  const aloneLook = runProgram(known, facts, leaveAlone(known), weeks);
  report(1, total);
  const looks = programs.map((program, index) => {
    const look = runProgram(known, facts, program, weeks);
    report(index + 2, total);
    return look;
  });
  const runs = runHopeful(looks, leftAlone, aloneLook, ({ program }, index) => {
    report(programs.length + 1 + index, total);
    // The cheapest looks are run to their end even where they are refused, to say what the cheapest would have saved.
    const enough_L = index < LOOKS_RUN_OUT ? undefined : leftAlone.shortfall_L + HAIR_L;
    return runProgram(known, facts, program, year, enough_L);
  });
  report(total, total);
  const cheapest = runs
    .filter(({ cost_usd, isWhole }) => isWhole && cost_usd < leftAlone.cost_usd)
    .sort((a, b) => a.cost_usd - b.cost_usd);
  const best = cheapest.find((run) => leavesNobodyColder(run, leftAlone));
  const [first] = cheapest;
  const refused = first === best ? undefined : first;
  return { leftAlone, best, refused, tried: programs.length, lookedAt_days: weeks.days.length, ranWhole: runs.length };
}

/**
 * Runs the programs that may be the best through the whole year, the cheapest look first, until the rest are too dear.
 * A run ends as soon as more water was too cold than when left alone, because then nothing can save it.
 */
function runHopeful(
  looks: readonly ProgramYear[],
  leftAlone: ProgramYear,
  aloneLook: ProgramYear,
  runWhole: (look: ProgramYear, index: number) => ProgramYear,
): readonly ProgramYear[] {
  const margin_usd = MARGIN * aloneLook.cost_usd;
  const hopeful = looks
    .filter(({ cost_usd }) => cost_usd < aloneLook.cost_usd + margin_usd)
    .sort((a, b) => a.cost_usd - b.cost_usd);
  const runs: ProgramYear[] = [];
  let enough_usd = Number.POSITIVE_INFINITY;
  for (const look of hopeful) {
    if (look.cost_usd > enough_usd) break;
    const run = runWhole(look, runs.length);
    runs.push(run);
    if (run.cost_usd < leftAlone.cost_usd && leavesNobodyColder(run, leftAlone))
      enough_usd = Math.min(enough_usd, look.cost_usd + margin_usd);
  }
  return runs;
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

/** Holds two years of the same days against each other, day by day. */
export function compareDays(run: ProgramYear, leftAlone: ProgramYear): ColdDaysCompared {
  const isColdAlone = leftAlone.short_L.map((short_L) => (isCold(short_L) ? 1 : 0));
  const both = run.short_L.filter((short_L, day) => isCold(short_L) && isColdAlone[day] === 1).length;
  return { both, onlyWith: run.coldDays - both, onlyAlone: leftAlone.coldDays - both };
}

/** A program's whole year. */
export function runWholeYear(known: UnitCase, facts: ScheduleFacts, program: DayProgram): ProgramYear {
  return runProgram(known, facts, program, sampleYear(householdOf(facts), facts.wanted_C));
}

function householdOf({ people, bathrooms }: ScheduleFacts): Household {
  return { people, bathrooms };
}

function runProgram(
  known: UnitCase,
  facts: ScheduleFacts,
  program: DayProgram,
  year: SampledYear,
  enoughShort_L?: number,
): ProgramYear {
  const { model, place, supply_V, plan } = known;
  const valve = facts.mixing_valve === true ? { mixingValve_C: VALVE_C } : {};
  const steps = planYear(program, plan, year.days);
  const run = simulateYear({ unit: model.heater, place, supply_V, plan: steps, ...valve }, year, enoughShort_L);
  return {
    program,
    changes: mostChanges(program, plan),
    cost_usd: priceHours(run.hourly_kWh, plan, year.days).total_usd,
    energy_kWh: run.summary.electricity_kWh,
    coldDays: run.coldDays,
    shortfall_L: run.summary.shortfall_L,
    short_L: run.short_L,
    isWhole: run.summary.duration_s === year.days.length * DAY_s,
    dearShare: dearShare(known, run, year.days),
  };
}

/** Prices the year at 1 in dear hours and 0 in all others. */
function dearShare({ plan }: UnitCase, { hourly_kWh, summary }: SimulatedYear, days: readonly number[]): number {
  const mark = (prices: readonly number[]) => dearHours(prices).map(Number);
  const marked = plan.seasons.map((season) => ({
    ...season,
    weekday_usd_kWh: mark(dayPrices(season, false)),
    weekend_usd_kWh: mark(dayPrices(season, true)),
  }));
  const [first, ...others] = marked;
  if (first === undefined || summary.electricity_kWh <= 0) return 0;
  return priceHours(hourly_kWh, { ...plan, seasons: [first, ...others] }, days).total_usd / summary.electricity_kWh;
}
