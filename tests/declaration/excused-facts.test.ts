import { describe, expect, test } from "vitest";
import { checkTopic } from "../../adapters/library/check-topic.ts";
import { q } from "../../src/declaration/answer.ts";
import { askedFacts } from "../../src/declaration/asked-facts.ts";
import type { FactSpecs } from "../../src/declaration/facts.ts";
import { isNeeded, missingFacts, runTopic } from "../../src/declaration/run-topic.ts";
import { declareTopic } from "../../src/declaration/topic.ts";
import { answerToJson } from "../../src/messages/answer-json.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const OURS = { basis: "invented", document: "Test" } as const;
const FACTS = {
  drum: { type: "quantity", quantity: "volume", min: 1, max: 500, unless: "brand" },
  brand: { type: "name", of: "model", optional: true },
  cold: { type: "quantity", quantity: "temperature", min: 0, max: 40, optional: true },
  taps: { type: "quantity", quantity: "count", min: 1, max: 9, default: { value: 2, source: OURS } },
  open: { type: "flag", optional: true },
} as const satisfies FactSpecs;
const drums = declareTopic({
  id: "drums",
  work: "short",
  facts: FACTS,
  results: [],
  findings: { held: { cold: "temperature" } },
  compute: ({ cold_C = 7 }) => ({
    kind: "answer",
    verdict: "info",
    headline: { code: "held", data: { cold: q("temperature", cold_C) } },
    results: [],
    findings: [],
    assumed: { cold: { value: 7, source: OURS } },
  }),
});
const told = (value: number | string) => ({ value, from: "asked" as const });

describe("a fact that another excuses", () => {
  test("is missing while neither is known", () => expect(missingFacts(drums, {})).toEqual(["drum"]));
  test("is not missing once the other is known", () => {
    expect(missingFacts(drums, { brand: told("B") })).toEqual([]);
    expect(missingFacts(drums, { drum: told(20) })).toEqual([]);
  });
  test("is needed only as long as nothing excuses it", () => {
    expect(isNeeded(FACTS.drum, () => false)).toBe(true);
    expect(isNeeded(FACTS.drum, (fact) => fact === "brand")).toBe(false);
    expect(isNeeded(FACTS.taps, () => false)).toBe(false);
  });
  test("must be excused by another fact of the topic", () => {
    expect(checkTopic(drums, "drums")).toEqual([]);
    const lost = { ...drums, facts: { ...FACTS, drum: { ...FACTS.drum, unless: "label" } } };
    expect(checkTopic(lost, "drums")).toEqual(["fact drum is excused by label, which is no other fact"]);
    const selfish = { ...drums, facts: { ...FACTS, drum: { ...FACTS.drum, unless: "drum" } } };
    expect(checkTopic(selfish, "drums")).toEqual(["fact drum is excused by drum, which is no other fact"]);
  });
});

describe("a fact that the books fill in", () => {
  const run = (facts: Parameters<typeof runTopic>[1]) => runTopic(drums, facts, fixtureBooks, [], () => undefined);
  test("is listed as assumed, in the order of the declaration", () => {
    expect(Object.entries(run({ drum: told(20) }).facts)).toEqual([
      ["drum", told(20)],
      ["cold", { value: 7, from: "assumed" }],
      ["taps", { value: 2, from: "assumed" }],
    ]);
  });
  test("gives way to what somebody told", () => {
    expect(run({ drum: told(20), cold: told(9) }).facts["cold"]).toEqual(told(9));
  });
});

test("the facts that were told are ready to be typed again; defaults are left out", () => {
  expect(askedFacts(FACTS, { drum_L: 20, brand: "B", cold_C: undefined, taps: 2, open: false })).toEqual({
    drum: q("volume", 20),
    brand: "B",
    open: false,
  });
  expect(askedFacts(FACTS, { taps: 3 })).toEqual({ taps: q("count", 3) });
});

test("the JSON of what is missing says what would do as well", () => {
  const size = library.topics.get("size");
  if (size === undefined) throw new Error("no topic size");
  const answered = runTopic(size, { people: told(4) }, fixtureBooks, [], () => undefined);
  expect(answerToJson(answered, library, { language: "en", units: "us" })).toMatchObject({
    kind: "needs-facts",
    missing: [{ fact: "tank", unless: "model" }, { fact: "setpoint" }],
  });
});
