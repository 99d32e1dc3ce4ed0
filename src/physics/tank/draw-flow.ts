import { byte, cell, whole } from "./cell.ts";
import { makeOpenDraws, type OpenDraws } from "./draw.ts";
import type { Draws } from "./draw-list.ts";

/** What each draw got, in the order of the draw list. */
export interface DrawRecords {
  /** Mean and lowest temperature delivered [C]. */
  readonly mean_C: Float64Array;
  readonly lowest_C: Float64Array;
  /** Volume delivered below the wanted temperature [L]. */
  readonly short_L: Float64Array;
  /** Hot water taken from the tank [L]. */
  readonly hot_L: Float64Array;
}

/** Opens and closes draws as time passes. */
export interface DrawFlow {
  readonly draws: Draws;
  readonly open: OpenDraws;
  readonly records: DrawRecords;
  /** End [s] and list number of each open draw. */
  readonly ends_s: Float64Array;
  readonly numbers: Int32Array;
  /** Temperature that a valve at the tank blends hot water down to [C]; infinity without one. */
  readonly valve_C: number;
  /** A draw is short below what is wanted less this [K]. */
  readonly allowance_K: number;
  next: number;
  /** Water delivered too cold by all draws that are over [L]. */
  short_L: number;
}

const NEVER = Number.POSITIVE_INFINITY;

export function prepareDrawFlow(draws: Draws, valve_C: number, allowance_K: number): DrawFlow {
  const column = () => new Float64Array(draws.count);
  return {
    draws,
    open: makeOpenDraws(draws.mostAtOnce),
    records: { mean_C: column(), lowest_C: column(), short_L: column(), hot_L: column() },
    ends_s: new Float64Array(draws.mostAtOnce),
    numbers: new Int32Array(draws.mostAtOnce),
    valve_C,
    allowance_K,
    next: 0,
    short_L: 0,
  };
}

/** Closes the draws that end now and opens those that begin. */
export function changeDraws(flow: DrawFlow, now_s: number): void {
  for (let slot = flow.open.count - 1; slot >= 0; slot -= 1)
    if (cell(flow.ends_s, slot) <= now_s) closeDraw(flow, slot);
  while (flow.next < flow.draws.count && cell(flow.draws.start_s, flow.next) <= now_s) {
    openDraw(flow, flow.next);
    flow.next += 1;
  }
}

/** Time at which the next draw begins or ends [s]. */
export function nextDrawChange_s(flow: DrawFlow): number {
  let next_s = flow.next < flow.draws.count ? cell(flow.draws.start_s, flow.next) : NEVER;
  for (let slot = 0; slot < flow.open.count; slot += 1) next_s = Math.min(next_s, cell(flow.ends_s, slot));
  return next_s;
}

/** Writes down the draws that are still open when the run ends, and those that never began: they got what they wanted. */
export function closeAllDraws(flow: DrawFlow): void {
  for (let slot = flow.open.count - 1; slot >= 0; slot -= 1) closeDraw(flow, slot);
  for (let number = flow.next; number < flow.draws.count; number += 1) {
    flow.records.mean_C[number] = cell(flow.draws.wanted_C, number);
    flow.records.lowest_C[number] = cell(flow.draws.wanted_C, number);
  }
}

function openDraw(flow: DrawFlow, number: number): void {
  const { open, draws } = flow;
  const slot = open.count;
  const wanted_C = cell(draws.wanted_C, number);
  const duration_s = cell(draws.duration_s, number);
  open.count = slot + 1;
  open.flow_L_s[slot] = cell(draws.volume_L, number) / duration_s;
  open.target_C[slot] = byte(draws.isMixed, number) === 1 ? Math.min(wanted_C, flow.valve_C) : flow.valve_C;
  open.judged_C[slot] = wanted_C - flow.allowance_K;
  open.volume_L[slot] = 0;
  open.warmth_L_C[slot] = 0;
  open.short_L[slot] = 0;
  open.hot_L[slot] = 0;
  open.lowest_C[slot] = NEVER;
  flow.ends_s[slot] = cell(draws.start_s, number) + duration_s;
  flow.numbers[slot] = number;
}

function closeDraw(flow: DrawFlow, slot: number): void {
  const { open, records } = flow;
  const number = whole(flow.numbers, slot);
  const volume_L = cell(open.volume_L, slot);
  const wanted_C = cell(flow.draws.wanted_C, number);
  // A draw of no water got what it wanted.
  records.mean_C[number] = volume_L > 0 ? cell(open.warmth_L_C, slot) / volume_L : wanted_C;
  records.lowest_C[number] = volume_L > 0 ? cell(open.lowest_C, slot) : wanted_C;
  records.short_L[number] = cell(open.short_L, slot);
  flow.short_L += cell(open.short_L, slot);
  records.hot_L[number] = cell(open.hot_L, slot);
  const last = open.count - 1;
  if (slot !== last) moveDraw(flow, last, slot);
  open.count = last;
}

function moveDraw(flow: DrawFlow, from: number, to: number): void {
  const { open } = flow;
  open.flow_L_s[to] = cell(open.flow_L_s, from);
  open.target_C[to] = cell(open.target_C, from);
  open.judged_C[to] = cell(open.judged_C, from);
  open.volume_L[to] = cell(open.volume_L, from);
  open.warmth_L_C[to] = cell(open.warmth_L_C, from);
  open.short_L[to] = cell(open.short_L, from);
  open.hot_L[to] = cell(open.hot_L, from);
  open.lowest_C[to] = cell(open.lowest_C, from);
  flow.ends_s[to] = cell(flow.ends_s, from);
  flow.numbers[to] = whole(flow.numbers, from);
}
