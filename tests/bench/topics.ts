import { performance } from "node:perf_hooks";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { library } from "../support/ask-library.ts";
import type { BenchRow } from "./bench-row.ts";

const QUESTIONS = [
  "expansion 80 gal tank, 50F cold 140F hot 60 psi",
  "mix 135 to 120 with 50 in",
  "circuit 4500W at 208V 60 ft",
  "wait 60 ft of 3/4 pex at 2 gpm",
];
const RUNS = 400;
const BUDGET_ms = 2;

/** Engine time of the closed-form topics, and of reading their requests: the median of many runs after a warm-up. */
export async function benchTopics(): Promise<{ readonly rows: readonly BenchRow[] }> {
  const books = await loadBooks(new URL("../../seeds", import.meta.url).pathname);
  const rows = QUESTIONS.map((question): BenchRow => {
    const { topic: id = "", facts } = parseRequest(question, library, { language: "en", units: "us" });
    const topic = library.topics.get(id);
    if (topic === undefined) throw new Error(`not understood: ${question}`);
    const answer_ms = medianTime_ms(() => runTopic(topic, facts, books, library.cautions, () => undefined));
    return row(`${id}: answer`, answer_ms);
  });
  const parse_ms = medianTime_ms(() => parseRequest(QUESTIONS[0] ?? "", library, { language: "en", units: "us" }));
  return { rows: [...rows, row("reading a request", parse_ms)] };
}

function row(name: string, door: number): BenchRow {
  const ratio = door / BUDGET_ms;
  return { name, unit: "ms", door, bare: BUDGET_ms, ratio, budget: "≤ 1 (2 ms)", isKept: ratio <= 1 };
}

function medianTime_ms(work: () => unknown): number {
  const times = Array.from({ length: RUNS }, () => {
    const start_ms = performance.now();
    work();
    return performance.now() - start_ms;
  });
  return times.slice(RUNS / 4).sort((a, b) => a - b)[Math.floor((RUNS * 3) / 8)] ?? Number.NaN;
}
