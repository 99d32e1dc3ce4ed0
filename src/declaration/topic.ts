import type { Books } from "../books/books.ts";
import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Hazard } from "../faults/knowledge.ts";
import type { JobChange } from "../jobs/job.ts";
import type {
  Answer,
  AnswerTable,
  Finding,
  FindingOf,
  FindingSpecs,
  NextStep,
  OutOfRange,
  RaisedCaution,
} from "./answer.ts";
import type { FactSpecs, FactsOf, KnownFacts } from "./facts.ts";

/** Called by long work now and then: `done` of `total` parts, and what can be said already. */
export type ReportProgress = (done: number, total: number, soFar?: Finding) => void;

/** What the parts of long work came to, round by round; plain data, because it travels between threads. */
export type PartsDone<P = unknown> = readonly (readonly P[])[];

/** Long work that falls into parts which may run side by side. A round begins when the one before it is done. */
export interface TopicParts<Facts, F extends Finding, P> {
  /** How many rounds there are at most. */
  readonly rounds: number;
  /** How many parts the round after these has; none where there is nothing left to do. */
  readonly count: (facts: Facts, books: Books, done: PartsDone<P>) => number;
  /** Runs one part of the round after these. Parts of one round do not know each other. */
  readonly run: (facts: Facts, books: Books, done: PartsDone<P>, part: number) => P;
  /** What can be said already, the last round being open and in the order in which its parts were done. */
  readonly preview: (facts: Facts, books: Books, done: PartsDone<P>) => F | undefined;
}

/**
 * What a topic borrows from the house. "job": the job that is talked about and those that somebody still works on.
 * "office": all jobs with everything that happened to them, and the solver. "crew": what was said of the crew since the
 * books, and everybody who was ever met.
 */
export type Loan = "job" | "office" | "crew";

/** What a guided topic asks next, and why. */
export interface Guidance<F extends Finding = Finding> {
  readonly fact: string;
  /** True: the question is a danger's stop line. It is said first, alone, and is not passed over. */
  readonly isStop?: true;
  /** Options of a choice that are offered as buttons; all of them where left out. */
  readonly options?: readonly string[];
  /** What is seen to before, by the ids of the hazard sentences; said first. */
  readonly hazards?: readonly Hazard[];
  /** Said before the question. */
  readonly before?: readonly F[];
  /** Other requests that may be wanted instead of an answer, as buttons. */
  readonly offers?: readonly NextStep<F>[];
  /** Shown after the question. */
  readonly about?: readonly AnswerTable<F>[];
}

/**
 * Ids of what an answer says besides what was asked: how it was counted, numbers for the few. Doors fold it on a small
 * screen. Never what protects people or what a number cannot be read without.
 */
export interface Asides<Q extends string = string, F extends string = string, T extends string = string> {
  readonly results?: readonly Q[];
  readonly findings?: readonly F[];
  readonly tables?: readonly T[];
}

/** Text fact in which a guided topic keeps what was asked and could not be told: ids with commas between. */
export const PASSED_OVER = "passed_over";

/** A topic whose next question depends on the answers so far: its facts are optional, and the guide picks among them. */
export interface TopicGuide<F extends Finding = Finding> {
  /**
   * @param known what was told, in the order in which it was told
   * @returns nothing when there is nothing more to ask, so that the topic is answered
   */
  readonly next: (known: KnownFacts, books: Books) => Guidance<F> | undefined;
  /** True when these words, in any language, speak of what the topic is about. */
  readonly hears: (text: string) => boolean;
}

/**
 * One question that Oldhand answers. The slash request, guided questions, forms, help, JSON and manual page are all
 * made from this, with the sentences that the message catalogues hold under the same id.
 */
export interface TopicDeclaration<
  S extends FactSpecs,
  Q extends readonly string[],
  F extends FindingSpecs,
  T extends Readonly<Record<string, readonly string[]>>,
  P = unknown,
> {
  /** The word people type; also the file's name. */
  readonly id: string;
  /** "long" work runs in the worker pool with progress shown; "short" answers at once. */
  readonly work: "short" | "long";
  /** What it borrows from the house; see `Loan`. */
  readonly uses?: Loan;
  readonly facts: S;
  /** Ids of every number or name it may return. */
  readonly results: Q;
  /** Every finding code, with what its data holds. The headline, reasons, next steps and worded cells use them too. */
  readonly findings: F;
  /** Tables and charts by id, with the ids of their columns or series. */
  readonly tables?: T;
  readonly charts?: T;
  readonly asides?: NoInfer<Asides<Q[number], keyof F & string, keyof T & string>>;
  /** Set where the questions depend on the answers. */
  readonly guide?: TopicGuide<FindingOf<F>>;
  /**
   * True: it is about the records, so every message asks anew and never changes the last answer, whose acts are done. What
   * was told is not listed under the answer.
   */
  readonly asksAnew?: true;
  /** True: its word begins it anew, even while one of its own questions is open; what follows an answer still changes it. */
  readonly opensAnew?: true;
  /** What is written into the open job while it is asked; left out, the facts that were told. What is there is not written again. */
  readonly enters?: (known: KnownFacts, books: Books) => readonly JobChange[];
  /** Long work in parts; `compute` and `site` then only put together what the parts came to. */
  readonly parts?: TopicParts<FactsOf<S>, FindingOf<F>, P>;
  readonly compute: (
    facts: FactsOf<S>,
    books: Books,
    report: ReportProgress,
    done: PartsDone<P>,
  ) => Answer<Q[number], FindingOf<F>> | OutOfRange<FindingOf<F>>;
  /** What these facts tell about the site, so that cautions can be raised. */
  readonly site?: (facts: FactsOf<S>, books: Books, done?: PartsDone<P>) => SiteFacts;
  /** Where the cautions themselves are the answer: completes it with what was raised and what is silenced locally. */
  readonly conclude?: (
    answer: Answer<Q[number], FindingOf<F>>,
    raised: readonly RaisedCaution[],
    silenced: readonly RaisedCaution[],
  ) => Answer<Q[number], FindingOf<F>>;
}

/** A topic with its own types erased: what the conversation, the doors and the library hold. */
export interface Topic {
  readonly id: string;
  readonly work: "short" | "long";
  /** What it borrows from the house; see `Loan`. */
  readonly uses?: Loan;
  readonly facts: FactSpecs;
  readonly results: readonly string[];
  readonly findings: FindingSpecs;
  readonly tables?: Readonly<Record<string, readonly string[]>>;
  readonly charts?: Readonly<Record<string, readonly string[]>>;
  readonly asides?: Asides;
  /** Runs on facts that are complete and in range, keyed with their unit suffix. */
  readonly parts?: {
    readonly rounds: number;
    readonly count: (facts: never, books: Books, done: never) => number;
    readonly run: (facts: never, books: Books, done: never, part: number) => unknown;
    readonly preview: (facts: never, books: Books, done: never) => Finding | undefined;
  };
  readonly compute: (facts: never, books: Books, report: ReportProgress, done: never) => Answer | OutOfRange;
  readonly site?: (facts: never, books: Books, done?: never) => SiteFacts;
  readonly guide?: TopicGuide;
  readonly asksAnew?: true;
  readonly opensAnew?: true;
  readonly enters?: (known: KnownFacts, books: Books) => readonly JobChange[];
  readonly conclude?: (answer: never, raised: readonly RaisedCaution[], silenced: readonly RaisedCaution[]) => Answer;
}

/** Declares a topic; the types of `compute` follow from `facts`, `results` and `findings`. */
export function declareTopic<
  const S extends FactSpecs,
  const Q extends readonly string[],
  const F extends FindingSpecs,
  const T extends Readonly<Record<string, readonly string[]>>,
  P = unknown,
>(declaration: TopicDeclaration<S, Q, F, T, P>): TopicDeclaration<S, Q, F, T, P> {
  return declaration;
}
