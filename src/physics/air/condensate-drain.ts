import type { Source } from "../../declaration/source.ts";
import { toBase } from "../../units/convert.ts";
import { frictionDrop_kPa } from "../pipe-flow.ts";
import { requireWithin } from "../require-within.ts";
import { waterDensity_kg_m3 } from "../water.ts";

export const DRAIN_SIZE: Source = {
  basis: "published",
  document: "IPC",
  section: "314.2.2, Table 314.2.2 as copied: 3/4 in to 20 tons; IMC 307.2.2 and UMC alike",
};
export const DRAIN_SLOPE: Source = {
  basis: "published",
  document: "IPC 314.2.1 and IMC 307.2.3",
  section: "at least 1/8 in per foot, 1 %; trade practice 1/4 in per foot",
};

/** Least fall over run [-]. */
export const LEAST_SLOPE = 1 / 96;
/** Fall that the trade prefers [-]. */
export const PREFERRED_SLOPE = 1 / 48;

const TON_W = toBase(1, "ton");
/** Drain of each size serves up to so many tons of cooling; the widest of the table serves what is above. */
const SIZES = [
  { inside_m: toBase(3 / 4, "in"), to_tons: 20 },
  { inside_m: toBase(1, "in"), to_tons: 40 },
  { inside_m: toBase(5 / 4, "in"), to_tons: 90 },
  { inside_m: toBase(3 / 2, "in"), to_tons: 125 },
  { inside_m: toBase(2, "in"), to_tons: 250 },
] as const;
const MANNING_N = 0.011;
const GRAVITY_m_s2 = 9.80665;
const TRAP_MARGIN_m = toBase(1, "in");
const WATER_C = 10;

/**
 * Water that has condensed, as a volume.
 * @param condensate_kg mass [kg], 0..100000
 * @returns volume [L]
 * @source density of water at 10 °C, IAPWS-IF97
 */
export function condensateVolume_L(condensate_kg: number): number {
  requireWithin("condensate_kg", condensate_kg, 0, 100_000);
  return (1000 * condensate_kg) / waterDensity_kg_m3(WATER_C);
}

/**
 * Least size of a condensate drain.
 * @param cooling_W heat that the coil takes from the air [W], 0..879000 (250 tons)
 * @returns inside diameter [m]; never smaller than the outlet of the unit's pan, which the caller knows
 * @source DRAIN_SIZE
 */
export function drainSize_m(cooling_W: number): number {
  requireWithin("cooling_W", cooling_W, 0, 250 * TON_W);
  const tons = cooling_W / TON_W;
  return (SIZES.find((size) => tons <= size.to_tons) ?? SIZES[SIZES.length - 1] ?? SIZES[0]).inside_m;
}

/**
 * Fall of a drain along its run.
 * @param run_m horizontal run [m], 0..100
 * @param slope fall over run [-], 0..1
 * @returns fall [m]
 * @source run times slope
 */
export function drainFall_m(run_m: number, slope = LEAST_SLOPE): number {
  requireWithin("run_m", run_m, 0, 100);
  requireWithin("slope", slope, 0, 1);
  return run_m * slope;
}

/**
 * What a sloped drain carries by gravity when half full.
 * @param inside_m inside diameter [m], 0.005..0.2
 * @param slope fall over run [-], 0..1
 * @returns flow [L/s]
 * @source Manning: V = (1/n) (d/4)^(2/3) sqrt(S), times half the section; n 0.011 for plastic and copper
 * @limits clean pipe; slime and sags are what stops condensate, not size
 */
export function drainCapacity_L_s(inside_m: number, slope: number): number {
  requireWithin("inside_m", inside_m, 0.005, 0.2);
  requireWithin("slope", slope, 0, 1);
  const speed_m_s = ((inside_m / 4) ** (2 / 3) * Math.sqrt(slope)) / MANNING_N;
  return 1000 * speed_m_s * (Math.PI / 8) * inside_m ** 2;
}

/** A trap on a drain that a fan sucks on. */
export interface DrainTrap {
  /** From the pan's outlet down to the trap's own outlet [m]. */
  readonly drop_m: number;
  /** Water that seals [m]. */
  readonly seal_m: number;
}

/**
 * Depth of the trap on a pan under suction.
 * @param suction_Pa air pressure in the unit below the room's [Pa], 0..2500
 * @returns drop and seal [m]
 * @source suction as a column of water plus 1 in, seal half of the drop (common practice; the unit's sheet decides)
 * @limits a pan under pressure needs a seal as deep as the pressure; many units need no trap at all: see the sheet
 */
export function trapDepth(suction_Pa: number): DrainTrap {
  requireWithin("suction_Pa", suction_Pa, 0, 2500);
  const drop_m = suction_Pa / (1000 * GRAVITY_m_s2) + TRAP_MARGIN_m;
  return { drop_m, seal_m: drop_m / 2 };
}

/**
 * Head that a condensate pump must give.
 * @param rise_m from the pump's water to the highest point of its tube [m], 0..30
 * @param tube_m length of the tube [m], 0..100
 * @param inside_m inside diameter of the tube [m], 0.003..0.05
 * @param flow_L_s flow while it pumps [L/s], 0..1
 * @returns head [m of water]
 * @source rise plus friction by `frictionDrop_kPa`
 * @limits the pump's curve, and a tube kinked or half shut with slime, are not in it
 */
export function pumpHead_m(rise_m: number, tube_m: number, inside_m: number, flow_L_s: number): number {
  requireWithin("rise_m", rise_m, 0, 30);
  requireWithin("tube_m", tube_m, 0, 100);
  requireWithin("inside_m", inside_m, 0.003, 0.05);
  requireWithin("flow_L_s", flow_L_s, 0, 1);
  const friction_kPa = frictionDrop_kPa(flow_L_s, inside_m, tube_m, WATER_C);
  return rise_m + (1000 * friction_kPa) / (waterDensity_kg_m3(WATER_C) * GRAVITY_m_s2);
}
