import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import { insideDiameter_m, outsideDiameter_m, type PipeKind, type PipeSize, pipeMetal } from "./pipe-table.ts";
import { requireWithin } from "./require-within.ts";
import { waterDensity_kg_m3, waterHeatCapacity_J_kgK } from "./water.ts";

export const STILL_AIR_FILM: Source = {
  basis: "published",
  document: "Churchill and Chu, Free convection from a horizontal cylinder, Int. J. Heat Mass Transfer 18",
  edition: "1975",
  section: "equation read in copies; radiation added, emissivity from memory",
};
export const FOAM: Source = {
  basis: "published",
  document: "ASHRAE 90.1",
  edition: "2016",
  section: "Table 6.8.3-1: conductivity 0.22 to 0.28 Btu in/(h ft² °F); the upper end is taken",
};
export const COOLING_LAW: Source = {
  basis: "computed",
  document: "Cooling of one mass: t(τ) = t_air + (t_0 − t_air) · e^(−UA·τ/C)",
};

/** Thickness of pipe insulation as sold. */
export const INSULATIONS = ["none", "half", "three_quarter", "one"] as const;
export type Insulation = (typeof INSULATIONS)[number];
const THICKNESS_m: Readonly<Record<Insulation, number>> = {
  none: 0,
  half: toBase(0.5, "in"),
  three_quarter: toBase(0.75, "in"),
  one: toBase(1, "in"),
};
/** 0.28 Btu in/(h ft2 F): FOAM. */
const FOAM_W_mK = 0.28 * 0.144228;
/** Conductivity and heat capacity by volume of the wall. From memory. */
const WALL = {
  copper: { conductivity_W_mK: 390, capacity_J_m3K: 3.44e6 },
  pex: { conductivity_W_mK: 0.4, capacity_J_m3K: 2.1e6 },
  cpvc: { conductivity_W_mK: 0.14, capacity_J_m3K: 1.5e6 },
} as const;
/** Share of black-body radiation. From memory: dull copper 0.4, plastic and insulation 0.9. */
const EMISSIVITY = { copper: 0.4, plastic: 0.9, insulation: 0.9 } as const;
const STEFAN_BOLTZMANN = 5.670374e-8;
const ZERO_C_IN_K = 273.15;
const GRAVITY = 9.80665;
/** R-value of one m2 K/W in US units [h ft2 F/Btu]. */
const US_R = 5.678263;
/** Surfaces are never taken closer to the air than this, so that the film stays defined [K]. */
const LEAST_K = 0.1;
/** Rounds to settle the surface temperature; ten agree to a thousandth of a kelvin. */
const ROUNDS = 20;

/** Air at rest at a film temperature. Fits to Incropera, Table A.4, at 300 K, from memory; 2 % from 270 to 370 K. */
function stillAir(film_K: number) {
  const ratio = film_K / 300;
  return {
    conductivity_W_mK: 0.0263 * ratio ** 0.85,
    viscosity_m2_s: 1.589e-5 * ratio ** 1.75,
    diffusivity_m2_s: 2.25e-5 * ratio ** 1.78,
  };
}

/**
 * Heat that a horizontal cylinder in still air gives off for each square metre and kelvin.
 * @param outside_m outside diameter [m], 0.005..0.5
 * @param surface_C temperature of its surface [°C], -10..120
 * @param air_C temperature of the air and of the walls around [°C], -30..60
 * @param emissivity share of black-body radiation, 0..1
 * @returns film coefficient [W/(m2 K)], convection and radiation together
 * @source Churchill and Chu 1975; radiation to surroundings at air temperature
 * @limits still air; a draft or wet ground takes far more
 */
export function filmCoefficient_W_m2K(outside_m: number, surface_C: number, air_C: number, emissivity: number): number {
  requireWithin("outside_m", outside_m, 0.005, 0.5);
  requireWithin("surface_C", surface_C, -10, 120);
  requireWithin("air_C", air_C, -30, 60);
  requireWithin("emissivity", emissivity, 0, 1);
  const surface_K = surface_C + ZERO_C_IN_K;
  const air_K = air_C + ZERO_C_IN_K;
  const difference_K = Math.max(Math.abs(surface_K - air_K), LEAST_K);
  const air = stillAir((surface_K + air_K) / 2);
  const rayleigh =
    (GRAVITY * difference_K * outside_m ** 3) / (((surface_K + air_K) / 2) * air.viscosity_m2_s * air.diffusivity_m2_s);
  const prandtl = air.viscosity_m2_s / air.diffusivity_m2_s;
  const bend = (1 + (0.559 / prandtl) ** (9 / 16)) ** (8 / 27);
  const nusselt = (0.6 + (0.387 * rayleigh ** (1 / 6)) / bend) ** 2;
  const radiation = emissivity * STEFAN_BOLTZMANN * (surface_K + air_K) * (surface_K ** 2 + air_K ** 2);
  return (nusselt * air.conductivity_W_mK) / outside_m + radiation;
}

/** What decides how a pipe cools. */
export interface WarmPipe {
  readonly kind: PipeKind;
  readonly size: PipeSize;
  readonly insulation: Insulation;
}

/**
 * Heat that a metre of pipe loses for each kelvin between its water and the air.
 * @param pipe kind, size and insulation; a size that the kind is made in
 * @param water_C mean temperature of the water [°C], 0..100
 * @param air_C air around [°C], -30..60
 * @returns loss coefficient [W/(m K)]
 * @source wall and insulation ln(r2/r1)/(2 pi k), film STILL_AIR_FILM, in series
 * @limits dry still air; in a slab, soil or draft bare pipe loses several times as much (common practice)
 */
export function lossPerMetre_W_mK(pipe: WarmPipe, water_C: number, air_C: number): number {
  requireWithin("water_C", water_C, 0, 100);
  const { inside_m, outside_m, jacket_m } = layers(pipe);
  const wall = wallOf(pipe.kind);
  const solid_mK_W =
    Math.log(outside_m / inside_m) / (2 * Math.PI * wall.conductivity_W_mK) +
    Math.log(jacket_m / outside_m) / (2 * Math.PI * FOAM_W_mK);
  const emissivity = pipe.insulation === "none" ? EMISSIVITY[pipeMetal(pipe.kind)] : EMISSIVITY.insulation;
  let surface_C = water_C;
  let total_mK_W = solid_mK_W;
  for (let round = 0; round < ROUNDS; round += 1) {
    const film = filmCoefficient_W_m2K(jacket_m, surface_C, air_C, emissivity);
    total_mK_W = solid_mK_W + 1 / (Math.PI * jacket_m * film);
    surface_C = water_C - ((water_C - air_C) * solid_mK_W) / total_mK_W;
  }
  return 1 / total_mK_W;
}

/**
 * Heat that warms a metre of pipe with its water by one kelvin.
 * @param pipe kind, size and insulation
 * @param water_C water temperature [°C], 0..100
 * @returns heat capacity [J/(m K)]
 * @source water IAPWS-IF97; wall from memory; the insulation's own heat is left out
 */
export function heatPerMetre_J_mK(pipe: WarmPipe, water_C: number): number {
  const { inside_m, outside_m } = layers(pipe);
  const water = (Math.PI / 4) * inside_m ** 2 * waterDensity_kg_m3(water_C) * waterHeatCapacity_J_kgK(water_C);
  const wall = (Math.PI / 4) * (outside_m ** 2 - inside_m ** 2) * wallOf(pipe.kind).capacity_J_m3K;
  return water + wall;
}

/** Resistance of the insulation on the pipe as energy codes count it, on its outer face [h ft2 F/Btu]. */
export function insulationR(pipe: WarmPipe): number {
  const { outside_m, jacket_m } = layers(pipe);
  return ((jacket_m / 2) * Math.log(jacket_m / outside_m) * US_R) / FOAM_W_mK;
}

/**
 * Time for a mass to cool from one temperature to another.
 * @param from_C temperature at the start [°C]
 * @param to_C temperature at the end [°C], at most from_C
 * @param air_C temperature around [°C]
 * @param constant_s heat capacity over loss coefficient, C / UA [s], above 0
 * @returns time [s]; without end where it never gets that cool
 * @source t = C/UA ln((t_0 - t_air)/(t_1 - t_air))
 */
export function coolingTime_s(from_C: number, to_C: number, air_C: number, constant_s: number): number {
  requireWithin("constant_s", constant_s, Number.MIN_VALUE, Number.MAX_VALUE);
  requireWithin("from_C", from_C, to_C, 100);
  return to_C <= air_C ? Number.POSITIVE_INFINITY : constant_s * Math.log((from_C - air_C) / (to_C - air_C));
}

/** Temperature after a time of cooling [°C]: t = t_air + (t_0 - t_air) e^(-time UA / C). */
export function cooledTo_C(from_C: number, air_C: number, constant_s: number, time_s: number): number {
  requireWithin("constant_s", constant_s, Number.MIN_VALUE, Number.MAX_VALUE);
  requireWithin("time_s", time_s, 0, Number.MAX_VALUE);
  return air_C + (from_C - air_C) * Math.exp(-time_s / constant_s);
}

function wallOf(kind: PipeKind) {
  return kind === "pex" || kind === "cpvc" ? WALL[kind] : WALL.copper;
}

function layers({ kind, size, insulation }: WarmPipe) {
  const inside_m = insideDiameter_m(kind, size);
  if (inside_m === undefined) throw new RangeError(`${kind} is not made in ${size}`);
  const outside_m = outsideDiameter_m(size);
  return { inside_m, outside_m, jacket_m: outside_m + 2 * THICKNESS_m[insulation] };
}
