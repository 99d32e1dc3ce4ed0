import type { Place } from "../books/places.ts";
import { mediumRatedDay, plainElectricTank } from "../equipment/plain-tank.ts";
import { POLICIES } from "../equipment/policies.ts";
import { gasTank, storageDay_kWh } from "../physics/gas-tank.ts";
import { STUDY_WATER } from "../physics/tank/tank-model.ts";
import { DAY_s, DAYS_A_YEAR } from "./calendar.ts";
import { dailyAir_C, dailyMains_C, type SampledYear, type SimulatedYear, simulateYear } from "./year.ts";

const J_PER_kWh = 3.6e6;
/** Plain electric tanks stand on 240 V, whatever the new unit is made for [V]. */
const OLD_SUPPLY_V = 240;

/** The heater that comes out. */
export interface OldHeater {
  readonly efficiency: number;
  readonly setpoint_C: number;
  readonly place: Place;
}

/** The year of a plain electric tank, through the same simulation as the unit that goes in. */
export function simulateOldElectric(old: OldHeater & { readonly tank_L: number }, year: SampledYear): SimulatedYear {
  const { tank_L, efficiency, setpoint_C, place } = old;
  const plan = [{ from_s: 0, policy: POLICIES.elements_only, setpoint_C }] as const;
  return simulateYear({ unit: plainElectricTank(tank_L, efficiency), place, supply_V: OLD_SUPPLY_V, plan }, year);
}

/**
 * Gas that a gas tank burns on each day of the year.
 * @param old rated efficiency 0.4..0.9, setpoint [C], place
 * @param year the household's draws
 * @returns gas [kWh] by day
 * @source `storageDay_kWh` with the heat that people wanted that day
 * @limits gives everybody what they want: a gas tank that runs cold would burn a little less
 */
export function burnOldGas_kWh({ efficiency, setpoint_C, place }: OldHeater, year: SampledYear): Float64Array {
  const heater = gasTank(efficiency, mediumRatedDay());
  const heat_kWh = wantedHeat_kWh(year, setpoint_C, dailyMains_C(place));
  const air_C = dailyAir_C(place);
  return heat_kWh.map((delivered_kWh, day) => storageDay_kWh(heater, delivered_kWh, setpoint_C, air_C[day] ?? 0));
}

/**
 * Heat that a year's draws ask for, day by day.
 * @param setpoint_C what appliances that do not mix receive [C]
 * @param mains_C cold water by day [C]
 * @returns heat above the cold water [kWh]
 * @source Q = rho c V (T - T_cold), T the wanted temperature at mixed fixtures and the setpoint at appliances
 */
export function wantedHeat_kWh(year: SampledYear, setpoint_C: number, mains_C: Float64Array): Float64Array {
  const { wanted_C, draws } = year;
  const heat_kWh = new Float64Array(DAYS_A_YEAR);
  const perLitre_kWh_K = (STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K) / J_PER_kWh;
  for (let i = 0; i < draws.count; i++) {
    const day = Math.min(DAYS_A_YEAR - 1, Math.floor((draws.start_s[i] ?? 0) / DAY_s));
    const hot_C = draws.isMixed[i] === 1 ? Math.min(wanted_C, setpoint_C) : setpoint_C;
    const rise_K = Math.max(0, hot_C - (mains_C[day] ?? 0));
    heat_kWh[day] = (heat_kWh[day] ?? 0) + (draws.volume_L[i] ?? 0) * perLitre_kWh_K * rise_K;
  }
  return heat_kWh;
}
