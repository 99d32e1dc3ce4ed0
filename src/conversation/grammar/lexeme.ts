import type { QuantityToken } from "../../units/written-value.ts";
import type { Meaning } from "./topic-words.ts";

/** A number, an amount or a day. */
export interface ValueLexeme {
  readonly kind: "value";
  readonly token: QuantityToken;
  /** YYYY-MM-DD, when it is a day. */
  readonly day?: string;
}
/** A known word or phrase with everything that it may mean here. */
export interface WordLexeme {
  readonly kind: "word";
  readonly start: number;
  readonly end: number;
  readonly text: string;
  readonly meanings: readonly Meaning[];
}
/** A fact's name, an equals sign or a colon, and what stands behind it. */
export interface PairLexeme {
  readonly kind: "pair";
  readonly key: string;
  readonly facts: readonly string[];
  readonly text: string;
  readonly start: number;
  readonly end: number;
}
/** A word that is not known here; `isKey` when it stood before an equals sign. */
interface UnknownLexeme {
  readonly kind: "unknown";
  readonly word: string;
  readonly start: number;
  readonly isKey: boolean;
}
/** A comma, a line end, an "and": what stands on one side does not name what stands on the other. */
interface BreakLexeme {
  readonly kind: "break";
}
export type Lexeme = ValueLexeme | WordLexeme | PairLexeme | UnknownLexeme | BreakLexeme;

/** A request's text with its folded twin; places are the same in both. */
export interface PlainText {
  readonly text: string;
  readonly folded: string;
}
