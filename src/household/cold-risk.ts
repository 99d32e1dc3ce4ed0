import type { WaterHeater } from "../equipment/water-heater.ts";
import { cell } from "../physics/tank/cell.ts";
import { type Draws, makeDrawColumns, orderDraws } from "../physics/tank/draw-list.ts";
import type { PlanStep, RunOptions, Site } from "../physics/tank/simulate.ts";
import { simulate } from "../physics/tank/simulate.ts";
import type { RunSummary } from "../physics/tank/summary.ts";
import { type Household, type SampledDay, sampleDay } from "./sample-day.ts";
import { shareInterval } from "./share-interval.ts";

/** How often a household runs cold, counted over sampled days. */
export interface ColdRisk {
  readonly days: number;
  /** Days in which somebody got water under the wanted temperature. */
  readonly coldDays: number;
  readonly share: number;
  /** Standard error of that share: sqrt(p (1 - p) / n), by the rule of succession so that 0 of n is not called certain. */
  readonly error: number;
  /** Ends between which the true share lies with 95 % confidence. */
  readonly low: number;
  readonly high: number;
  /** Water delivered too cold on the worst day [L]. */
  readonly worstShortfall_L: number;
  /** The day with the most water delivered too cold; where none was, the day with the most hot water drawn. */
  readonly worstDay: number;
  /** Water delivered too cold on each day [L]. */
  readonly short_L: Float64Array;
  readonly summary: RunSummary;
}

export interface ColdRiskCase {
  readonly unit: WaterHeater;
  readonly site: Site;
  readonly plan: readonly [PlanStep, ...PlanStep[]];
  readonly household: Household;
  readonly wanted_C: number;
  readonly days: number;
  readonly seed: number;
  /** The days themselves, where they were drawn before; else they are drawn from household, days and seed. */
  readonly sampled?: readonly SampledDay[];
  /** The draws of those days, where they were listed before (`drawsOf`, for the same wanted temperature); goes before `sampled`. */
  readonly draws?: Draws;
}

const DAY_s = 86_400;
/** Appliances take water as it comes; they are not counted as people who run cold. */
const APPLIANCE_WANTED_C = 0;
/** A draw this little too cold for this little water is nobody's cold shower: judgement. */
const NOTICED_L = 1;

/**
 * Runs a unit through sampled days, one after the other, and counts the days in which somebody ran cold.
 * @param known unit, site, modes, household and sample
 * @param options trace and others of the simulation
 * @returns share of cold days with its sampling error, and the run in numbers
 * @source days: `sample-day.ts`; tank: `physics/tank/simulate.ts`
 * @limits a day is cold from one litre under the wanted temperature on; appliances are not counted
 */
export function findColdRisk(known: ColdRiskCase, options: RunOptions = {}): ColdRisk {
  const { days, draws } = daysAndDraws(known);
  const schedule = { duration_s: days * DAY_s, draws, plan: known.plan };
  const run = simulate(known.unit, known.site, schedule, options);
  const short_L = sumByDay(draws, run.draws.short_L, days);
  const coldDays = short_L.filter(isCold).length;
  const cautious = (coldDays + 1) / (days + 2);
  const worstShortfall_L = Math.max(...short_L);
  const heaviest = coldDays > 0 ? short_L : sumByDay(draws, run.draws.hot_L, days);
  return {
    days,
    coldDays,
    share: coldDays / days,
    error: Math.sqrt((cautious * (1 - cautious)) / days),
    ...shareInterval(coldDays, days),
    worstShortfall_L,
    worstDay: heaviest.indexOf(Math.max(...heaviest)),
    short_L,
    summary: run.summary,
  };
}

/** Whether a day on which so much water was too cold counts as cold. */
export function isCold(short_L: number): boolean {
  return short_L >= NOTICED_L;
}

function daysAndDraws(known: ColdRiskCase): { readonly days: number; readonly draws: Draws } {
  if (known.draws !== undefined) return { days: known.sampled?.length ?? known.days, draws: known.draws };
  const sampled = known.sampled ?? sampleDays(known.household, known.seed, known.days);
  return { days: sampled.length, draws: drawsOf(sampled, known.wanted_C) };
}

/** The first so many days of a sample. */
export function sampleDays(household: Household, seed: number, days: number): readonly SampledDay[] {
  return Array.from({ length: days }, (_, day) => sampleDay(household, seed, day));
}

/** The draws of sampled days, one day after the other, on the time line of a run. */
export function drawsOf(sampled: readonly SampledDay[], wanted_C: number): Draws {
  const columns = makeDrawColumns(sampled.reduce((sum, { uses }) => sum + uses.length, 0));
  let i = 0;
  sampled.forEach(({ uses }, day) => {
    for (const { start_s, duration_s, flow_L_s, isMixed } of uses) {
      columns.start_s[i] = day * DAY_s + start_s;
      columns.duration_s[i] = Math.max(1, duration_s);
      columns.volume_L[i] = flow_L_s * duration_s;
      columns.wanted_C[i] = isMixed ? wanted_C : APPLIANCE_WANTED_C;
      columns.isMixed[i] = isMixed ? 1 : 0;
      i += 1;
    }
  });
  return orderDraws(columns);
}

/** Sums what each draw got over the day in which it began. */
function sumByDay(draws: Draws, volume_L: Float64Array, days: number): Float64Array {
  const sums_L = new Float64Array(days);
  for (let i = 0; i < draws.count; i++) {
    const day = Math.min(days - 1, Math.floor(cell(draws.start_s, i) / DAY_s));
    sums_L[day] = cell(sums_L, day) + cell(volume_L, i);
  }
  return sums_L;
}
