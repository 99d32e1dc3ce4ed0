import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { parseAnswer } from "../../../src/conversation/grammar/parse-answer.ts";
import { parseRequest, type RequestOptions } from "../../../src/conversation/grammar/parse-request.ts";
import type { FactSpec, FactValue } from "../../../src/declaration/facts.ts";
import { LANGUAGES } from "../../../src/messages/language.ts";
import { LONG_TEXTS, randomText } from "../../support/random-text.ts";
import { fixtureLibrary } from "./fixture-topics.ts";

const TOPIC_IDS = [...fixtureLibrary.topics.keys()];
const options: fc.Arbitrary<RequestOptions> = fc.record(
  {
    language: fc.constantFrom(...LANGUAGES),
    units: fc.constantFrom("us" as const, "si" as const),
    topic: fc.constantFrom(...TOPIC_IDS),
  },
  { requiredKeys: ["language", "units"] },
);
/** Mostly text that begins like a request, so that it gets past the topic. */
const requests = fc.oneof(
  {
    weight: 3,
    arbitrary: fc.tuple(fc.constantFrom(...TOPIC_IDS), randomText).map(([topic, text]) => `${topic} ${text}`),
  },
  { weight: 1, arbitrary: randomText },
);

function isValueOf(spec: FactSpec, value: FactValue): boolean {
  switch (spec.type) {
    case "quantity":
      return typeof value === "number" && Number.isFinite(value);
    case "choice":
      return spec.options.some((option) => option === value);
    case "flag":
      return typeof value === "boolean";
    case "day":
      return typeof value === "string" && /^\d{4}-\d\d-\d\d$/.test(value);
    case "name":
    case "text":
      return typeof value === "string" && value !== "";
  }
}

test("20,000 random requests are read without a throw; what is told is of its fact, and no fact is told and refused", () => {
  fc.assert(
    fc.property(requests, options, (text, how) => {
      const { topic, facts, problems, readings } = parseRequest(text, fixtureLibrary, how);
      const specs = topic === undefined ? {} : (fixtureLibrary.topics.get(topic)?.facts ?? {});
      for (const [fact, { value }] of Object.entries(facts)) {
        const spec = specs[fact];
        if (spec === undefined || !isValueOf(spec, value)) throw new Error(`${fact} is told ${String(value)}`);
      }
      for (const problem of problems)
        if ((problem.kind === "bad-value" || problem.kind === "twice") && facts[problem.fact] !== undefined)
          throw new Error(`${problem.fact} is told and refused`);
      for (const { fact } of readings) if (facts[fact] === undefined) throw new Error(`${fact} is read but not told`);
      if (problems.length > 8) throw new Error(`${problems.length} problems`);
    }),
    { numRuns: 20_000 },
  );
}, 240_000);

test("20,000 random answers to every kind of question are read without a throw", () => {
  const questions = [...fixtureLibrary.topics].flatMap(([topic, { facts }]) =>
    Object.entries(facts).map(([fact, spec]) => ({
      fact,
      spec,
      texts: LANGUAGES.flatMap((language) => fixtureLibrary.texts[language].topics.get(topic)?.facts[fact] ?? []),
    })),
  );
  fc.assert(
    fc.property(randomText, fc.constantFrom(...questions), options, (text, { fact, spec, texts }, how) => {
      const parsed = parseAnswer(text, fact, spec, texts, how);
      if (parsed.ok && !isValueOf(spec, parsed.value)) throw new Error(`${fact} is told ${String(parsed.value)}`);
    }),
    { numRuns: 20_000 },
  );
}, 120_000);

test("a request is read the same way twice", () => {
  fc.assert(
    fc.property(requests, options, (text, how) => {
      expect(parseRequest(text, fixtureLibrary, how)).toEqual(parseRequest(text, fixtureLibrary, how));
    }),
  );
});

test("the order of named values does not matter", () => {
  const parts = ["80 gal tank", "50F cold", "140F hot", "60 psi", "closed", "relief 150 psi", "no mixing valve"];
  const whole = parseRequest(`expansion ${parts.join(", ")}`, fixtureLibrary, { language: "en", units: "us" });
  expect(Object.keys(whole.facts)).toHaveLength(parts.length);
  fc.assert(
    fc.property(fc.shuffledSubarray(parts, { minLength: parts.length }), (shuffled) => {
      const seen = parseRequest(`expansion ${shuffled.join(", ")}`, fixtureLibrary, { language: "en", units: "us" });
      expect(seen.facts).toEqual(whole.facts);
      expect(seen.problems).toEqual([]);
    }),
  );
});

// Each of these would take minutes if any pattern backtracked or any search began anew at every character.
describe("50,000 characters of one kind are read before the test times out", () => {
  test.each(LONG_TEXTS)("$name", ({ text: longer }) => {
    const text = longer.slice(0, 50_000);
    for (const topic of ["expansion", "size", "away"]) {
      const parsed = parseRequest(`${topic} ${text}`, fixtureLibrary, { language: "en", units: "us" });
      expect(parsed.topic).toBe(topic);
    }
    expect(parseRequest(text, fixtureLibrary, { language: "es", units: "si" }).problems.length).toBeLessThanOrEqual(8);
    for (const fact of ["people", "model", "tank"]) {
      const spec = fixtureLibrary.topics.get("size")?.facts[fact];
      if (spec) expect(parseAnswer(text, fact, spec, [], { language: "en", units: "us" })).toHaveProperty("ok");
    }
  });
});
