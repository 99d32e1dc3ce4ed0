import type { MessagePort } from "node:worker_threads";
import type { Answered, Finding } from "../../src/declaration/answer.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import type { PartsDone } from "../../src/declaration/topic.ts";

/** What a worker thread is given to begin with. */
export interface WorkerStart {
  /** Folder of the company's books. */
  readonly booksFolder: string;
}
/** What another thread is asked to do. */
export type LongWork = WholeWork | PartWork;
/** What it came to; which of the two follows from what was asked. */
export interface LongResult {
  readonly answered?: Answered;
  readonly part?: unknown;
}

/** One topic to run; progress comes back through the port. */
export interface WholeWork {
  readonly kind: "whole";
  readonly topic: string;
  readonly facts: KnownFacts;
  readonly progress: MessagePort;
}
/** How far long work is: `done` of `total` parts, and what can be said already. */
export interface LongProgress {
  readonly done: number;
  readonly total: number;
  readonly soFar?: Finding;
}
/** One part of long work: part `part` of the round after `done`. */
export interface PartWork {
  readonly kind: "part";
  readonly topic: string;
  readonly facts: KnownFacts;
  readonly done: PartsDone;
  readonly part: number;
}
