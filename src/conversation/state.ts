import type { KnownFacts } from "../declaration/facts.ts";
import type { Language } from "../messages/language.ts";
import type { Quantity, UnitSystem } from "../units/quantity-kinds.ts";

/** Something in a request that must be settled before it can be answered. */
export type Unsettled =
  | {
      readonly kind: "unknown-word";
      readonly word: string;
      readonly nearest: readonly string[];
      /** The request as it was typed, so that the word can be put right in it. */
      readonly text: string;
    }
  | { readonly kind: "ambiguous"; readonly typed: string; readonly candidates: readonly string[] };

/** A guided walk through the facts of one topic. */
export interface Walk {
  /** Short id, so that a button of an older walk is recognised. */
  readonly id: string;
  readonly topic: string;
  readonly facts: KnownFacts;
  /** Facts still to be asked, in order; the first is the question on the table. */
  readonly toAsk: readonly string[];
  /** Facts asked so far, in order, for `back`. */
  readonly asked: readonly string[];
  /** Comes before any question: the first of these is on the table as long as there is one. */
  readonly unsettled?: readonly Unsettled[];
  /** The answer that this walk changes, so that what changed can be said. */
  readonly revises?: string;
}

/** A question that was answered: what went in (without what was assumed), and the numbers that came out. */
export interface LastAnswer {
  readonly topic: string;
  readonly facts: KnownFacts;
  /** Id of the walk or request that it answered, so that its buttons are recognised. */
  readonly walk?: string;
  readonly numbers?: Readonly<Record<string, Quantity>>;
}

/** What a conversation remembers of one person. Plain data: it is stored as JSON and undone by restoring it. */
export interface ConversationState {
  readonly walk?: Walk;
  /** Walks that were set aside or stopped, oldest first; `resume` returns to the newest. */
  readonly parked?: readonly Walk[];
  /** The last question that was answered, so that "hot 150" or "how?" can follow it. */
  readonly last?: LastAnswer;
  /** Number of walks and requests ever started here; never goes back, so that their ids stay unique. */
  readonly walksStarted: number;
  /** Earlier states, newest last, for `undo`; each without its own past. */
  readonly past: readonly PastState[];
}
export interface PastState {
  readonly walk?: Walk;
  readonly parked?: readonly Walk[];
  readonly last?: LastAnswer;
  /** Preferences as they were, when the step changed them. */
  readonly units?: UnitSystem;
  readonly language?: Language;
}

export const EMPTY_STATE: ConversationState = { walksStarted: 0, past: [] };
