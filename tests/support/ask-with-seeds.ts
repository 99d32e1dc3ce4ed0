import { loadBooks } from "../../adapters/books/load-books.ts";
import type { Books } from "../../src/books/books.ts";
import type { Answer, Answered, OutOfRange } from "../../src/declaration/answer.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { ReportProgress, Topic } from "../../src/declaration/topic.ts";

/** The books of the demo company, whose catalogue, places and prices are invented. */
export const seedBooks: Books = await loadBooks(new URL("../../seeds", import.meta.url).pathname);

export type Told = Readonly<Record<string, FactValue>>;

/** Runs a topic on the demo company's books, with facts in base units as if somebody had told them all. */
export function askWithSeeds(
  topic: Topic,
  facts: Told,
  books: Books = seedBooks,
  report: ReportProgress = () => undefined,
): Answered {
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  return runTopic(topic, known, books, [], report);
}

export function answerWithSeeds(topic: Topic, facts: Told, books?: Books): Answer {
  const { result } = askWithSeeds(topic, facts, books);
  if (result.kind !== "answer") throw new Error(`no answer but ${JSON.stringify(result)}`);
  return result;
}

export function refusalWithSeeds(topic: Topic, facts: Told, books?: Books): OutOfRange {
  const { result } = askWithSeeds(topic, facts, books);
  if (result.kind !== "out-of-range") throw new Error(`not refused but ${result.kind}`);
  return result;
}
