import type { WaterHeater } from "../water-heater.ts";
import { FIRST_HOUR } from "./rating-conditions.ts";
import {
  drawFor,
  isHeating,
  isUpperHeating,
  mountUnit,
  ratingPolicy,
  switchOff,
  type TestStand,
  waitUntil,
} from "./test-stand.ts";

/** One draw of the first-hour test. */
export interface FirstHourDraw {
  readonly start_s: number;
  readonly volume_L: number;
  readonly mean_C: number;
  /** Outlet temperature when the draw was ended [C]. */
  readonly end_C: number;
}

export interface FirstHourResult {
  readonly firstHour_L: number;
  readonly draws: readonly FirstHourDraw[];
  /** True where the last draw was forced at the end of the hour and counts in part. */
  readonly isLastForced: boolean;
}

/**
 * The first-hour test: draw at 3 gpm until the outlet has fallen 15 F, let the highest source that runs recover to its cut-out, draw again,
 * until an hour is over.
 * @param unit data sheet
 * @param stand the unit on the stand, at rating conditions where no other stand is given
 * @returns first-hour rating [L] and the draws behind it
 * @source 10 CFR 430 subpart B appendix E, 5.3.3 and 6.1, from memory: a draw that is running at the hour's end is
 *   finished; otherwise power is cut and a last draw is made down to the temperature at which the one before it ended,
 *   and counts by (T_del,n - T_min,n-1) / (T_del,n-1 - T_min,n-1)
 * @limits a unit that keeps up with the draw is stopped after an hour of it; which cut-out lets the next draw begin is read as the upper element's where it runs, else the last to run
 */
export function runFirstHour(unit: WaterHeater, stand = mountUnit(unit, ratingPolicy(unit))): FirstHourResult {
  const draws: FirstHourDraw[] = [];
  while (stand.engine.now_s < FIRST_HOUR.hour_s) {
    draws.push(drawDown(stand));
    waitForTop(stand);
  }
  const counted = sum(draws.map((draw) => draw.volume_L));
  const last = draws.at(-1);
  const ranOver = last !== undefined && last.start_s + last.volume_L / FIRST_HOUR.flow_L_s >= FIRST_HOUR.hour_s;
  if (last === undefined || ranOver) return { firstHour_L: counted, draws, isLastForced: false };
  switchOff(stand);
  const forced = drawDown(stand, last.end_C);
  const weight = (forced.mean_C - last.end_C) / (last.mean_C - last.end_C);
  const share = Math.min(1, Math.max(0, weight));
  return { firstHour_L: counted + share * forced.volume_L, draws: [...draws, forced], isLastForced: true };
}

/** Draws until the outlet has fallen by 15 F from its highest, or to a given temperature; an hour at the most. */
function drawDown(stand: TestStand, floor_C?: number): FirstHourDraw {
  const start_s = stand.engine.now_s;
  let highest_C = Number.NEGATIVE_INFINITY;
  let volume_L = 0;
  let warmth = 0;
  for (;;) {
    const { volume_L: litres, mean_C } = drawFor(stand, FIRST_HOUR.flow_L_s, FIRST_HOUR.reading_s);
    highest_C = Math.max(highest_C, mean_C);
    volume_L += litres;
    warmth += litres * mean_C;
    const isEndless = stand.engine.now_s - start_s >= FIRST_HOUR.hour_s;
    if (isEndless || mean_C <= (floor_C ?? highest_C - FIRST_HOUR.outletFall_K))
      return { start_s, volume_L, mean_C: warmth / volume_L, end_C: mean_C };
  }
}

/** Waits until the highest of the sources that recover has cut out, or the hour is over. */
function waitForTop(stand: TestStand): void {
  const { engine } = stand;
  waitUntil(stand, engine.now_s + FIRST_HOUR.reading_s);
  const isRecovering = isUpperHeating(stand) ? isUpperHeating : isHeating;
  while (isRecovering(stand) && engine.now_s < FIRST_HOUR.hour_s)
    waitUntil(stand, Math.min(FIRST_HOUR.hour_s, engine.now_s + FIRST_HOUR.reading_s));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
