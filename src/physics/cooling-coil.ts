import {
  enthalpy_kJ_kg,
  saturatedAirTemperature_C,
  saturationHumidityRatio,
  specificVolume_m3_kg,
} from "./moist-air.ts";
import { requireWithin } from "./require-within.ts";

/** Air on its way into a cold coil. */
export interface CoilAir {
  readonly dryBulb_C: number;
  readonly humidityRatio: number;
  readonly pressure_kPa: number;
}

/**
 * Water that condenses on the cold coil for each joule taken from the air.
 * @param air air entering the coil
 * @param cooling_W heat taken from the air, sensible and latent together [W], 0..20000
 * @param airflow_m3_s airflow at the coil's inlet [m3/s], 0.01..5
 * @param bypass share of the air that passes as if untouched [share], 0..0.9
 * @returns condensate by heat taken [kg/J]; 0 for a coil that stays dry
 * @source bypass-factor method (ASHRAE Handbook - Fundamentals, psychrometrics of cooling coils): the touched air leaves
 *   saturated at the apparatus dew point, found from h_adp = h_in - Q / (m (1 - bypass))
 * @limits steady coil; no frost, whose water leaves at the next thaw
 */
export function condensatePerHeat_kg_J(air: CoilAir, cooling_W: number, airflow_m3_s: number, bypass: number): number {
  requireWithin("cooling [W]", cooling_W, 0, 20_000);
  requireWithin("airflow [m3/s]", airflow_m3_s, 0.01, 5);
  requireWithin("bypass", bypass, 0, 0.9);
  if (cooling_W === 0) return 0;
  const { dryBulb_C, humidityRatio, pressure_kPa } = air;
  const touchedAir_kg_s = (airflow_m3_s / specificVolume_m3_kg(dryBulb_C, humidityRatio, pressure_kPa)) * (1 - bypass);
  const drop_kJ_kg = cooling_W / 1000 / touchedAir_kg_s;
  const surface_kJ_kg = Math.max(COLDEST_SURFACE_kJ_kg, enthalpy_kJ_kg(dryBulb_C, humidityRatio) - drop_kJ_kg);
  const surface_C = saturatedAirTemperature_C(surface_kJ_kg, pressure_kPa);
  const removed = humidityRatio - saturationHumidityRatio(surface_C, pressure_kPa);
  return removed > 0 ? (touchedAir_kg_s * removed) / cooling_W : 0;
}

/** Enthalpy of saturated air near -30 C [kJ/kg]: no coil of this trade runs colder. */
const COLDEST_SURFACE_kJ_kg = -30;
