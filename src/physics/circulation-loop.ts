import type { Source } from "../declaration/source.ts";
import { lossPerMetre_W_mK, type WarmPipe } from "./pipe-heat-loss.ts";
import { requireWithin } from "./require-within.ts";
import { waterDensity_kg_m3, waterHeatCapacity_J_kgK } from "./water.ts";

export const LOOP_BALANCE: Source = {
  basis: "computed",
  document: "First law: the loop loses what its water brings, Q = ρ · c · q · Δt",
};
const HOURS_PER_DAY = 24;
const SECONDS_PER_HOUR = 3600;
const DAYS_PER_YEAR = 365;
const LITRES_PER_M3 = 1000;
const W_PER_KW = 1000;

/** A loop that keeps hot water near the taps. */
export interface LoopCase {
  readonly pipe: WarmPipe;
  /** There and back. */
  readonly length_m: number;
  readonly hot_C: number;
  /** How much colder the water comes back. */
  readonly fall_K: number;
  readonly air_C: number;
  /** Hours a day that the pump runs. */
  readonly hours: number;
  /** Heat that the heater makes of one unit of electricity. */
  readonly cop: number;
  readonly tank_L: number | undefined;
}
export interface LoopPlan {
  readonly mean_C: number;
  readonly loss_W_mK: number;
  readonly loss_W: number;
  readonly heat_kWh_day: number;
  readonly electricity_kWh_day: number;
  readonly electricity_kWh_year: number;
  readonly pumpFlow_L_s: number;
  /** How often a day the pump moves the whole tank. */
  readonly turnovers: number | undefined;
}

/**
 * Heat that a circulation loop loses while its pump runs, and the flow that keeps its fall of temperature.
 * @param known length 0.3..1000 m, hours 0..24, cop 0.5..10, fall 0.5..30 K
 * @returns the plan
 * @source pipe-heat-loss.ts at the mean temperature; first law for the flow
 * @limits the hours when the pump stands still are left out: then the loop cools once more, by what it holds
 */
export function planLoop(known: LoopCase): LoopPlan {
  const { pipe, length_m, hot_C, fall_K, air_C, hours, cop, tank_L } = known;
  requireWithin("length_m", length_m, 0.3, 1000);
  requireWithin("fall_K", fall_K, 0.5, 30);
  requireWithin("hours", hours, 0, HOURS_PER_DAY);
  requireWithin("cop", cop, 0.5, 10);
  const mean_C = hot_C - fall_K / 2;
  const loss_W_mK = lossPerMetre_W_mK(pipe, mean_C, air_C);
  const loss_W = Math.max(loss_W_mK * length_m * (mean_C - air_C), 0);
  const heat_kWh_day = (loss_W * hours) / W_PER_KW;
  const carried_J_L = (waterDensity_kg_m3(mean_C) * waterHeatCapacity_J_kgK(mean_C)) / LITRES_PER_M3;
  const pumpFlow_L_s = loss_W / (carried_J_L * fall_K);
  const electricity_kWh_day = heat_kWh_day / cop;
  return {
    mean_C,
    loss_W_mK,
    loss_W,
    heat_kWh_day,
    electricity_kWh_day,
    electricity_kWh_year: electricity_kWh_day * DAYS_PER_YEAR,
    pumpFlow_L_s,
    turnovers: tank_L === undefined ? undefined : (pumpFlow_L_s * SECONDS_PER_HOUR * hours) / tank_L,
  };
}
