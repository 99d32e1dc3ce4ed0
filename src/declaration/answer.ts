import type { Job, JobEvent } from "../jobs/job.ts";
import type { JobAct } from "../jobs/job-act.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import type { Language } from "../messages/language.ts";
import type { Quantity, QuantityKind } from "../units/quantity-kinds.ts";
import type { Chart } from "./chart.ts";
import type { Assumption, KnownFacts } from "./facts.ts";
import type { Source } from "./source.ts";

export type Verdict = "good" | "caution" | "no" | "info";

/** One symbol of an equation with the value that went in. */
export interface HowInput {
  readonly symbol: string;
  readonly quantity: Quantity;
}
/** What "how?" shows: the equation, what went in, and who says so. */
export interface How {
  readonly equation: string;
  readonly inputs: readonly HowInput[];
  readonly sources: readonly [Source, ...Source[]];
}

/** A computed number. `id` is a public interface: snake_case, documented, kept stable. */
export interface NumberResult<I extends string = string> {
  readonly id: I;
  readonly quantity: Quantity;
  /** Upper end, where sources differ and the honest answer is a range. */
  readonly upTo?: number;
  readonly how: How;
}
/** A result that is a name rather than a number, such as a conductor or the next stock size. */
export interface NameResult<I extends string = string> {
  readonly id: I;
  readonly name: string;
  readonly how: How;
}
export type Result<I extends string = string> = NumberResult<I> | NameResult<I>;

/** What one field of a finding holds: a quantity, a plain word that needs no translation, or ids of facts with commas between. */
export type DatumKind = QuantityKind | "word" | "fact";
export type FindingSpecs = Readonly<Record<string, Readonly<Record<string, DatumKind>>>>;
export type FindingDatum = Quantity | string;
export type DataOf<D extends Readonly<Record<string, DatumKind>>> = {
  readonly [K in keyof D]: D[K] extends QuantityKind ? Quantity<D[K]> : string;
};
/** What a topic noticed: a code and data, never a sentence. */
export interface Finding {
  readonly code: string;
  readonly data: Readonly<Record<string, FindingDatum>>;
}
export type FindingOf<F extends FindingSpecs> = {
  [C in keyof F & string]: { readonly code: C; readonly data: DataOf<F[C]> };
}[keyof F & string];

export type Severity = "stop" | "must" | "should" | "note";
/** Who has the last word on a caution. */
export type Decider = "authority" | "electrician" | "plumber" | "manufacturer" | "health" | "household";
/** A caution that these facts raise; its sentences live in the catalogues under `id`. */
export interface RaisedCaution {
  readonly id: string;
  readonly severity: Severity;
  readonly data: Readonly<Record<string, FindingDatum>>;
  readonly cites: readonly [Source, ...Source[]];
  readonly decides: Decider;
  /** What the place or the company has changed about it. */
  readonly local?: LocalChange;
}
/** What a company writes itself, in each language. */
export type LocalText = Readonly<Record<Language, string>>;
/** A local amendment, as it is shown with the caution that it changes. */
export interface LocalChange {
  readonly action: "tighten" | "replace" | "silence";
  /** Said after what the caution asks; with "replace" instead of it. */
  readonly asks?: LocalText;
  readonly because: LocalText;
  readonly by: Source;
}

/** A cell is a quantity, a plain name, a finding that the catalogue words, or several of these one after the other. */
export type TableCell<F extends Finding = Finding> = Quantity | F | string | readonly F[];
/** A table of results. */
export interface AnswerTable<F extends Finding = Finding> {
  readonly id: string;
  readonly rows: readonly (readonly TableCell<F>[])[];
}

/** A request that is a sensible next move, offered as a button; `code` is worded by the catalogue like a finding. */
export interface NextStep<F extends Finding = Finding> {
  readonly say: F;
  readonly request: string;
  /** True: the request only makes sense about this very answer. */
  readonly follows?: true;
}

export interface Answer<I extends string = string, F extends Finding = Finding> {
  readonly kind: "answer";
  readonly verdict: Verdict;
  /** The one sentence that answers the question. */
  readonly headline: F;
  readonly results: readonly Result<I>[];
  readonly findings: readonly F[];
  readonly tables?: readonly AnswerTable<F>[];
  readonly charts?: readonly Chart[];
  readonly next?: readonly NextStep<F>[];
  /** Facts that nobody told and that were taken from the books, by id; shown as assumed. */
  readonly assumed?: Readonly<Record<string, Assumption>>;
  /** What is to be done in the records when this is a new answer; the card says so. */
  readonly acts?: readonly JobAct[];
  /** A job whose record is shown under the answer, worded from the topics that its facts were told to. */
  readonly job?: Job;
  /** Everything that happened to one job, oldest first; shown as its history. */
  readonly history?: readonly JobEvent[];
  /** The whole record of a job, shown the same way. */
  readonly record?: JobRecord;
}
export interface NeedsFacts {
  readonly kind: "needs-facts";
  readonly missing: readonly [string, ...string[]];
}
/** A fact that cannot be answered with: outside its range (`min`, `max` in the base unit), or for a worded reason. */
export interface OutOfRange<F extends Finding = Finding> {
  readonly kind: "out-of-range";
  readonly fact: string;
  readonly value: Quantity | string;
  readonly min?: number;
  readonly max?: number;
  readonly reason?: F;
}

/** What one question came to, with every fact that went in and the cautions that those facts raise. */
export interface Answered {
  readonly topic: string;
  readonly facts: KnownFacts;
  readonly result: Answer | NeedsFacts | OutOfRange;
  readonly cautions: readonly RaisedCaution[];
  /** Cautions that would be raised here, had no local amendment silenced them; only where the topic tells of them. */
  readonly silenced?: readonly RaisedCaution[];
}

/** Short way to write a quantity: `q("volume", tank_L)`. */
export function q<K extends QuantityKind>(kind: K, value: number): Quantity<K> {
  return { kind, value };
}
