import { requireWithin } from "../require-within.ts";

/** What moving air needs to be known of: mass for its volume, and how it sticks to walls. */
export interface AirState {
  readonly density_kg_m3: number;
  readonly viscosity_Pa_s: number;
}

const KELVIN = 273.15;
/** Gas constant of dry air [kJ/(kg K)]. ASHRAE Handbook - Fundamentals 2017, ch. 1, eq. 1. */
const DRY_AIR_GAS_kJ_kg_K = 0.287042;

/**
 * Density and viscosity of dry air.
 * @param t_C temperature [C], -60..90
 * @param pressure_kPa barometric pressure [kPa], 50..120
 * @returns density [kg/m3] and viscosity [Pa s]
 * @source ideal gas; viscosity by Sutherland, 1.458e-6 T^1.5 / (T + 110.4), U.S. Standard Atmosphere 1976, eq. 51
 * @limits dry air: damp air of a house is up to 1 % lighter
 */
export function airState(t_C: number, pressure_kPa: number): AirState {
  requireWithin("temperature [C]", t_C, -60, 90);
  requireWithin("air pressure [kPa]", pressure_kPa, 50, 120);
  const T = t_C + KELVIN;
  return {
    density_kg_m3: pressure_kPa / (DRY_AIR_GAS_kJ_kg_K * T),
    viscosity_Pa_s: (1.458e-6 * T ** 1.5) / (T + 110.4),
  };
}

/**
 * Standard air of the trade: 0.075 lb/ft3. Charts and sheets of fans and ducts are drawn for it.
 * Viscosity from Re = 8.56 D V (D in inches, V in ft/min) of ASHRAE duct design.
 */
export const STANDARD_AIR: AirState = { density_kg_m3: 1.2014, viscosity_Pa_s: 1.811e-5 };
