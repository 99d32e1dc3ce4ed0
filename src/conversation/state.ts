import type { KnownFacts } from "../declaration/facts.ts";

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
}

/** What a conversation remembers of one person. Plain data: it is stored as JSON and undone by restoring it. */
export interface ConversationState {
  readonly walk?: Walk;
  /** The last question that was answered, so that "hot 150" or "how?" can follow it. */
  readonly last?: { readonly topic: string; readonly facts: KnownFacts };
  /** Number of walks ever started here; makes walk ids. */
  readonly walksStarted: number;
  /** Earlier states, newest last, for `undo`; each without its own past. */
  readonly past: readonly PastState[];
}
export interface PastState {
  readonly walk?: Walk;
  readonly last?: { readonly topic: string; readonly facts: KnownFacts };
  /** Preferences as they were, when the step changed them. */
  readonly units?: "us" | "si";
  readonly language?: "en" | "es";
}
