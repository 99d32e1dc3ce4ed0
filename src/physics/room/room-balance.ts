import type { Source } from "../../declaration/source.ts";
import { requireWithin } from "../require-within.ts";

export const ROOM_BALANCE: Source = {
  basis: "computed",
  document: "Energy and water balance of one well-mixed room",
  section: "books closed to 1e-9",
};

/**
 * Heat that a heat pump takes from its air.
 * @param heat_W heat into the water [W], 0..50000
 * @param cop that heat over the electric power that ends up in the water [-], 1..20
 * @returns heat taken [W]
 * @source Q (1 - 1/COP), first law; everything that drives the heat pump goes into the water
 */
export function heatTaken_W(heat_W: number, cop: number): number {
  requireWithin("heat into the water [W]", heat_W, 0, 50_000);
  requireWithin("COP", cop, 1, 20);
  return heat_W * (1 - 1 / cop);
}

/**
 * How far a room settles under its surroundings when so much heat is taken from it all the time.
 * @param heat_W heat taken [W]
 * @param conductance_W_K of walls and air together [W/K], above 0
 * @returns temperature difference [K]
 * @source steady balance, heat / conductance
 */
export function steadyFall_K(heat_W: number, conductance_W_K: number): number {
  requireWithin("conductance [W/K]", conductance_W_K, Number.MIN_VALUE, 1e6);
  return heat_W / conductance_W_K;
}

/**
 * Heat that the air alone of a room holds for each kelvin.
 * @param volume_m3 room volume [m3], above 0
 * @param density_kg_m3 of its air
 * @param specific_J_kg_K specific heat of its air
 * @returns capacity [J/K]
 * @source rho V c
 * @limits walls and things hold fifty times as much, so no real room cools as fast as this says
 */
export function airCapacity_J_K(volume_m3: number, density_kg_m3: number, specific_J_kg_K: number): number {
  requireWithin("room volume [m3]", volume_m3, Number.MIN_VALUE, 1e6);
  return volume_m3 * density_kg_m3 * specific_J_kg_K;
}
