import { runTopic } from "../../src/declaration/run-topic.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import type { Fault } from "../../src/ports/fault-log.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import { fixtureBooks } from "./fixture-books.ts";
import { fixtureLibrary } from "./fixture-library.ts";
import { createMemoryStore, type MemoryStore } from "./memory-store.ts";

/** A question that the long desk can answer at once, when it is let. */
export const LONG_QUESTION = "barrel 55 gal drum, hose 5 gpm";
export const LONG_ANSWER = "Full in 11 min";
export const CALLED_OFF = "Cancelled: Filling a barrel. Ask again whenever you like.";
export const STOPPED = "Stopped before it was done. Nothing was saved.";
export const TOO_LATE = "There is nothing of yours to cancel any more.";

/** A real desk whose work goes on, half done, until it is called off or let finish; for doors that must call it off. */
export interface LongDesk {
  readonly desk: Desk;
  readonly store: MemoryStore;
  /** The signals of the runs, in the order in which they began. */
  readonly signals: readonly AbortSignal[];
  readonly faults: readonly Fault[];
  /** Comes back once so many runs have begun. */
  begun(runs: number): Promise<void>;
  finish(): void;
}

export function openLongDesk(): LongDesk {
  const store = createMemoryStore();
  const signals: AbortSignal[] = [];
  const faults: Fault[] = [];
  let wake = () => {};
  let finish = () => {};
  let ids = 0;
  const run: TopicRunner["run"] = (id, facts, report, signal) =>
    new Promise((resolve, reject) => {
      const topic = fixtureLibrary.topics.get(id);
      if (topic === undefined) throw new Error(`no topic ${id}`);
      signal.addEventListener("abort", () => reject(new Error("stopped")));
      finish = () => resolve(runTopic(topic, facts, fixtureBooks, fixtureLibrary.cautions, () => {}));
      signals.push(signal);
      report(1, 2);
      wake();
    });
  const desk = createDesk({
    library: fixtureLibrary,
    books: fixtureBooks,
    store,
    runner: { run },
    clock: { now_ms: () => 1_000_000 },
    newId: () => `0000-${String(++ids).padStart(8, "0")}`,
    newCode: () => "111111",
    faults: { report: (fault) => faults.push(fault) },
  });
  const begun = async (runs: number) => {
    while (signals.length < runs)
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
  };
  return { desk, store, signals, faults, begun, finish: () => finish() };
}
