import type { Source } from "../../declaration/source.ts";
import type { CoilAir } from "../cooling-coil.ts";
import { askMap, isClamped, type PerformanceData, prepareMap, setAir } from "../heat-pump.ts";
import {
  enthalpy_kJ_kg,
  saturatedAirTemperature_C,
  saturationHumidityRatio,
  specificVolume_m3_kg,
  wetBulb_C,
} from "../moist-air.ts";
import { requireWithin } from "../require-within.ts";

/** A coil as its sheet knows it: the airflow that its performance was measured at. */
export interface RatedCoil {
  readonly airflow_m3_s: number;
  /** Share of that air that passes as if untouched [share]. */
  readonly coilBypass: number;
}

/** What a heat pump does with less air than its sheet was measured at. */
export interface LessAir {
  /** Wet bulb at which the performance map answers for this airflow [C]. */
  readonly wetBulb_C: number;
  /** Heat into the water and COP over those with the rated airflow [share]. */
  readonly heatShare: number;
  readonly copShare: number;
  /** Heat taken from the air [W]. */
  readonly cooling_W: number;
  /** Temperature of the wet coil surface [C]; below 0 frost grows. */
  readonly surface_C: number;
  /** The map ends before this air; its edge stands in, so that the true cost is higher. */
  readonly isClamped: boolean;
}

export const LESS_AIR: Source = {
  basis: "computed",
  document:
    "Bypass-factor method (ASHRAE Handbook - Fundamentals): the map is asked at the air that gives the same coil",
  section: "a laboratory report on blocked airflow found roughly 3 to 15 % less COP (from memory)",
};

/** Heat that passes from air to coil grows with airflow to this power; usual for finned coils, 0.4 to 0.6. */
const FILM_POWER = 0.5;
const COLDEST_kJ_kg = -50;
const LOWEST_C = -30;
const HALVINGS = 50;
const LEAST_BYPASS = 1e-4;

/**
 * Cost of an airflow other than the rated one, in heat and COP.
 * @param data performance map of the heat pump, measured at the rated airflow
 * @param coil rated airflow [m3/s], 0.01..5, and bypass [share], 0..0.9
 * @param air air entering the coil
 * @param water_C water at the condenser [C]
 * @param airflow_m3_s airflow left [m3/s], 0.005..5, in the entering air
 * @returns shares of heat and COP, the wet bulb to ask the map at, the coil's surface
 * @source less air through the same coil runs it colder: h_surface = h_in - Q / (m (1 - bypass)), bypass =
 *   bypass0^((m/m0)^(0.5 - 1)); the map is asked at the air that would give this surface with the rated airflow
 * @limits no frost, and no compressor that slows down; the map's own edges apply, so that very little air looks better
 *   than it is where `wetBulb_C` lies below the fitted range
 */
export function costOfLessAir(
  data: PerformanceData,
  coil: RatedCoil,
  air: CoilAir,
  water_C: number,
  airflow_m3_s: number,
): LessAir {
  const map = prepareMap(data);
  map.water_C = water_C;
  const ask = (wet_C: number) => {
    setAir(map, wet_C);
    askMap(map);
    return { heat_W: map.heat_W, cop: map.heat_W / map.compressor_W, cooling_W: map.heat_W - map.compressor_W };
  };
  const rated = ask(wetBulb_C(air.dryBulb_C, air.humidityRatio, air.pressure_kPa));
  const shifted = (cooling_W: number) => equivalentWetBulb_C(air, cooling_W, coil, airflow_m3_s);
  // More heat taken makes a colder coil, and a colder coil takes less: one crossing.
  let [low_W, high_W] = [0, 2 * rated.cooling_W];
  for (let turn = 0; turn < HALVINGS; turn += 1) {
    const middle_W = (low_W + high_W) / 2;
    if (ask(shifted(middle_W)).cooling_W >= middle_W) low_W = middle_W;
    else high_W = middle_W;
  }
  const wet_C = shifted(low_W);
  const now = ask(wet_C);
  return {
    wetBulb_C: wet_C,
    heatShare: now.heat_W / rated.heat_W,
    copShare: now.cop / rated.cop,
    cooling_W: now.cooling_W,
    surface_C: surfaceTemperature_C(air, low_W, coil, airflow_m3_s),
    isClamped: isClamped(map),
  };
}

/**
 * Wet bulb of the air that, at the rated airflow, would make the coil as cold as this air does at another airflow.
 * @param air air entering the coil
 * @param cooling_W heat taken from the air [W], 0..20000
 * @param coil rated airflow [m3/s], 0.01..5, and bypass [share], 0..0.9
 * @param airflow_m3_s airflow left [m3/s], 0.005..5
 * @returns wet bulb [C], at least -30; the entering air's own at the rated airflow
 * @source as in `costOfLessAir`
 */
export function equivalentWetBulb_C(air: CoilAir, cooling_W: number, coil: RatedCoil, airflow_m3_s: number): number {
  const { dryBulb_C, humidityRatio, pressure_kPa } = air;
  const own_C = wetBulb_C(dryBulb_C, humidityRatio, pressure_kPa);
  const extra_kJ_kg =
    coilDrop_kJ_kg(air, cooling_W, coil, airflow_m3_s) - coilDrop_kJ_kg(air, cooling_W, coil, coil.airflow_m3_s);
  const saturated_kJ_kg = enthalpy_kJ_kg(own_C, saturationHumidityRatio(own_C, pressure_kPa));
  return Math.max(
    LOWEST_C,
    saturatedAirTemperature_C(Math.max(COLDEST_kJ_kg, saturated_kJ_kg - extra_kJ_kg), pressure_kPa),
  );
}

function surfaceTemperature_C(air: CoilAir, cooling_W: number, coil: RatedCoil, airflow_m3_s: number): number {
  const drop_kJ_kg = coilDrop_kJ_kg(air, cooling_W, coil, airflow_m3_s);
  const h_kJ_kg = enthalpy_kJ_kg(air.dryBulb_C, air.humidityRatio) - drop_kJ_kg;
  return Math.max(LOWEST_C, saturatedAirTemperature_C(Math.max(COLDEST_kJ_kg, h_kJ_kg), air.pressure_kPa));
}

/** Enthalpy from the entering air down to the coil's surface [kJ/kg]. */
function coilDrop_kJ_kg(air: CoilAir, cooling_W: number, coil: RatedCoil, airflow_m3_s: number): number {
  requireWithin("cooling [W]", cooling_W, 0, 20_000);
  requireWithin("rated airflow [m3/s]", coil.airflow_m3_s, 0.01, 5);
  requireWithin("airflow [m3/s]", airflow_m3_s, 0.005, 5);
  requireWithin("bypass", coil.coilBypass, 0, 0.9);
  const ratio = airflow_m3_s / coil.airflow_m3_s;
  const bypass = Math.max(LEAST_BYPASS, coil.coilBypass) ** (ratio ** (FILM_POWER - 1));
  const air_kg_s = airflow_m3_s / specificVolume_m3_kg(air.dryBulb_C, air.humidityRatio, air.pressure_kPa);
  return cooling_W / 1000 / (air_kg_s * (1 - bypass));
}
