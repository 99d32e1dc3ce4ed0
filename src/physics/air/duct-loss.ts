import type { Source } from "../../declaration/source.ts";
import { frictionFactor } from "../pipe-flow.ts";
import { requireWithin } from "../require-within.ts";
import type { AirState } from "./air-state.ts";
import { DUCT_ROUGHNESS_m, type DuctFitting, type DuctMaterial, FITTING_LOSS } from "./duct-table.ts";

export const DUCT_FRICTION: Source = {
  basis: "published",
  document: "Darcy-Weisbach as in ASHRAE Handbook - Fundamentals, duct design",
  section: "friction factor by Churchill 1977",
};
export const FLEX_COMPRESSION: Source = {
  basis: "from_memory",
  document: "ASHRAE Handbook - Fundamentals, duct design, correction for compressed flexible duct",
  section: "agrees with laboratory runs: about 4 times at moderate, up to 10 times at heavy compression",
};

/** A straight piece of round duct. */
export interface StraightDuct {
  readonly diameter_m: number;
  /** As installed [m]. */
  readonly length_m: number;
  readonly material: DuctMaterial;
  /** How much shorter a flexible duct lies than fully pulled out [share]; others have none. */
  readonly compression?: number;
}

const NARROWEST_m = 0.05;
const WIDEST_m = 1;
const LONGEST_m = 1000;
const MOST_m3_s = 10;
const MOST_COMPRESSION = 0.45;
const METRES_PER_INCH = 0.0254;

/**
 * Velocity pressure in a round duct.
 * @param flow_m3_s airflow [m3/s], 0..10
 * @param diameter_m inside diameter [m], 0.05..1
 * @param air density and viscosity
 * @returns pressure [Pa]
 * @source rho v^2 / 2
 */
export function velocityPressure_Pa(flow_m3_s: number, diameter_m: number, air: AirState): number {
  return (air.density_kg_m3 * ductVelocity_m_s(flow_m3_s, diameter_m) ** 2) / 2;
}

/**
 * Mean velocity in a round duct.
 * @param flow_m3_s airflow [m3/s], 0..10
 * @param diameter_m inside diameter [m], 0.05..1
 * @returns velocity [m/s]
 * @source Q / (pi/4 d^2)
 */
export function ductVelocity_m_s(flow_m3_s: number, diameter_m: number): number {
  requireWithin("flow_m3_s", flow_m3_s, 0, MOST_m3_s);
  requireWithin("diameter_m", diameter_m, NARROWEST_m, WIDEST_m);
  return flow_m3_s / ((Math.PI / 4) * diameter_m ** 2);
}

/**
 * Pressure lost by friction in a straight round duct, flexible duct with its compression included.
 * @param flow_m3_s airflow [m3/s], 0..10
 * @param duct inside diameter [m], 0.05..1; length [m], 0..1000; material; compression [share], 0..0.45
 * @param air density and viscosity
 * @returns pressure [Pa]; zero without flow
 * @source f L/d rho v^2/2, f by Churchill 1977, roughness by the table, flexible duct times `flexCompressionFactor`
 * @limits straight runs: bends and sags of flexible duct come on top
 */
export function ductFriction_Pa(flow_m3_s: number, duct: StraightDuct, air: AirState): number {
  const { diameter_m, length_m, material } = duct;
  requireWithin("length_m", length_m, 0, LONGEST_m);
  const speed_m_s = ductVelocity_m_s(flow_m3_s, diameter_m);
  if (speed_m_s === 0) return 0;
  const reynolds = (air.density_kg_m3 * speed_m_s * diameter_m) / air.viscosity_Pa_s;
  const f = frictionFactor(reynolds, DUCT_ROUGHNESS_m[material] / diameter_m);
  const straight_Pa = ((f * length_m) / diameter_m) * velocityPressure_Pa(flow_m3_s, diameter_m, air);
  return material === "flex" ? straight_Pa * flexCompressionFactor(duct.compression ?? 0, diameter_m) : straight_Pa;
}

/**
 * How many times more a compressed flexible duct loses than the same length pulled straight.
 * @param compression 1 - installed length over stretched length [share], 0..0.45
 * @param diameter_m inside diameter [m], 0.05..1
 * @returns factor [-], at least 1
 * @source 1 + 0.58 r exp(-0.126 D), r in percent and D in inches; ASHRAE Handbook - Fundamentals, from memory
 * @limits fitted to 6, 8 and 10 in duct compressed up to 30 %; straight, supported on a board
 */
export function flexCompressionFactor(compression: number, diameter_m: number): number {
  requireWithin("compression", compression, 0, MOST_COMPRESSION);
  requireWithin("diameter_m", diameter_m, NARROWEST_m, WIDEST_m);
  return 1 + 0.58 * (100 * compression) * Math.exp((-0.126 * diameter_m) / METRES_PER_INCH);
}

/**
 * Pressure lost in a fitting.
 * @param flow_m3_s airflow [m3/s], 0..10
 * @param diameter_m diameter of the duct it sits in [m], 0.05..1
 * @param fitting which one
 * @param air density and viscosity
 * @returns pressure [Pa]
 * @source C rho v^2 / 2 with the coefficients of the table
 * @limits fittings closer than a few diameters disturb each other and lose more
 */
export function fittingLoss_Pa(flow_m3_s: number, diameter_m: number, fitting: DuctFitting, air: AirState): number {
  return FITTING_LOSS[fitting].coefficient * velocityPressure_Pa(flow_m3_s, diameter_m, air);
}
