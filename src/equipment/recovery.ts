import { askMap, prepareMap, setAir } from "../physics/heat-pump.ts";
import { powerAtVoltage_W } from "../physics/heating-element.ts";
import { requireWithin } from "../physics/require-within.ts";
import { STUDY_WATER } from "../physics/tank/tank-model.ts";
import type { HeatPumpSheet, WaterHeater } from "./water-heater.ts";

/** Heat of one litre for each kelvin [J/(L K)]. */
const WATER_J_L_K = STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K;
/** The map bends so little over this many equal parts of the rise that more change nothing in four digits. */
const PARTS = 50;

/** What one source can do for as long as the rise lasts. */
export interface Recovery {
  /** Mean heat into the water [W]. */
  readonly heat_W: number;
  /** Water warmed from cold to the setpoint [L/s]. */
  readonly rate_L_s: number;
}

/** Water that a steady heat warms: q = Q / (rho c (t_set - t_cold)) [L/s]. */
export function recoveryRate_L_s(heat_W: number, cold_C: number, setpoint_C: number): number {
  requireWithin("setpoint_C less cold_C", setpoint_C - cold_C, Number.MIN_VALUE, 100);
  return heat_W / (WATER_J_L_K * (setpoint_C - cold_C));
}

/**
 * Recovery of the elements.
 * @param unit data sheet
 * @param supply_V supply at the unit [V], 90..260
 * @param cold_C incoming water [C]
 * @param setpoint_C setpoint [C], above cold_C
 * @returns heat and rate, nothing without elements
 * @source first law; power by the square of the voltage; elements that the wiring keeps apart do not add up
 */
export function recoverByElements(
  unit: WaterHeater,
  supply_V: number,
  cold_C: number,
  setpoint_C: number,
): Recovery | undefined {
  if (unit.elements.length === 0) return undefined;
  const powers_W = unit.elements.map(({ rated_W, rated_V }) => powerAtVoltage_W(rated_W, rated_V, supply_V));
  const takeTurns = unit.controls.interlocks.some((pair) => pair.includes("upper") && pair.includes("lower"));
  const heat_W = takeTurns ? Math.max(...powers_W) : powers_W.reduce((sum, power_W) => sum + power_W, 0);
  return { heat_W, rate_L_s: recoveryRate_L_s(heat_W, cold_C, setpoint_C) };
}

/** Air at the heat pump. */
export interface AirAtUnit {
  readonly dryBulb_C: number;
  readonly wetBulb_C: number;
}

/**
 * Recovery of the heat pump.
 * @param sheet heat pump of the data sheet
 * @param air air at the unit; outside the sheet's limits the compressor stays off
 * @param cold_C incoming water [C]
 * @param setpoint_C setpoint [C], above cold_C; warmed only to the sheet's water limit where that is lower
 * @returns mean heat over the rise and rate; both 0 where air bars the compressor or water starts at the limit
 * @source performance map of the sheet; time for the rise is the integral of rho c dt / Q(t)
 * @limits water taken as evenly warm; the simulation is what decides
 */
export function recoverByHeatPump(sheet: HeatPumpSheet, air: AirAtUnit, cold_C: number, setpoint_C: number): Recovery {
  const { lowest_C, highest_C } = sheet.airLimits;
  const warmest_C = Math.min(setpoint_C, sheet.waterLimit.highest_C);
  if (air.dryBulb_C < lowest_C || air.dryBulb_C > highest_C || warmest_C <= cold_C) return { heat_W: 0, rate_L_s: 0 };
  const map = prepareMap(sheet);
  setAir(map, air.wetBulb_C);
  let inverse = 0;
  for (let part = 0; part < PARTS; part += 1) {
    map.water_C = cold_C + ((warmest_C - cold_C) * (part + 0.5)) / PARTS;
    askMap(map);
    inverse += 1 / map.heat_W / PARTS;
  }
  const heat_W = 1 / inverse;
  return { heat_W, rate_L_s: recoveryRate_L_s(heat_W, cold_C, warmest_C) };
}
