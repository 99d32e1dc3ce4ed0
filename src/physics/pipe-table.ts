import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";

export const PIPE_KINDS = ["copper_k", "copper_l", "copper_m", "pex", "cpvc"] as const;
export type PipeKind = (typeof PIPE_KINDS)[number];
/** Nominal sizes as the trade writes them; names, not measures. */
export const PIPE_SIZES = ["3/8", "1/2", "5/8", "3/4", "1", "1-1/4", "1-1/2", "2"] as const;
export type PipeSize = (typeof PIPE_SIZES)[number];

const COPPER: Source = {
  basis: "published",
  document: "ASTM B88 copper water tube",
  section: "outside diameter less two walls, read in published size tables; 1-1/2 and 2 from memory",
};
const PEX: Source = {
  basis: "published",
  document: "ASTM F876 PEX tubing, SDR 9",
  section: "average inside diameter, 3/8 to 5/8 read in size tables; 3/4 and up from memory",
};
const CPVC: Source = {
  basis: "published",
  document: "ASTM D2846 CPVC tubing, SDR 11",
  section: "average inside diameter, read in a published size table; 1-1/2 and 2 from memory",
};
export const PIPE_SOURCES: Readonly<Record<PipeKind, Source>> = {
  copper_k: COPPER,
  copper_l: COPPER,
  copper_m: COPPER,
  pex: PEX,
  cpvc: CPVC,
};

/** Inside diameter [in], as printed; a size that is not made stays out. */
const INSIDE_DIAMETER_in: Readonly<Record<PipeKind, Readonly<Partial<Record<PipeSize, number>>>>> = {
  copper_k: {
    "3/8": 0.402,
    "1/2": 0.527,
    "5/8": 0.652,
    "3/4": 0.745,
    "1": 0.995,
    "1-1/4": 1.245,
    "1-1/2": 1.481,
    "2": 1.959,
  },
  copper_l: {
    "3/8": 0.43,
    "1/2": 0.545,
    "5/8": 0.666,
    "3/4": 0.785,
    "1": 1.025,
    "1-1/4": 1.265,
    "1-1/2": 1.505,
    "2": 1.985,
  },
  copper_m: { "3/8": 0.45, "1/2": 0.569, "3/4": 0.811, "1": 1.055, "1-1/4": 1.291, "1-1/2": 1.527, "2": 2.009 },
  pex: {
    "3/8": 0.35,
    "1/2": 0.475,
    "5/8": 0.574,
    "3/4": 0.671,
    "1": 0.863,
    "1-1/4": 1.053,
    "1-1/2": 1.243,
    "2": 1.629,
  },
  cpvc: { "1/2": 0.489, "3/4": 0.715, "1": 0.921, "1-1/4": 1.125, "1-1/2": 1.329, "2": 1.739 },
};

/**
 * Inside diameter of a pipe.
 * @param kind material and wall
 * @param size nominal size
 * @returns inside diameter [m], or nothing when that kind is not made in that size
 * @source PIPE_SOURCES
 * @limits makers' walls vary; PEX by minimum wall is up to 3 % wider
 */
export function insideDiameter_m(kind: PipeKind, size: PipeSize): number | undefined {
  const diameter_in = INSIDE_DIAMETER_in[kind][size];
  return diameter_in === undefined ? undefined : toBase(diameter_in, "in");
}

/** All these pipes are an eighth of an inch wider outside than their nominal size. Source: ASTM B88, F876 and D2846. */
const OUTSIDE_in: Readonly<Record<PipeSize, number>> = {
  "3/8": 0.5,
  "1/2": 0.625,
  "5/8": 0.75,
  "3/4": 0.875,
  "1": 1.125,
  "1-1/4": 1.375,
  "1-1/2": 1.625,
  "2": 2.125,
};

/**
 * Outside diameter of a pipe, alike for every kind of the table.
 * @param size nominal size
 * @returns outside diameter [m]
 * @source copper tube size: nominal size plus 1/8 in; ASTM B88, F876, D2846
 */
export function outsideDiameter_m(size: PipeSize): number {
  return toBase(OUTSIDE_in[size], "in");
}

/** What the wall is made of, as far as speed limits and heat care. */
export function pipeMetal(kind: PipeKind): "copper" | "plastic" {
  return kind === "pex" || kind === "cpvc" ? "plastic" : "copper";
}

/** Made, but seldom on a plumbing truck (common practice): not offered as the next size down. */
const SELDOM: readonly PipeSize[] = ["5/8"];

/** Sizes that this kind is made in and that a truck usually carries, smallest first. */
export function usualSizes(kind: PipeKind): readonly PipeSize[] {
  return PIPE_SIZES.filter((size) => !SELDOM.includes(size) && INSIDE_DIAMETER_in[kind][size] !== undefined);
}

/** The next usual size down that this kind is made in, or nothing. */
export function nextSizeDown(kind: PipeKind, size: PipeSize): PipeSize | undefined {
  const smaller = PIPE_SIZES.slice(0, PIPE_SIZES.indexOf(size));
  return smaller.findLast(
    (candidate) => !SELDOM.includes(candidate) && INSIDE_DIAMETER_in[kind][candidate] !== undefined,
  );
}
