import type { BaseUnitOf, QuantityKind } from "../units/quantity-kinds.ts";
import type { Source } from "./source.ts";

/**
 * What a topic must know. A fact without `default`, not `optional` and not excused (`unless`) is asked for; a default is used, and shown as
 * assumed, until somebody says otherwise. Words, questions and help for a fact live in the message catalogues.
 */
interface FactCommon<V> {
  /** Value used when nobody says otherwise; always shown as assumed, with its source. */
  readonly default?: { readonly value: V; readonly source: Source };
  /** True: may stay unknown without a default. */
  readonly optional?: true;
  /** True: a guided walk asks for it although it has a default (it matters, and people usually know it). */
  readonly ask?: true;
  /** Id of another fact of the topic that makes this one needless: a named model says how large its tank is. */
  readonly unless?: string;
  /** True: a value without its word never lands here ("60 psi" alone is not the relief setting). */
  readonly byNameOnly?: true;
  /** True: one of many that only a guide asks for; forms, help and manual leave it out. */
  readonly unlisted?: true;
}

export interface QuantityFact<K extends QuantityKind = QuantityKind> extends FactCommon<number> {
  readonly type: "quantity";
  readonly quantity: K;
  /** Allowed range, in the base unit, both ends included. */
  readonly min: number;
  readonly max: number;
  /** Usual answers, in the base unit, offered as buttons. */
  readonly usual?: readonly number[];
  /** True: whole numbers only. */
  readonly whole?: true;
}
export interface ChoiceFact<O extends string = string> extends FactCommon<O> {
  readonly type: "choice";
  readonly options: readonly O[];
  /** Another fact of the topic, a quantity: a measured value typed for this question is kept there instead. */
  readonly orReading?: string;
}
export interface FlagFact extends FactCommon<boolean> {
  readonly type: "flag";
}
/** A short free word, such as a catalogue model or a place; `books` decides whether it is known. */
export interface NameFact extends FactCommon<string> {
  readonly type: "name";
  /** Which list of the books the name must stand in, so that it can be checked and offered. */
  readonly of: "model" | "place" | "person" | "job" | "anybody" | "truck" | "part";
  /** Another fact of the topic: an answer is about the one or the other, and the newer one stands. */
  readonly insteadOf?: string;
}
/** A calendar day, written YYYY-MM-DD. */
export interface DayFact extends FactCommon<string> {
  readonly type: "day";
}

/** What somebody says in their own words; the words of a request that are no other fact land here. */
export interface TextFact extends FactCommon<string> {
  readonly type: "text";
  /** A name fact of the topic: an amount beside such a name is this, with or without a sign ("mixing-valve=+2"). */
  readonly amountOf?: string;
  /** True: a name of the books or the word of a flag ends it: "tool=TH-3 wren gone". */
  readonly isShort?: true;
  /** True: its word needs no sign, and all that stands behind it is meant: "note the dog bites". */
  readonly takesRest?: true;
  /** Another fact of the topic, a quantity: a measured value typed for this question is kept there instead. */
  readonly orReading?: string;
}

export type FactSpec = QuantityFact | ChoiceFact | FlagFact | NameFact | DayFact | TextFact;
export type FactSpecs = Readonly<Record<string, FactSpec>>;

type Value<F> = F extends QuantityFact
  ? number
  : F extends ChoiceFact<infer O>
    ? O
    : F extends FlagFact
      ? boolean
      : string;
type Maybe<F, V> = F extends { optional: true } | { unless: string } ? V | undefined : V;
type KeyOf<Id extends string, F> =
  F extends QuantityFact<infer K> ? (BaseUnitOf<K> extends "" ? Id : `${Id}_${BaseUnitOf<K>}`) : Id;

/** What `compute` receives: one field a fact, its unit in its name (`tank` of kind volume arrives as `tank_L`). */
export type FactsOf<S extends FactSpecs> = {
  readonly [Id in keyof S & string as KeyOf<Id, S[Id]>]: Maybe<S[Id], Value<S[Id]>>;
};

/** Where a known value came from. */
export type FactOrigin = "asked" | "assumed" | "job" | "catalogue";
export type FactValue = number | string | boolean;
export interface KnownFact {
  readonly value: FactValue;
  readonly from: FactOrigin;
  /** What the person typed, kept so that it can be shown as they wrote it. */
  readonly typed?: string;
}
/** A value that a topic took from the books because nobody said otherwise. */
export interface Assumption {
  readonly value: FactValue;
  readonly source: Source;
}
export type KnownFacts = Readonly<Record<string, KnownFact>>;
