import type { WaterHeater } from "../water-heater.ts";
import { drawPattern, type PatternDraw, type UsageBin } from "./draw-patterns.ts";
import { ELEMENT_RECOVERY, RATING } from "./rating-conditions.ts";
import {
  drawFor,
  electricity_J,
  isHeating,
  meanTank_C,
  mountUnit,
  ratingPolicy,
  switchOff,
  type TestStand,
  waitUntil,
} from "./test-stand.ts";

export interface SimulatedUseResult {
  /** Uniform energy factor: heat delivered at the nominal rise over adjusted electricity [-]. */
  readonly uef: number;
  readonly recoveryEfficiency: number;
  readonly electricity_kWh: number;
  readonly adjusted_kWh: number;
  readonly delivered_kWh: number;
  readonly drawn_L: number;
  readonly lowestMeanDelivered_C: number;
}

/** What the first recovery of the day took and gave. */
interface Recovery {
  readonly heat_J: number;
  readonly electricity_J: number;
}

const HOUR_s = 3600;
const REST_s = HOUR_s;
const POWER_CUT_h = 23;
const DAY_h = 24;
const LOOK_s = 60;
const J_PER_kWh = 3.6e6;

/**
 * The 24-hour simulated-use test.
 * @param unit data sheet
 * @param bin usage bin, from the first-hour rating
 * @returns uniform energy factor and what it is made of
 * @source 10 CFR 430 subpart B appendix E, 5.4 and 6.3-6.4, from memory: an hour of rest, the draws of the bin, power
 *   cut in the 24th hour unless a recovery is under way; the stored heat and the rise are put on nominal values by the
 *   recovery efficiency; ambient is nominal here, so its correction is nil
 * @limits volumes are taken at the run's constant density
 */
export function runSimulatedUse(unit: WaterHeater, bin: UsageBin): SimulatedUseResult {
  const stand = mountUnit(unit, ratingPolicy(unit));
  waitUntil(stand, REST_s);
  const { water_J_L_K } = stand.engine.tank.model;
  const [used_J, mean_C] = [electricity_J(stand), meanTank_C(stand)];
  const day = runDay(stand, drawPattern(bin), used_J, mean_C);
  const efficiency = unit.heatPump ? day.recovery.heat_J / day.recovery.electricity_J : ELEMENT_RECOVERY.efficiency;
  const storedMore_J = unit.tank.volume_L * water_J_L_K * (meanTank_C(stand) - mean_C);
  const electricity = electricity_J(stand) - used_J;
  const nominal_J = day.drawn_L * water_J_L_K * RATING.rise_K;
  const adjusted_J = electricity - storedMore_J / efficiency + (nominal_J - day.delivered_J) / efficiency;
  return {
    uef: nominal_J / adjusted_J,
    recoveryEfficiency: efficiency,
    electricity_kWh: electricity / J_PER_kWh,
    adjusted_kWh: adjusted_J / J_PER_kWh,
    delivered_kWh: day.delivered_J / J_PER_kWh,
    drawn_L: day.drawn_L,
    lowestMeanDelivered_C: day.lowest_C,
  };
}

/** Runs the draws and the standby; watches for the first recovery's end. */
function runDay(stand: TestStand, draws: readonly PatternDraw[], used_J: number, mean_C: number) {
  const { water_J_L_K } = stand.engine.tank.model;
  const heatInTank_J = (t_C: number) => stand.unit.tank.volume_L * water_J_L_K * (t_C - mean_C);
  let [drawn_L, delivered_J, lowest_C] = [0, 0, Number.POSITIVE_INFINITY];
  let recovery: Recovery | undefined;
  const watch = (until_s: number) => {
    recovery ??= watchRecovery(stand, until_s, () => ({
      heat_J: delivered_J + heatInTank_J(meanTank_C(stand)),
      electricity_J: electricity_J(stand) - used_J,
    }));
    waitUntil(stand, until_s);
  };
  for (const draw of draws) {
    watch(REST_s + draw.start_s);
    const { volume_L, mean_C: out_C } = drawFor(stand, draw.flow_L_s, draw.volume_L / draw.flow_L_s);
    drawn_L += volume_L;
    delivered_J += volume_L * water_J_L_K * (out_C - RATING.supply_C);
    lowest_C = Math.min(lowest_C, out_C);
  }
  watch(REST_s + POWER_CUT_h * HOUR_s);
  if (!isHeating(stand)) switchOff(stand);
  watch(REST_s + DAY_h * HOUR_s);
  if (recovery === undefined) throw new RangeError(`${stand.unit.id} never recovered in the test day`);
  return { drawn_L, delivered_J, lowest_C, recovery };
}

/** Waits minute by minute while a recovery is under way; takes the reading when it ends before `until_s`. */
function watchRecovery(stand: TestStand, until_s: number, read: () => Recovery): Recovery | undefined {
  const { engine } = stand;
  let wasHeating = false;
  while (engine.now_s < until_s) {
    waitUntil(stand, Math.min(until_s, engine.now_s + LOOK_s));
    if (wasHeating && !isHeating(stand)) return read();
    wasHeating = isHeating(stand);
    if (!wasHeating) return undefined;
  }
  return undefined;
}
