import type { Answer, Answered, NumberResult, OutOfRange } from "../../src/declaration/answer.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import { fixtureBooks } from "./fixture-books.ts";

/** Runs a topic on facts in base units, as if somebody had told them all. */
export function askTopic(topic: Topic, facts: Readonly<Record<string, FactValue>>): Answered {
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  return runTopic(topic, known, fixtureBooks, [], () => undefined);
}

/** The answer to these facts; anything else is an error with its kind. */
export function answerOf(topic: Topic, facts: Readonly<Record<string, FactValue>>): Answer {
  const { result } = askTopic(topic, facts);
  if (result.kind !== "answer") throw new Error(`no answer but ${JSON.stringify(result)}`);
  return result;
}

/** Why these facts are refused. */
export function refusalOf(topic: Topic, facts: Readonly<Record<string, FactValue>>): OutOfRange {
  const { result } = askTopic(topic, facts);
  if (result.kind !== "out-of-range") throw new Error(`not refused but ${result.kind}`);
  return result;
}

/** A numeric result by its id. */
export function resultOf(answer: Answer, id: string): NumberResult {
  const found = answer.results.find((result) => result.id === id);
  if (found === undefined || !("quantity" in found)) throw new Error(`no number ${id}`);
  return found;
}

export function codesOf(answer: Answer): readonly string[] {
  return answer.findings.map(({ code }) => code);
}
