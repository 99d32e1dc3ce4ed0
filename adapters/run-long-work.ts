import { workerData } from "node:worker_threads";
import type { Answered } from "../src/declaration/answer.ts";
import { loadBooks } from "./books/load-books.ts";
import { loadLibrary } from "./library/load-library.ts";
import { createInlineRunner } from "./workers/inline-runner.ts";
import type { LongProgress, LongWork, WorkerStart } from "./workers/long-work.ts";

const { booksFolder }: WorkerStart = workerData;
const [library, books] = await Promise.all([loadLibrary(), loadBooks(booksFolder)]);
const runner = createInlineRunner(library, books);
const uninterrupted = new AbortController().signal;

/** Runs one long topic in this thread, and tells how far it is. */
export async function runLongWork({ topic, facts, progress }: LongWork): Promise<Answered> {
  const report = (done: number, total: number) => progress.postMessage({ done, total } satisfies LongProgress);
  return await runner.run(topic, facts, report, uninterrupted);
}
