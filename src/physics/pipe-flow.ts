import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";
import { waterDensity_kg_m3 } from "./water.ts";
import { waterViscosity_Pa_s } from "./water-viscosity.ts";

export const PLUG_FLOW: Source = { basis: "computed", document: "Plug flow: the pipe empties once, V / Q" };
/**
 * Real water drawn before it runs hot, as a multiple of what the pipe holds. WaterSense allows 0.6 gal to be collected
 * for 0.5 gal stored. Laboratory runs differ with flow, pipe and surroundings, up to about twice (from memory).
 */
export const LIKELY_FACTOR = 0.6 / 0.5;
export const LIKELY_WAIT: Source = {
  basis: "published",
  document: "EPA WaterSense New Home Specification",
  edition: "1.2, 2014",
  section: "3.3: 0.6 gal collected for 0.5 gal stored",
};
export const CONTINUITY: Source = { basis: "computed", document: "Flow divided by the open area of the pipe" };
export const DARCY_CHURCHILL: Source = {
  basis: "published",
  document: "Darcy-Weisbach with S. W. Churchill, Friction-factor equation spans all fluid-flow regimes, Chem. Eng. 84",
  edition: "1977",
  section: "equation read in copies",
};

const LITRES_PER_M3 = 1000;
const PA_PER_KPA = 1000;
const MOST_L_s = 100;
const NARROWEST_m = 0.001;
const WIDEST_m = 1;
const LONGEST_m = 10_000;
/** Wall roughness of drawn tubing [m]. Source: Moody 1944, 5e-6 ft, as in published roughness tables; plastics alike. */
const DRAWN_TUBING_m = 1.5e-6;

/**
 * Water that a pipe holds.
 * @param inside_m inside diameter [m], 0.001..1
 * @param length_m length [m], 0..10000
 * @returns volume [L]
 * @source pi/4 d^2 L
 */
export function pipeContents_L(inside_m: number, length_m: number): number {
  requireWithin("length_m", length_m, 0, LONGEST_m);
  return openArea_m2(inside_m) * length_m * LITRES_PER_M3;
}

/**
 * Time to push out what a pipe holds.
 * @param contents_L water in the pipe [L], >= 0
 * @param flow_L_s flow [L/s], above 0, to 100
 * @returns time [s]
 * @source plug flow, V / Q
 * @limits the shortest possible wait: mixing and the heat that the pipe takes up lengthen it
 */
export function plugFlowWait_s(contents_L: number, flow_L_s: number): number {
  requireWithin("contents_L", contents_L, 0, Number.MAX_VALUE);
  requireWithin("flow_L_s", flow_L_s, Number.MIN_VALUE, MOST_L_s);
  return contents_L / flow_L_s;
}

/**
 * Mean velocity in a pipe.
 * @param flow_L_s flow [L/s], 0..100
 * @param inside_m inside diameter [m], 0.001..1
 * @returns velocity [m/s]
 * @source Q / (pi/4 d^2)
 */
export function velocity_m_s(flow_L_s: number, inside_m: number): number {
  requireWithin("flow_L_s", flow_L_s, 0, MOST_L_s);
  return flow_L_s / LITRES_PER_M3 / openArea_m2(inside_m);
}

/**
 * Darcy friction factor in laminar, transitional and turbulent flow.
 * @param reynolds Reynolds number, above 0, to 1e8
 * @param relativeRoughness wall roughness over diameter, 0..0.05
 * @returns friction factor
 * @source Churchill 1977
 * @limits within 2 % of Colebrook in smooth and drawn tubing from Re 4000 to a million; between 2000 and 4000 uncertain
 */
export function frictionFactor(reynolds: number, relativeRoughness: number): number {
  requireWithin("reynolds", reynolds, Number.MIN_VALUE, 1e8);
  requireWithin("relativeRoughness", relativeRoughness, 0, 0.05);
  const A = (2.457 * Math.log(1 / ((7 / reynolds) ** 0.9 + 0.27 * relativeRoughness))) ** 16;
  const B = (37530 / reynolds) ** 16;
  return 8 * ((8 / reynolds) ** 12 + (A + B) ** -1.5) ** (1 / 12);
}

/**
 * Pressure lost by friction in straight smooth pipe.
 * @param flow_L_s flow [L/s], 0..100
 * @param inside_m inside diameter [m], 0.001..1
 * @param length_m length [m], 0..10000
 * @param water_C water temperature [°C], 0..100
 * @returns pressure drop [kPa]; zero without flow
 * @source Darcy-Weisbach, f L/d rho v^2/2, with Churchill 1977 and drawn-tubing roughness (Moody 1944)
 * @limits straight pipe only: fittings, valves, meters and height come on top
 */
export function frictionDrop_kPa(flow_L_s: number, inside_m: number, length_m: number, water_C: number): number {
  requireWithin("length_m", length_m, 0, LONGEST_m);
  const speed_m_s = velocity_m_s(flow_L_s, inside_m);
  if (speed_m_s === 0) return 0;
  const rho = waterDensity_kg_m3(water_C);
  const reynolds = (rho * speed_m_s * inside_m) / waterViscosity_Pa_s(water_C);
  const f = frictionFactor(reynolds, DRAWN_TUBING_m / inside_m);
  return (f * (length_m / inside_m) * rho * speed_m_s ** 2) / 2 / PA_PER_KPA;
}

function openArea_m2(inside_m: number): number {
  requireWithin("inside_m", inside_m, NARROWEST_m, WIDEST_m);
  return (Math.PI / 4) * inside_m ** 2;
}
