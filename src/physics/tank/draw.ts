import { cell } from "./cell.ts";
import type { Engine } from "./engine.ts";
import { flowThroughChain } from "./mixed-chain.ts";
import { separateSlivers, shapeSlugs, type TankState } from "./tank-state.ts";

/** A chain of mixed layers moves at most this share of a layer at a time, so that fixtures follow the outlet. */
const CHAIN_PORTION = 0.05;
/** A remainder of time or of a layer below this is rounding. */
const ROUNDING = 1e-12;

/** Draws that are open at once, as columns, and what the present portion of water is. */
export interface OpenDraws {
  count: number;
  readonly flow_L_s: Float64Array;
  /** Temperature that a mixing valve or fixture blends down to [C]; infinity where nothing blends. */
  readonly target_C: Float64Array;
  /** Below this the draw is short of warm water [C]. */
  readonly judged_C: Float64Array;
  /** Totals of each open draw. */
  readonly volume_L: Float64Array;
  readonly warmth_L_C: Float64Array;
  readonly short_L: Float64Array;
  readonly hot_L: Float64Array;
  readonly lowest_C: Float64Array;
  /**
   * Present portion: temperatures of the water that comes in and that leaves [C], hot flow of all draws [L/s], time [s],
   * share of a layer. Fields, so that no call puts a number on the heap.
   */
  inlet_C: number;
  out_C: number;
  hot_L_s: number;
  took_s: number;
  share: number;
}

export function makeOpenDraws(most: number): OpenDraws {
  const column = () => new Float64Array(most);
  return {
    count: 0,
    flow_L_s: column(),
    target_C: column(),
    judged_C: column(),
    volume_L: column(),
    warmth_L_C: column(),
    short_L: column(),
    hot_L: column(),
    lowest_C: column(),
    inlet_C: 0,
    out_C: 0,
    hot_L_s: 0,
    took_s: 0,
    share: 0,
  };
}

/**
 * Draws through all open fixtures for a while, slug by slug, so that each gets the water it would get from the tank.
 * Heat sources and losses wait meanwhile; `advanceTo` follows over the same seconds.
 * @param engine its tank is drawn from
 * @param open the open draws; their totals grow
 * @param seconds how long [s]
 * @source plug flow; mixing V_hot / V = (T_target - T_cold) / (T_hot - T_cold)
 */
export function drawHotWater(engine: Engine, open: OpenDraws, seconds: number): void {
  open.inlet_C = engine.inlet_C;
  engine.isMoved = true;
  if (engine.drawModel === "mixed_layers") drawThroughMixedLayers(engine, open, seconds);
  else drawPlug(engine, open, seconds);
}

function drawPlug(engine: Engine, open: OpenDraws, seconds: number): void {
  const { tank } = engine;
  const { layers, layer_L } = tank.model;
  separateSlivers(tank);
  let left_s = seconds;
  while (left_s > ROUNDING * seconds) {
    open.out_C = cell(tank.t_C, layers);
    addHotFlow(open);
    const room = 1 - tank.phase;
    const wanted = (open.hot_L_s * left_s) / layer_L;
    open.share = Math.min(room, wanted);
    open.took_s = wanted > room ? (room * layer_L) / open.hot_L_s : left_s;
    serve(open);
    writeDraw(engine, open);
    liftColumn(tank, open);
    left_s -= open.took_s;
  }
  shapeSlugs(tank);
}

/** The same through a chain of fully mixed layers: the textbook tank, kept for comparison and verification. */
function drawThroughMixedLayers(engine: Engine, open: OpenDraws, seconds: number): void {
  const { t_C: t, model } = engine.tank;
  let left_s = seconds;
  while (left_s > ROUNDING * seconds) {
    open.out_C = cell(t, model.layers);
    addHotFlow(open);
    open.took_s = Math.min(left_s, open.hot_L_s > 0 ? (CHAIN_PORTION * model.layer_L) / open.hot_L_s : left_s);
    open.share = (open.hot_L_s * open.took_s) / model.layer_L;
    if (open.share > 0) open.out_C = flowThroughChain(engine.tank, open.share, engine.inlet_C);
    serve(open);
    writeDraw(engine, open);
    left_s -= open.took_s;
  }
}

/** Share of a draw that comes from the tank: all of it, or what a blend to the target needs. */
function hotShare(target_C: number, hot_C: number, cold_C: number): number {
  if (!(hot_C > target_C)) return 1;
  return target_C > cold_C ? (target_C - cold_C) / (hot_C - cold_C) : 0;
}

function addHotFlow(open: OpenDraws): void {
  const { flow_L_s, target_C, inlet_C, out_C } = open;
  let sum = 0;
  for (let k = 0; k < open.count; k += 1) sum += cell(flow_L_s, k) * hotShare(cell(target_C, k), out_C, inlet_C);
  open.hot_L_s = sum;
}

function serve(open: OpenDraws): void {
  const { inlet_C, out_C, took_s } = open;
  for (let k = 0; k < open.count; k += 1) {
    const target_C = cell(open.target_C, k);
    const litres = cell(open.flow_L_s, k) * took_s;
    const got_C = out_C > target_C ? Math.max(target_C, inlet_C) : out_C;
    open.volume_L[k] = cell(open.volume_L, k) + litres;
    open.warmth_L_C[k] = cell(open.warmth_L_C, k) + litres * got_C;
    open.hot_L[k] = cell(open.hot_L, k) + litres * hotShare(target_C, out_C, inlet_C);
    if (got_C < cell(open.judged_C, k)) open.short_L[k] = cell(open.short_L, k) + litres;
    if (got_C < cell(open.lowest_C, k)) open.lowest_C[k] = got_C;
  }
}

function writeDraw(engine: Engine, open: OpenDraws): void {
  const { ledger } = engine;
  const { layer_L, layer_J_K } = engine.tank.model;
  ledger.drawn_L += open.share * layer_L;
  ledger.drawnOut_J += open.share * layer_J_K * open.out_C;
  ledger.broughtIn_J += open.share * layer_J_K * open.inlet_C;
}

/**
 * Lifts the column by the present share, which is never more than the top slug has left. The water that comes in blends
 * with the stirred slugs at the bottom; one of them leaves the stirred zone at each full layer. Blending whole slugs makes
 * the result the same however finely a draw is cut.
 */
function liftColumn(tank: TankState, open: OpenDraws): void {
  const { t_C: t, model } = tank;
  const { stirredSlugs } = model;
  let heat = tank.phase * cell(t, 0) + open.share * open.inlet_C;
  tank.phase += open.share;
  const volume = tank.phase + stirredSlugs;
  for (let i = 1; i <= stirredSlugs; i += 1) heat += cell(t, i);
  const blend_C = volume > 0 ? heat / volume : open.inlet_C;
  for (let i = 0; i <= stirredSlugs; i += 1) t[i] = blend_C;
  if (tank.phase < 1 - ROUNDING) return;
  for (let i = model.layers; i > 0; i -= 1) t[i] = cell(t, i - 1);
  tank.phase = 0;
}
