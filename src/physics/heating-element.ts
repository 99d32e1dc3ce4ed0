import type { Source } from "../declaration/source.ts";
import { requireWithin } from "./require-within.ts";

export const OHMS_LAW: Source = { basis: "computed", document: "Ohm's law, resistance taken as constant" };

const MOST_W = 50_000;
const LEAST_V = 1;
const MOST_V = 1000;

/**
 * Resistance of a heating element from its rating plate.
 * @param rated_W rated power [W], above 0, to 50000
 * @param rated_V rated voltage [V], 1..1000
 * @returns resistance [ohm]
 * @source R = V^2 / P
 * @limits resistance wire changes by a few percent from cold to hot (from memory)
 */
export function elementResistance_ohm(rated_W: number, rated_V: number): number {
  requireWithin("rated_W", rated_W, Number.MIN_VALUE, MOST_W);
  requireWithin("rated_V", rated_V, LEAST_V, MOST_V);
  return rated_V ** 2 / rated_W;
}

/**
 * Power of an element on another voltage than its rating.
 * @param rated_W rated power [W], 0..50000
 * @param rated_V rated voltage [V], 1..1000
 * @param supply_V voltage at the element [V], 0..1000
 * @returns power [W]
 * @source P = P_rated (V / V_rated)^2
 */
export function powerAtVoltage_W(rated_W: number, rated_V: number, supply_V: number): number {
  requireWithin("rated_W", rated_W, 0, MOST_W);
  requireWithin("rated_V", rated_V, LEAST_V, MOST_V);
  requireWithin("supply_V", supply_V, 0, MOST_V);
  return rated_W * (supply_V / rated_V) ** 2;
}

/**
 * Power of an element behind the resistance of its wire.
 * @param element_ohm element resistance [ohm], above 0
 * @param supply_V voltage at the panel [V], 0..1000
 * @param wire_ohm resistance of the wire there and back [ohm], >= 0
 * @returns power in the element [W]
 * @source series circuit: P = (V / (R + r))^2 R
 */
export function powerBehindWire_W(element_ohm: number, supply_V: number, wire_ohm: number): number {
  requireWithin("element_ohm", element_ohm, Number.MIN_VALUE, Number.MAX_VALUE);
  requireWithin("supply_V", supply_V, 0, MOST_V);
  requireWithin("wire_ohm", wire_ohm, 0, Number.MAX_VALUE);
  return (supply_V / (element_ohm + wire_ohm)) ** 2 * element_ohm;
}
