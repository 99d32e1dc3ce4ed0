import { condensatePerHeat_kg_J } from "../cooling-coil.ts";
import { askMap, setAir } from "../heat-pump.ts";
import { wetBulb_C } from "../moist-air.ts";
import { cell, whole } from "./cell.ts";
import { SWITCH_TOLERANCE_K } from "./control.ts";
import type { CondenserState, Engine } from "./engine.ts";
import { CONDENSER_TO, spreadCondenser } from "./places.ts";

/**
 * Sets the lock-outs for air; asked when the air changes. Each bars the compressor past its limit and lets it go again
 * only when the air has come back by the sheet's margin, so that it does not flutter.
 */
export function checkAir(engine: Engine, condenser: CondenserState): void {
  const { lowest_C, highest_C, comeBack_K } = condenser.sheet.airLimits;
  const { dryBulb_C } = engine.air;
  if (dryBulb_C < lowest_C) condenser.isAirCold = true;
  else if (dryBulb_C >= lowest_C + comeBack_K) condenser.isAirCold = false;
  if (dryBulb_C > highest_C) condenser.isAirHot = true;
  else if (dryBulb_C <= highest_C - comeBack_K) condenser.isAirHot = false;
  condenser.isAirStale = true;
}

/**
 * Reads the water that the heat pump feels, or where all of it is far under the limit, the warmest of it: what is felt is
 * never warmer, and reading it costs more.
 */
export function watchWater({ places, tank }: Engine, condenser: CondenserState): void {
  const warmest_C = cell(tank.t_C, whole(places.slugs, CONDENSER_TO));
  const isFar = warmest_C < condenser.sheet.waterLimit.highest_C - SWITCH_TOLERANCE_K;
  if (isFar && !condenser.isWaterHot) places.water_C = warmest_C;
  else spreadCondenser(places, tank);
}

/** Sets the lock-out for water, likewise, from fresh water along the condenser. */
export function checkWater(engine: Engine, condenser: CondenserState): void {
  const { highest_C, comeBack_K } = condenser.sheet.waterLimit;
  const { water_C } = engine.places;
  if (water_C >= highest_C - SWITCH_TOLERANCE_K) condenser.isWaterHot = true;
  else if (water_C <= highest_C - comeBack_K) condenser.isWaterHot = false;
}

/** True where the compressor may not run. */
export function isBarred(condenser: CondenserState | undefined): boolean {
  return condenser === undefined || condenser.isAirCold || condenser.isAirHot || condenser.isWaterHot;
}

/** Tells map and coil about the present air; done only when the compressor runs, because a wet bulb costs a solver. */
export function meetAir(engine: Engine, condenser: CondenserState): void {
  const { air, places } = engine;
  const { map, sheet } = condenser;
  setAir(map, wetBulb_C(air.dryBulb_C, air.humidityRatio, air.pressure_kPa));
  map.water_C = places.water_C;
  askMap(map);
  const cooling_W = map.heat_W - map.compressor_W;
  condenser.condensate_kg_J = condensatePerHeat_kg_J(air, cooling_W, sheet.airflow_m3_s, sheet.coilBypass);
  condenser.isAirStale = false;
}
