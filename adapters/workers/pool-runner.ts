import { MessageChannel } from "node:worker_threads";
import { Piscina } from "piscina";
import type { Books } from "../../src/books/books.ts";
import type { Answered } from "../../src/declaration/answer.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { ReportProgress } from "../../src/declaration/topic.ts";
import type { Library } from "../../src/library.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import type { LongProgress, LongResult, LongWork, WorkerStart } from "./long-work.ts";
import { runParts } from "./run-parts.ts";

/** Runs short topics at once and long ones in other threads, so that no door waits behind a simulation. */
export interface PoolRunner extends TopicRunner {
  /** Waits for nothing: work that still runs is stopped. */
  close(): Promise<void>;
}
export interface PoolSettings extends WorkerStart {
  readonly threads: number;
  /** File that loads the books and the library in each thread. */
  readonly workerFile: string;
}

type Pool = Piscina<LongWork, LongResult>;

/** A thread that has had nothing to do for this long is ended. */
const IDLE_ms = 60_000;

export function createPoolRunner(
  library: Library,
  books: Books,
  short: TopicRunner,
  settings: PoolSettings,
): PoolRunner {
  let pool: Pool | undefined;
  return {
    async run(id, facts, report, signal) {
      const topic = library.topics.get(id);
      if (topic?.work !== "long") return await short.run(id, facts, report, signal);
      pool ??= openPool(settings);
      if (topic.parts === undefined) return await runWhole(pool, id, facts, report, signal);
      const threads = pool;
      const done = await runParts(
        { topic, facts, books, report, signal },
        settings.threads,
        async (earlier, part, stop) => {
          const ran = await threads.run({ kind: "part", topic: id, facts, done: earlier, part }, { signal: stop });
          return ran.part;
        },
      );
      // What is left is to put the parts together, which is quick.
      return runTopic(topic, facts, books, library.cautions, report, done);
    },
    async close() {
      await pool?.destroy();
    },
  };
}

function openPool({ workerFile, booksFolder, threads }: PoolSettings): Pool {
  return new Piscina<LongWork, LongResult>({
    filename: workerFile,
    name: "runLongWork",
    workerData: { booksFolder } satisfies WorkerStart,
    minThreads: 0,
    maxThreads: threads,
    idleTimeout: IDLE_ms,
  });
}

async function runWhole(
  pool: Pool,
  topic: string,
  facts: KnownFacts,
  report: ReportProgress,
  signal: AbortSignal,
): Promise<Answered> {
  const { port1, port2 } = new MessageChannel();
  port1.on("message", ({ done, total, soFar }: LongProgress) => report(done, total, soFar));
  try {
    const work: LongWork = { kind: "whole", topic, facts, progress: port2 };
    const { answered } = await pool.run(work, { signal, transferList: [port2] });
    if (answered === undefined) throw new Error(`a thread came back from ${topic} without an answer`);
    return answered;
  } finally {
    port1.close();
  }
}
