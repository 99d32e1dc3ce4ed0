import type { Quantity } from "../units/quantity-kinds.ts";
import type { FactSpecs, FactValue } from "./facts.ts";
import { nameWithUnit } from "./run-topic.ts";

/**
 * What was told to a topic, ready to be written as a request again, so that a button changes one thing and keeps the
 * rest. Facts that have their default are left out: it will be taken again.
 */
export function askedFacts(
  specs: FactSpecs,
  facts: Readonly<Record<string, FactValue | undefined>>,
): Readonly<Record<string, Quantity | string | boolean>> {
  const told = Object.entries(specs).flatMap(([id, spec]): [string, Quantity | string | boolean][] => {
    const value = facts[nameWithUnit(id, spec)];
    if (value === undefined || value === spec.default?.value) return [];
    if (typeof value !== "number") return [[id, value]];
    return spec.type === "quantity" ? [[id, { kind: spec.quantity, value }]] : [];
  });
  return Object.fromEntries(told);
}
