import { requireWithin } from "../require-within.ts";

/**
 * Two temperatures that pull at each other and are pulled at from outside, as linear differential equations:
 *   C1 dT1/dt = G (T2 - T1) + K1 (S1 - T1) + Q1
 *   C2 dT2/dt = G (T1 - T2) + K2 (S2 - T2) + Q2
 * Numbers are fields so that a step puts nothing on the heap.
 */
export interface TwoNode {
  /** Heat capacities [J/K], > 0. */
  c1_J_K: number;
  c2_J_K: number;
  /** Conductance between the two [W/K], >= 0. */
  between_W_K: number;
  /** Conductance of each to what is around it [W/K], >= 0, and the temperature there, weighted by conductance [C]. */
  k1_W_K: number;
  k2_W_K: number;
  s1_C: number;
  s2_C: number;
  /** Heat put into each [W]. */
  q1_W: number;
  q2_W: number;
  /** State [C]. */
  t1_C: number;
  t2_C: number;
  /** Out: mean of each over the step [C]; heat flows of the step follow from these exactly. */
  mean1_C: number;
  mean2_C: number;
}

/** Conductance below which a node is not held by its surroundings at all [W/K]. */
const LEAST_HELD_W_K = 1e-3;

/**
 * Lets `seconds` pass, everything outside held constant.
 * @param node changed in place; at least one of the two must be held by its surroundings
 * @param seconds length of the step [s], > 0
 * @source exact solution: x(t) = x* + e^(A t) (x0 - x*) with the closed form of a 2 x 2 exponential,
 *   e^(A t) = e^(s t) (cosh r t I + (sinh r t / r)(A - s I)), s half the trace, r² = ((a11 - a22) / 2)² + a12 a21;
 *   the means from the integral of the equations, A ∫x dt = x(t) - x(0) - b t
 * @limits exact for constant surroundings; no step is too long to be stable
 */
export function passTwoNode(node: TwoNode, seconds: number): void {
  requireWithin("step [s]", seconds, Number.MIN_VALUE, 1e9);
  const { c1_J_K: c1, c2_J_K: c2, between_W_K: g, k1_W_K: k1, k2_W_K: k2 } = node;
  requireWithin("held by its surroundings [W/K]", k1 + k2, LEAST_HELD_W_K, 1e9);
  const a11 = -(g + k1) / c1;
  const a12 = g / c1;
  const a21 = g / c2;
  const a22 = -(g + k2) / c2;
  const b1 = (k1 * node.s1_C + node.q1_W) / c1;
  const b2 = (k2 * node.s2_C + node.q2_W) / c2;
  const det = a11 * a22 - a12 * a21;
  const settled1 = (a12 * b2 - a22 * b1) / det;
  const settled2 = (a21 * b1 - a11 * b2) / det;
  const half = (a11 + a22) / 2;
  const r = Math.sqrt(((a11 - a22) / 2) ** 2 + a12 * a21);
  // e^(s t) cosh r t and e^(s t) sinh r t / r, written so that nothing overflows; both exponents are negative.
  const slow = Math.exp((half + r) * seconds);
  const fast = Math.exp((half - r) * seconds);
  const cosh = (slow + fast) / 2;
  const sinh = r * seconds > SMALL ? (slow - fast) / (2 * r) : seconds * slow;
  const off1 = node.t1_C - settled1;
  const off2 = node.t2_C - settled2;
  const next1 = settled1 + cosh * off1 + sinh * ((a11 - half) * off1 + a12 * off2);
  const next2 = settled2 + cosh * off2 + sinh * (a21 * off1 + (a22 - half) * off2);
  const rise1 = (next1 - node.t1_C) / seconds - b1;
  const rise2 = (next2 - node.t2_C) / seconds - b2;
  node.mean1_C = (a22 * rise1 - a12 * rise2) / det;
  node.mean2_C = (a11 * rise2 - a21 * rise1) / det;
  node.t1_C = next1;
  node.t2_C = next2;
}

/** Below this r t the two exponents are one and the same. */
const SMALL = 1e-9;

/** One mass of water in well-stirred air: m dW/dt = f (S - W) + w. Fields for the same reason. */
export interface MoistNode {
  /** Dry air, and what else holds moisture with it, as kilograms of dry air [kg]. */
  air_kg: number;
  /** Dry air that comes and goes [kg/s], its humidity ratio by flow, and water put in [kg/s]. */
  flow_kg_s: number;
  supply: number;
  water_kg_s: number;
  /** State, and out: its mean over the step. */
  ratio: number;
  mean: number;
}

/**
 * Lets `seconds` pass, everything outside held constant.
 * @param node changed in place; the humidity ratio may come out below zero where more is taken than there is
 * @param seconds length of the step [s], > 0
 * @source exact solution W(t) = W* + (W0 - W*) e^(-f t / m); without any flow W rises by w t / m
 */
export function passMoistNode(node: MoistNode, seconds: number): void {
  const { air_kg, flow_kg_s: flow, supply, water_kg_s, ratio } = node;
  const turns = (flow * seconds) / air_kg;
  const straight = (water_kg_s * seconds) / air_kg;
  if (turns < FEWEST_TURNS) {
    node.ratio = ratio + straight + turns * (supply - ratio);
    node.mean = (node.ratio + ratio) / 2;
    return;
  }
  const settled = supply + water_kg_s / flow;
  node.ratio = settled + (ratio - settled) * Math.exp(-turns);
  node.mean = settled - (node.ratio - ratio) / turns;
}

/** With fewer changes of air than this a straight line is exact to rounding. */
const FEWEST_TURNS = 1e-7;
