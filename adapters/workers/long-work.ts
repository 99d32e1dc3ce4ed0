import type { MessagePort } from "node:worker_threads";
import type { KnownFacts } from "../../src/declaration/facts.ts";

/** What a worker thread is given to begin with. */
export interface WorkerStart {
  /** Folder of the company's books. */
  readonly booksFolder: string;
}
/** One topic to run in another thread; progress comes back through the port. */
export interface LongWork {
  readonly topic: string;
  readonly facts: KnownFacts;
  readonly progress: MessagePort;
}
/** How far long work is: `done` of `total` parts. */
export interface LongProgress {
  readonly done: number;
  readonly total: number;
}
