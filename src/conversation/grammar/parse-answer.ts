import type { FactSpec, FactValue } from "../../declaration/facts.ts";
import type { UnitId } from "../../units/unit-table.ts";
import { makeFactReader } from "./fact-reader.ts";
import type { FactWords } from "./fact-words.ts";
import type { RequestProblem } from "./parsed-request.ts";
import { readTyped, type TypedOptions } from "./read-typed.ts";

export type ParsedAnswer =
  /** `readAs` when no unit was typed and the reader's was taken. */
  | { readonly ok: true; readonly value: FactValue; readonly readAs?: UnitId }
  | { readonly ok: false; readonly problem: RequestProblem };

/**
 * Reads what was typed when one fact was asked for: a value with its unit or without, yes or no, an option by its words
 * or its number in the list, a day, a name.
 * @param texts the fact's words in every language, so that a Spanish word is understood in an English conversation
 */
export function parseAnswer(
  text: string,
  factId: string,
  spec: FactSpec,
  texts: readonly FactWords[],
  options: TypedOptions,
): ParsedAnswer {
  const typed = readTyped(text, makeFactReader(factId, spec, texts), options);
  if (typed.ok) return typed;
  return { ok: false, problem: { kind: "bad-value", fact: factId, typed: text.trim(), because: typed.problem } };
}
