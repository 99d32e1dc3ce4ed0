import type { Books, Company, NameLists } from "../books/books.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import type { Job } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import type { Library } from "../library.ts";
import type { Aim, Card, TextBlock } from "../messages/card.ts";
import type { Reader, Voice } from "../messages/voice.ts";
import type { Channel } from "../ports/outbox.ts";
import type { CautionMark, OpenWalk } from "../ports/store.ts";
import type { CautionLog } from "./shown-cautions.ts";
import type { ConversationState, StepChange } from "./state.ts";

/** A form that was sent: what stands in each field. */
export interface SentForm {
  readonly topic: string;
  readonly fields: Readonly<Record<string, string>>;
}

/** One message with everything that decides what it means. */
export interface Turn {
  readonly text: string;
  readonly aim?: Aim;
  readonly form?: SentForm;
  readonly state: ConversationState;
  readonly reader: Reader;
  /** A walk that this person has open in another conversation. */
  readonly elsewhere?: OpenWalk;
  /** Makes the id of a walk or answer that this message may start unlike any other. */
  readonly newId: string;
  /** The channel that this is said in, where it is one that posts may go to. */
  readonly channel?: Channel;
  readonly company: Pick<Company, "name" | "isInvented"> & Partial<Company>;
  /** What recording a caution as seen takes; left out where nothing is kept. */
  readonly cautions?: CautionTurn;
  readonly library: Library;
  /** Names of the company's books, offered where one of them is asked for. */
  readonly names: NameLists;
  /** The books themselves, which guided topics ask by. */
  readonly books?: Books;
  /** What the records say of who asks and of the job, for the topics that have such facts. */
  readonly record?: KnownFacts;
  /** The job that is talked about, as it stands. */
  readonly job?: Job;
}

/** What was done about cautions in this conversation, where its people are, and who speaks now. */
export interface CautionTurn extends CautionLog {
  readonly speaker: string;
  readonly now_ms: number;
}

/** What a message leaves behind besides its card. */
interface Outcome {
  readonly state: ConversationState;
  readonly reader: Reader;
  readonly carriedFrom?: OpenWalk;
  /** What the step that is taken back wrote into a job; no events where it did what only the record's own rules undo. */
  readonly takesBack?: NonNullable<StepChange["entered"]>;
}
/** The message is answered by this card. */
export interface Show extends Outcome {
  readonly kind: "show";
  readonly card: Card;
  /** What is to be recorded about cautions. */
  readonly marks?: readonly CautionMark[];
  /** What the answer wants done in the records. */
  readonly acts?: readonly JobAct[];
}
/** The message is answered by running a topic and then `finish`. */
export interface Run extends Outcome {
  readonly kind: "run";
  readonly topic: string;
  readonly facts: KnownFacts;
  readonly purpose: Purpose;
  /** Number of the job that it is asked for. */
  readonly job?: string;
  /** What `undo` returns to once there is a new answer. */
  readonly before: ConversationState;
  /** Said before the answer. */
  readonly notes: readonly TextBlock[];
}
/** A new answer (which may change an earlier one), the same answer again, or how it was got. */
export type Purpose =
  | { readonly kind: "answer"; readonly walk: string; readonly revises?: string }
  | { readonly kind: "again"; readonly walk: string }
  | { readonly kind: "how"; readonly walk: string; readonly result?: string };
export type Decision = Show | Run;

/** A turn while it is worked on: `before` is what `undo` returns to, `state` what has been made of it so far. */
export interface Scene extends Turn {
  readonly voice: Voice;
  readonly before: ConversationState;
  readonly carriedFrom?: OpenWalk;
}
