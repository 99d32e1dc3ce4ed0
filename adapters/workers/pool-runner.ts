import { MessageChannel } from "node:worker_threads";
import { Piscina } from "piscina";
import type { Answered } from "../../src/declaration/answer.ts";
import type { Library } from "../../src/library.ts";
import type { TopicRunner } from "../../src/ports/topic-runner.ts";
import type { LongProgress, LongWork, WorkerStart } from "./long-work.ts";

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

/** A thread that has had nothing to do for this long is ended. */
const IDLE_ms = 60_000;

export function createPoolRunner(library: Library, short: TopicRunner, settings: PoolSettings): PoolRunner {
  let pool: Piscina<LongWork, Answered> | undefined;
  const open = () =>
    new Piscina<LongWork, Answered>({
      filename: settings.workerFile,
      name: "runLongWork",
      workerData: { booksFolder: settings.booksFolder } satisfies WorkerStart,
      minThreads: 0,
      maxThreads: settings.threads,
      idleTimeout: IDLE_ms,
    });
  return {
    async run(topic, facts, report, signal) {
      if (library.topics.get(topic)?.work !== "long") return await short.run(topic, facts, report, signal);
      pool ??= open();
      const { port1, port2 } = new MessageChannel();
      port1.on("message", ({ done, total }: LongProgress) => report(done, total));
      try {
        return await pool.run({ topic, facts, progress: port2 }, { signal, transferList: [port2] });
      } finally {
        port1.close();
      }
    },
    async close() {
      await pool?.destroy();
    },
  };
}
