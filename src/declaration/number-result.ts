import type { Quantity } from "../units/quantity-kinds.ts";
import type { NumberResult } from "./answer.ts";
import type { Source } from "./source.ts";

/** A computed number with its equation, what went in under each symbol, and who says so. */
export function numberResult<I extends string>(
  id: I,
  quantity: Quantity,
  equation: string,
  inputs: Readonly<Record<string, Quantity>>,
  ...sources: readonly [Source, ...Source[]]
): NumberResult<I> {
  const listed = Object.entries(inputs).map(([symbol, input]) => ({ symbol, quantity: input }));
  return { id, quantity, how: { equation, inputs: listed, sources } };
}
