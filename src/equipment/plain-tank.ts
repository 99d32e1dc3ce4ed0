import { lossFromRating_W_K, type RatedDay } from "../physics/gas-tank.ts";
import { STUDY_WATER } from "../physics/tank/tank-model.ts";
import { buildGenericUnit, USUAL_ELEMENT_W } from "./generic-unit.ts";
import { drawPattern } from "./test-procedure/draw-patterns.ts";
import { RATING } from "./test-procedure/rating-conditions.ts";
import type { WaterHeater } from "./water-heater.ts";

const J_PER_kWh = 3.6e6;
/** Elements give the water all they take. */
const RECOVERY_OF_ELEMENTS = 1;

/** The day that plain tanks of common sizes are rated in: the medium draw pattern at rating conditions. */
export function mediumRatedDay(): RatedDay {
  const drawn_L = drawPattern("medium").reduce((sum, { volume_L }) => sum + volume_L, 0);
  const delivered_J = drawn_L * STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K * RATING.rise_K;
  return { tank_C: RATING.outlet_C, air_C: RATING.ambient_C, delivered_kWh: delivered_J / J_PER_kWh };
}

/**
 * A plain electric tank, such as the one that comes out, from its size and rated efficiency.
 * @param nominal_L volume on the plate [L], 70..800
 * @param efficiency rated efficiency (uniform energy factor), 0.6..0.98
 * @returns a data sheet that the simulation runs
 * @source usual two-element tank of that size; its loss by `lossFromRating_W_K` with the medium draw pattern
 */
export function plainElectricTank(nominal_L: number, efficiency: number): WaterHeater {
  const unit = buildGenericUnit({ nominal_L, element_W: USUAL_ELEMENT_W, heatPump_W: 0 });
  const heatLoss_W_K = lossFromRating_W_K(efficiency, RECOVERY_OF_ELEMENTS, USUAL_ELEMENT_W, mediumRatedDay());
  return { ...unit, tank: { ...unit.tank, heatLoss_W_K } };
}
