import type { Answered } from "../../src/declaration/answer.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import type { Library } from "../../src/library.ts";
import { fixtureBooks } from "./fixture-books.ts";

const answered = new Map<string, Answered>();

/**
 * Runs a topic on the fixture books; long work is done once for the same values, however they were typed, because a
 * topic depends on nothing else.
 */
export function runOnce(topic: Topic, facts: KnownFacts, { cautions }: Library): Answered {
  if (topic.work === "short") return runTopic(topic, facts, fixtureBooks, cautions, () => undefined);
  const values = Object.entries(facts).map(([id, { value, from }]) => [id, value, from]);
  const key = JSON.stringify([topic.id, values.sort()]);
  const before = answered.get(key) ?? runTopic(topic, facts, fixtureBooks, cautions, () => undefined);
  answered.set(key, before);
  return { ...before, facts: { ...before.facts, ...facts } };
}
