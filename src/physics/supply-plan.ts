import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import type { FixtureLoad, FixtureUse, Flush, LoadCode } from "./fixture-unit-table.ts";
import { type Demand, demandFlow, type FixtureCounts, steadyFlow_L_s, sumFixtureUnits } from "./fixture-units.ts";
import { frictionDrop_kPa, velocity_m_s } from "./pipe-flow.ts";
import { insideDiameter_m, type PipeKind, type PipeSize, pipeMetal, usualSizes } from "./pipe-table.ts";
import { requireWithin } from "./require-within.ts";
import { velocityLimit_m_s } from "./velocity-limit.ts";
import { waterDensity_kg_m3 } from "./water.ts";

export const HYDROSTATICS: Source = {
  basis: "published",
  document: "IPC",
  edition: "2018",
  section: "E103.2.2: 0.433 psi a foot of height; computed here as density times gravity times height",
};
export const REGULATED: Source = {
  basis: "published",
  document: "UPC",
  edition: "2015",
  section: "608.2: regulator above 80 psi, pipes sized on 80 % of the reduced pressure",
};
/** Static pressure from which a regulator is asked for, and the share of its setting that pipes are sized on: REGULATED. */
const REGULATE_ABOVE_kPa = toBase(80, "psi");
const SIZING_SHARE = 0.8;
/** Standard gravity [m/s2], exact by definition. */
const GRAVITY = 9.80665;
const PA_PER_KPA = 1000;
/** A house is not served by less. Source: IPC 603.1, from memory. */
export const SMALLEST_SERVICE: PipeSize = "3/4";
/** No branch line is run smaller (common practice). */
const SMALLEST_LINE: PipeSize = "1/2";

/** What must be known of the piping of a house. */
export interface SupplyCase {
  readonly counts: FixtureCounts;
  readonly hose_bibbs: number;
  readonly code: LoadCode;
  readonly use: FixtureUse;
  readonly flush: Flush;
  readonly pipe: PipeKind;
  /** Pipe that is there or planned, when its size is known. */
  readonly size: PipeSize | undefined;
  /** Pipe from meter to far fixture, and how much of it lies behind the heater. */
  readonly length_m: number;
  readonly hot_length_m: number;
  /** Fittings, as a share of the pipe's length. */
  readonly fittings: number;
  readonly rise_m: number;
  readonly pressure_kPa: number;
  readonly residual_kPa: number | undefined;
  readonly regulator_kPa: number | undefined;
  /** Losses of what the water passes, by name. */
  readonly losses_kPa: Readonly<Record<LossId, number>>;
  readonly needed_kPa: number;
  readonly cold_C: number;
  readonly setpoint_C: number;
}
export const LOSSES = ["meter", "backflow", "softener", "heater", "valve"] as const;
type LossId = (typeof LOSSES)[number];

/** One way to size the pipe, with what comes of it. */
export interface SupplyTrial {
  readonly size: PipeSize;
  readonly hotSize: PipeSize;
  readonly inside_m: number;
  readonly hotInside_m: number;
  readonly hotFlow_L_s: number;
  readonly velocity_m_s: number;
  readonly hotVelocity_m_s: number;
  readonly mainFriction_kPa: number;
  readonly hotFriction_kPa: number;
  readonly left_kPa: number;
  readonly isTooFast: boolean;
  readonly isTooLow: boolean;
}
export interface SupplyPlan {
  readonly units: FixtureLoad;
  readonly demand: Demand;
  readonly hotDemand: Demand;
  /** What the other code's table makes of the same fixtures. */
  readonly other: { readonly code: LoadCode; readonly units: FixtureLoad; readonly demand: Demand };
  readonly start_kPa: number;
  readonly startedFrom: "static" | "residual" | "regulated" | "regulator_missing";
  readonly rise_kPa: number;
  readonly loss_kPa: number;
  readonly coldLimit_m_s: number;
  readonly hotLimit_m_s: number;
  /** Every usual size for the main, smallest first. */
  readonly trials: readonly SupplyTrial[];
  /** The one asked about, or the smallest that does; nothing where none does. */
  readonly chosen: SupplyTrial | undefined;
  /** The smallest that does, whatever was asked about. */
  readonly smallest: SupplyTrial | undefined;
}

/** Units and probable demand of all fixtures by the table of one code; steady hose flow on top. */
function demandOf(known: SupplyCase, code: LoadCode): { readonly units: FixtureLoad; readonly demand: Demand } {
  const units = sumFixtureUnits(known.counts, known.hose_bibbs, code, known.use, known.flush);
  const { flow_L_s, source } = demandFlow(units.total, code, known.flush);
  return { units, demand: { flow_L_s: flow_L_s + steadyFlow_L_s(known.hose_bibbs, code), source } };
}

/**
 * Sizes the pipe of a house: demand, velocity and the pressure left at the far fixture for each size.
 * @param known the case; between 0 and 300 fixture units
 * @returns the plan
 * @source fixture-units.ts, pipe-flow.ts, velocity-limit.ts; p = p_0 - rho g h - losses - friction
 * @limits one size all the way, full demand all along, which is on the safe side; branches are sized by their fixture
 */
export function planSupply(known: SupplyCase): SupplyPlan {
  const { units, demand } = demandOf(known, known.code);
  const otherCode = known.code === "ipc" ? "upc" : "ipc";
  // The hot pipe serves no toilet, so its demand is read in the column for tanks.
  const hotDemand = demandFlow(units.hot, known.code, "tank");
  const base = { ...startPressure(known), rise_kPa: head_kPa(known.rise_m, known.cold_C), loss_kPa: sumLosses(known) };
  const metal = pipeMetal(known.pipe);
  const coldLimit_m_s = velocityLimit_m_s(metal, "cold", known.cold_C);
  const hotLimit_m_s = velocityLimit_m_s(metal, "hot", known.setpoint_C);
  const unpiped_kPa = base.start_kPa - base.rise_kPa - base.loss_kPa;
  const flows = { demand_L_s: demand.flow_L_s, hot_L_s: hotDemand.flow_L_s, coldLimit_m_s, hotLimit_m_s, unpiped_kPa };
  const sizes = sizesFrom(known.pipe, SMALLEST_SERVICE);
  const trials = sizes.flatMap((size) => tryMain(known, flows, size) ?? []);
  const smallest = trials.find(({ isTooFast, isTooLow }) => !isTooFast && !isTooLow);
  const asked = trials.find(({ size }) => size === known.size) ?? trySmall(known, flows);
  return {
    units,
    demand,
    hotDemand,
    other: { code: otherCode, ...demandOf(known, otherCode) },
    ...base,
    coldLimit_m_s,
    hotLimit_m_s,
    trials: asked === undefined || trials.includes(asked) ? trials : [asked, ...trials],
    chosen: known.size === undefined ? smallest : asked,
    smallest,
  };
}

interface Flows {
  readonly demand_L_s: number;
  readonly hot_L_s: number;
  readonly coldLimit_m_s: number;
  readonly hotLimit_m_s: number;
  readonly unpiped_kPa: number;
}

/** A size that was asked about though no house is served by it. */
function trySmall(known: SupplyCase, flows: Flows): SupplyTrial | undefined {
  return known.size === undefined ? undefined : tryMain(known, flows, known.size);
}

function sizesFrom(pipe: PipeKind, smallest: PipeSize): readonly PipeSize[] {
  const sizes = usualSizes(pipe);
  return sizes.slice(sizes.indexOf(smallest));
}

/** Tries a main with the thinnest hot line that is slow enough and leaves enough, or the one that leaves most. */
function tryMain(known: SupplyCase, flows: Flows, size: PipeSize): SupplyTrial | undefined {
  const sizes = sizesFrom(known.pipe, SMALLEST_LINE);
  const lines = sizes.slice(0, Math.max(sizes.indexOf(size), 0) + 1);
  const tried = lines.flatMap((hotSize) => tryPipes(known, flows, size, hotSize) ?? []);
  const slow = tried.filter(({ hotVelocity_m_s }) => hotVelocity_m_s <= flows.hotLimit_m_s);
  return slow.find(({ isTooLow }) => !isTooLow) ?? slow.at(-1) ?? tried.at(-1);
}

function tryPipes(known: SupplyCase, flows: Flows, size: PipeSize, hotSize: PipeSize): SupplyTrial | undefined {
  const main_m = insideDiameter_m(known.pipe, size);
  const hot_m = insideDiameter_m(known.pipe, hotSize);
  if (main_m === undefined || hot_m === undefined) return undefined;
  const counted = 1 + known.fittings;
  const mainLength_m = (known.length_m - known.hot_length_m) * counted;
  const velocity = velocity_m_s(flows.demand_L_s, main_m);
  const hotVelocity = velocity_m_s(flows.hot_L_s, hot_m);
  const mainFriction_kPa = frictionDrop_kPa(flows.demand_L_s, main_m, mainLength_m, known.cold_C);
  const hotFriction_kPa = frictionDrop_kPa(flows.hot_L_s, hot_m, known.hot_length_m * counted, known.setpoint_C);
  const left_kPa = flows.unpiped_kPa - mainFriction_kPa - hotFriction_kPa;
  return {
    size,
    hotSize,
    inside_m: main_m,
    hotInside_m: hot_m,
    hotFlow_L_s: flows.hot_L_s,
    velocity_m_s: velocity,
    hotVelocity_m_s: hotVelocity,
    mainFriction_kPa,
    hotFriction_kPa,
    left_kPa,
    isTooFast: velocity > flows.coldLimit_m_s || hotVelocity > flows.hotLimit_m_s,
    isTooLow: left_kPa < known.needed_kPa,
  };
}

/**
 * Pressure that a height of water takes.
 * @param rise_m height of the fixture over the meter [m], -100..100
 * @param water_C water temperature [°C], 0..100
 * @returns pressure [kPa], negative downhill
 * @source rho g h; 0.433 psi a foot in IPC E103.2.2
 */
export function head_kPa(rise_m: number, water_C: number): number {
  requireWithin("rise_m", rise_m, -100, 100);
  return (waterDensity_kg_m3(water_C) * GRAVITY * rise_m) / PA_PER_KPA;
}

function sumLosses({ losses_kPa }: SupplyCase): number {
  return LOSSES.reduce((sum, loss) => sum + losses_kPa[loss], 0);
}

/** The pressure that piping is sized on: flowing where it was measured, and a regulator's by the 80 % of the UPC. */
function startPressure({ pressure_kPa, residual_kPa, regulator_kPa }: SupplyCase): {
  readonly start_kPa: number;
  readonly startedFrom: SupplyPlan["startedFrom"];
} {
  const street_kPa = residual_kPa ?? pressure_kPa;
  const street = { start_kPa: street_kPa, startedFrom: residual_kPa === undefined ? "static" : "residual" } as const;
  const isMissing = regulator_kPa === undefined && pressure_kPa > REGULATE_ABOVE_kPa * (1 + 1e-9);
  if (regulator_kPa === undefined && !isMissing) return street;
  const regulated_kPa = SIZING_SHARE * (regulator_kPa ?? REGULATE_ABOVE_kPa);
  if (regulated_kPa >= street_kPa) return street;
  return { start_kPa: regulated_kPa, startedFrom: isMissing ? "regulator_missing" : "regulated" };
}
