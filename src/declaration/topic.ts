import type { Books } from "../books/books.ts";
import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, OutOfRange } from "./answer.ts";
import type { FactSpecs, FactsOf } from "./facts.ts";

/** Called by long work now and then: `done` of `total` parts. */
export type ReportProgress = (done: number, total: number) => void;

/**
 * One question that Oldhand answers. The slash request, guided questions, forms, help, JSON and manual page are all
 * made from this, with the sentences that the message catalogues hold under the same id.
 */
export interface TopicDeclaration<
  S extends FactSpecs,
  Q extends readonly string[],
  F extends FindingSpecs,
  T extends Readonly<Record<string, readonly string[]>>,
> {
  /** The word people type; also the file's name. */
  readonly id: string;
  /** "long" work runs in the worker pool with progress shown; "short" answers at once. */
  readonly work: "short" | "long";
  readonly facts: S;
  /** Ids of every number or name it may return. */
  readonly results: Q;
  /** Every finding code, with what its data holds. The headline, reasons, next steps and worded cells use them too. */
  readonly findings: F;
  /** Tables and charts by id, with the ids of their columns or series. */
  readonly tables?: T;
  readonly charts?: T;
  readonly compute: (
    facts: FactsOf<S>,
    books: Books,
    report: ReportProgress,
  ) => Answer<Q[number], FindingOf<F>> | OutOfRange<FindingOf<F>>;
  /** What these facts tell about the site, so that cautions can be raised. */
  readonly site?: (facts: FactsOf<S>, books: Books) => SiteFacts;
}

/** A topic with its own types erased: what the conversation, the doors and the library hold. */
export interface Topic {
  readonly id: string;
  readonly work: "short" | "long";
  readonly facts: FactSpecs;
  readonly results: readonly string[];
  readonly findings: FindingSpecs;
  readonly tables?: Readonly<Record<string, readonly string[]>>;
  readonly charts?: Readonly<Record<string, readonly string[]>>;
  /** Runs on facts that are complete and in range, keyed with their unit suffix. */
  readonly compute: (facts: never, books: Books, report: ReportProgress) => Answer | OutOfRange;
  readonly site?: (facts: never, books: Books) => SiteFacts;
}

/** Declares a topic; the types of `compute` follow from `facts`, `results` and `findings`. */
export function declareTopic<
  const S extends FactSpecs,
  const Q extends readonly string[],
  const F extends FindingSpecs,
  const T extends Readonly<Record<string, readonly string[]>>,
>(declaration: TopicDeclaration<S, Q, F, T>): TopicDeclaration<S, Q, F, T> {
  return declaration;
}
