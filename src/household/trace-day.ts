import { cell } from "../physics/tank/cell.ts";
import { simulate } from "../physics/tank/simulate.ts";
import { makeTrace, type Trace } from "../physics/tank/trace.ts";
import { type ColdRiskCase, drawsOf } from "./cold-risk.ts";
import type { SampledDay } from "./sample-day.ts";

/** One day, minute by minute. */
export interface TracedDay {
  /** Trace of the day and of the days before it that warmed the tank up. */
  readonly trace: Trace;
  /** First interval of the day. */
  readonly from: number;
  /** Coldest water that left the tank while somebody drew [C]; nothing when nobody did. */
  readonly lowestOutlet_C: number | undefined;
}

const DAY_s = 86_400;
const EVERY_s = 60;
const LAYERS = 12;
/** Days run before the one that is shown, so that it begins with the tank as the household leaves it. */
const DAYS_BEFORE = 2;

/**
 * Runs one sampled day again and keeps everything that happened.
 * @param known the case that was counted
 * @param sampled its days
 * @param day index of the day to look at
 * @returns minute by minute outlet, layers, draws and sources
 * @limits starts two days earlier with a hot tank, so the day is not the counted one to the last drop
 */
export function traceDay(known: ColdRiskCase, sampled: readonly SampledDay[], day: number): TracedDay {
  const first = Math.max(0, day - DAYS_BEFORE);
  const shown = sampled.slice(first, day + 1);
  const duration_s = shown.length * DAY_s;
  const trace = makeTrace(duration_s, EVERY_s, LAYERS);
  const schedule = { duration_s, draws: drawsOf(shown, known.wanted_C), plan: known.plan };
  simulate(known.unit, known.site, schedule, { trace, layers: LAYERS });
  const from = (duration_s - DAY_s) / EVERY_s;
  return { trace, from, lowestOutlet_C: findLowestOutlet(trace, from) };
}

function findLowestOutlet(trace: Trace, from: number): number | undefined {
  let lowest_C: number | undefined;
  for (let i = from; i < trace.count; i++) {
    if (cell(trace.drawn_L, i) === 0) continue;
    lowest_C = Math.min(lowest_C ?? Number.POSITIVE_INFINITY, cell(trace.outlet_C, i));
  }
  return lowest_C;
}
