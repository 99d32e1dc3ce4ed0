import type { Books } from "../../src/books/books.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import { countParts, reportParts } from "../../src/declaration/run-topic.ts";
import type { PartsDone, ReportProgress, Topic } from "../../src/declaration/topic.ts";

/** Work of one topic that falls into parts. */
export interface PartsWork {
  readonly topic: Topic;
  readonly facts: KnownFacts;
  readonly books: Books;
  readonly report: ReportProgress;
  /** Stops all parts at once. */
  readonly signal: AbortSignal;
}
/** Runs one part of the round after `done`; the signal stops it. */
export type RunOnePart = (done: PartsDone, part: number, signal: AbortSignal) => Promise<unknown>;

/**
 * Runs the parts of long work, round after round, and reports each part that is done.
 * @param width how many parts may run at once; no more are handed out, so that other people's work gets its turn
 * @returns what the parts came to, in their order
 * @throws what the first failing part threw, or why the work was called off; the other parts are stopped
 */
export async function runParts(work: PartsWork, width: number, runOne: RunOnePart): Promise<PartsDone> {
  const { topic, facts, books } = work;
  const done: (readonly unknown[])[] = [];
  for (;;) {
    const count = countParts(topic, facts, books, done);
    if (count === 0) return done;
    done.push(await runRound(work, done, count, width, runOne));
  }
}

async function runRound(
  { topic, facts, books, report, signal }: PartsWork,
  done: PartsDone,
  count: number,
  width: number,
  runOne: RunOnePart,
): Promise<readonly unknown[]> {
  const failing = new AbortController();
  const stop = AbortSignal.any([signal, failing.signal]);
  const inOrder = new Array<unknown>(count);
  const finished: unknown[] = [];
  let next = 0;
  const takeTurns = async () => {
    while (next < count) {
      stop.throwIfAborted();
      const part = next++;
      const result = await runOne(done, part, stop);
      stop.throwIfAborted();
      inOrder[part] = result;
      finished.push(result);
      reportParts(topic, facts, books, [...done, finished], count, report);
    }
  };
  try {
    await Promise.all(Array.from({ length: Math.min(width, count) }, takeTurns));
    return inOrder;
  } catch (error) {
    failing.abort(error);
    throw error;
  }
}
