import type { NameLists } from "../../books/books.ts";
import type { KnownFacts } from "../../declaration/facts.ts";
import type { Language } from "../../messages/language.ts";
import type { UnitSystem } from "../../units/quantity-kinds.ts";
import type { UnitId } from "../../units/unit-table.ts";

export interface RequestOptions {
  readonly language: Language;
  readonly units: UnitSystem;
  /** The topic that is already being talked about; a request that begins with another topic's word is about that one. */
  readonly topic?: string;
  /** Names of the company's books, which are known without a word before them. */
  readonly names?: NameLists;
  /** The day where the company is, YYYY-MM-DD; without it only dates are days. */
  readonly today?: string;
}

/** What one message asks, as far as it could be read; nothing in it is guessed. */
export interface ParsedRequest {
  readonly topic?: string;
  readonly facts: KnownFacts;
  readonly problems: readonly RequestProblem[];
  /** Numbers that were typed without a unit, with the unit that was taken for them. */
  readonly readings: readonly UnitReading[];
}
export interface UnitReading {
  readonly fact: string;
  readonly typed: string;
  readonly readAs: UnitId;
}

export type RequestProblem =
  /** A word that is not known here, with words that are and that look like it (topics, when no topic was found). */
  | { readonly kind: "unknown-word"; readonly word: string; readonly nearest: readonly string[] }
  /** A value that several facts could take, or none (no candidates). */
  | { readonly kind: "ambiguous"; readonly typed: string; readonly candidates: readonly string[] }
  | {
      readonly kind: "bad-value";
      readonly fact: string;
      readonly typed: string;
      readonly because: BadValueReason;
    }
  /** Two different values for one fact; neither is taken. */
  | { readonly kind: "twice"; readonly fact: string };

export type BadValueReason =
  | "not-a-number"
  | "wrong-unit"
  | "unknown-option"
  | "left-over"
  /** Figures that can be read two ways: 1.250 where commas mark decimals, or a share of 0.7. */
  | "two-readings"
  /** Not a day of the calendar, or one without its year. */
  | "not-a-day";
