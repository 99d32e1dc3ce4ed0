import type { RaisedCaution } from "../declaration/answer.ts";
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
  /** Number of the job that it was begun for. */
  readonly job?: string;
}

/** A question that was answered: what went in (without what was assumed), and the numbers that came out. */
export interface LastAnswer {
  readonly topic: string;
  readonly facts: KnownFacts;
  /** Id of the walk or request that it answered, so that its buttons are recognised. */
  readonly walk?: string;
  readonly numbers?: Readonly<Record<string, Quantity>>;
  /** Number of the job that it was asked for. */
  readonly job?: string;
}

/** A caution that was shown, so that it need not be said again in full, and that a stop is not passed over. */
export interface ShownCaution extends Pick<RaisedCaution, "id" | "severity" | "data" | "local"> {
  /** Id of the walk or request whose answer showed it. */
  readonly walk: string;
  /** True: it was shown again with newer data, or its answer was put right; only its own button still speaks of it. */
  readonly isPast?: true;
}
/** A caution and the data that it was shown with, written down. */
export interface CautionKey {
  readonly caution: string;
  readonly about: string;
}

/** What a conversation remembers of one person. Plain data: it is stored as JSON and undone by restoring it. */
export interface ConversationState {
  readonly walk?: Walk;
  /** Walks that were set aside or stopped, oldest first; `resume` returns to the newest. */
  readonly parked?: readonly Walk[];
  /** The last question that was answered, so that "hot 150" or "how?" can follow it. */
  readonly last?: LastAnswer;
  /** Cautions that were shown here, oldest first; undo leaves them, because they were read. */
  readonly shown?: readonly ShownCaution[];
  /** Number of the job that is talked about. */
  readonly job?: string;
  /** Number of walks and requests ever started here; never goes back, so that their ids stay unique. */
  readonly walksStarted: number;
  /** Earlier states, newest last, for `undo`; each without its own past. */
  readonly past: readonly PastState[];
}
export interface PastState {
  readonly walk?: Walk;
  readonly parked?: readonly Walk[];
  readonly last?: LastAnswer;
  readonly job?: string;
  /** Preferences as they were, when the step changed them. */
  readonly units?: UnitSystem;
  readonly language?: Language;
  /** Cautions that the step recorded as seen or skipped. */
  readonly marked?: readonly CautionKey[];
  /** Events that the step wrote into a job, by their numbers; no job where it wrote only of the crew. */
  readonly entered?: Entered;
}
export interface Entered {
  readonly job: string;
  readonly events: readonly number[];
  /** What it said of people, trucks and stock, by the numbers of those events. */
  readonly crew?: readonly number[];
}
/** What a step changed besides the conversation, as it was before. */
export type StepChange = Pick<PastState, "units" | "language" | "marked" | "entered">;

export const EMPTY_STATE: ConversationState = { walksStarted: 0, past: [] };
