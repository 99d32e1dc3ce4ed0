import { workerData } from "node:worker_threads";
import type { Finding } from "../src/declaration/answer.ts";
import { runPart } from "../src/declaration/run-topic.ts";
import { loadBooks } from "./books/load-books.ts";
import { loadLibrary } from "./library/load-library.ts";
import { createInlineRunner } from "./workers/inline-runner.ts";
import type { LongProgress, LongResult, LongWork, WholeWork, WorkerStart } from "./workers/long-work.ts";

const { booksFolder }: WorkerStart = workerData;
const [library, books] = await Promise.all([loadLibrary(), loadBooks(booksFolder)]);
const runner = createInlineRunner(library, books);
const uninterrupted = new AbortController().signal;

/** Runs one long topic in this thread and tells how far it is, or one part of it. */
export async function runLongWork(work: LongWork): Promise<LongResult> {
  if (work.kind === "whole") return await runWhole(work);
  const topic = library.topics.get(work.topic);
  if (topic === undefined) throw new Error(`there is no topic ${work.topic} in the library`);
  return { part: runPart(topic, work.facts, books, work.done, work.part) };
}

async function runWhole({ topic, facts, progress }: WholeWork): Promise<LongResult> {
  const report = (done: number, total: number, soFar?: Finding) =>
    progress.postMessage({ done, total, ...(soFar !== undefined && { soFar }) } satisfies LongProgress);
  return { answered: await runner.run(topic, facts, report, uninterrupted) };
}
