import { cell } from "./cell.ts";
import type { TankState } from "./tank-state.ts";

/**
 * Sends water through N fully mixed layers in series, exactly.
 *
 * Each layer's temperature is a Poisson-weighted blend of those below it: with theta layers of water passed, the share
 * e^(-theta) theta^k / k! of layer i's water was in layer i - k before. The mean outlet temperature is the same sum
 * integrated over the passage.
 * @param tank at rest (phase 0), changed in place
 * @param theta water passed, in layers, > 0
 * @param inlet_C temperature of the water coming in [C]
 * @returns mean temperature of the water that left [C]
 * @source exact solution of dT_i/dtheta = T_(i-1) - T_i (Erlang distribution)
 */
export function flowThroughChain(tank: TankState, theta: number, inlet_C: number): number {
  const { t_C: t } = tank;
  const top = tank.model.layers;
  const stay = Math.exp(-theta);
  const mean_C = meanOutlet_C(tank, theta, inlet_C, stay);
  for (let i = top; i >= 1; i -= 1) {
    let weight = stay;
    let rest = 1;
    let sum = 0;
    for (let k = 0; k < i; k += 1) {
      sum += weight * cell(t, i - k);
      rest -= weight;
      weight *= theta / (k + 1);
    }
    t[i] = sum + rest * inlet_C;
  }
  t[0] = cell(t, 1);
  return mean_C;
}

function meanOutlet_C(tank: TankState, theta: number, inlet_C: number, stay: number): number {
  const top = tank.model.layers;
  let weight = stay;
  let passed = -Math.expm1(-theta);
  let rest = theta;
  let sum = 0;
  for (let k = 0; k < top; k += 1) {
    sum += passed * cell(tank.t_C, top - k);
    rest -= passed;
    weight *= theta / (k + 1);
    passed -= weight;
  }
  return (sum + rest * inlet_C) / theta;
}
