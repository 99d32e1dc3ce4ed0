import { describe, expect, test } from "vitest";
import type { Cause, Check, FaultKnowledge, Symptom } from "../../src/faults/knowledge.ts";
import { findKnowledgeProblems, type KnowledgeContext } from "../../src/faults/knowledge-problems.ts";

const STOP: Symptom = {
  id: "sparks",
  urgency: "stop",
  words: {
    en: { label: "Sparks", ask: "Is it off?", phrases: ["it sparks"], stop: "Switch it off." },
    es: { label: "Chispas", ask: "¿Está apagado?", phrases: ["echa chispas"], stop: "Apáguelo." },
  },
};
const CAUSE_WORDS = {
  label: "Bad plug",
  why: "It gets hot.",
  remedy: "Replace it.",
  parts: [],
  verify: "Cool.",
  tell: "Done.",
};
const CAUSE: Cause = {
  id: "bad_plug",
  family: "electrical",
  appliesTo: ["integrated"],
  prior: { new: 1, mid: 1, old: 1 },
  basis: "judgement",
  symptoms: { sparks: "very_likely" },
  repairBy: ["electrician"],
  hazards: ["lockout"],
  words: { en: CAUSE_WORDS, es: CAUSE_WORDS },
};
const CHECK_WORDS = { label: "Plug", how: "Measure it.", accept: "Near nothing" };
const CHECK: Check = {
  id: "plug_ohms",
  minutes: 2,
  doer: "qualified",
  tools: ["multimeter"],
  hazards: ["lockout"],
  appliesTo: ["integrated"],
  reading: { quantity: "resistance", expected: "plug", error: { share: 0.02, least: 0.1 } },
  outcomes: [
    { id: "low", share: { to: 0.5 }, words: { en: "Low", es: "Bajos" } },
    { id: "right", share: { from: 0.5, to: 1.5 }, words: { en: "Right", es: "Bien" } },
    { id: "open", share: { from: 1.5 }, words: { en: "Open", es: "Abierto" } },
    { id: "burnt", words: { en: "Burnt", es: "Quemado" } },
  ],
  usual: { low: "unlikely", right: "very_likely", open: "unlikely", burnt: "unlikely" },
  byCause: { bad_plug: { low: "unlikely", right: "possible", open: "very_likely", burnt: "possible" } },
  words: { en: CHECK_WORDS, es: CHECK_WORDS },
};
const SECOND: Check = { ...CHECK, id: "plug_look" };
const SOUND: FaultKnowledge = {
  symptoms: [STOP],
  causes: [CAUSE],
  checks: [CHECK, SECOND],
  groups: [["plug_ohms", "plug_look"]],
};
const SAID = { lockout: ["Lock it."], live: ["Qualified only."] };
const CONTEXT: KnowledgeContext = { expected: new Map([["plug", "resistance"]]), precautions: [SAID, SAID] };

function linesOf(knowledge: Partial<FaultKnowledge>, context: KnowledgeContext = CONTEXT): readonly string[] {
  return findKnowledgeProblems({ ...SOUND, ...knowledge }, context).map(
    ({ kind, id, at, reason }) => `${kind} ${id} ${at.join(".")}: ${reason}`,
  );
}
const withCause = (change: Partial<Cause>) => linesOf({ causes: [{ ...CAUSE, ...change }] });
const withCheck = (change: Partial<Check>) => linesOf({ checks: [{ ...CHECK, ...change }, SECOND] });
const [low, right, open, burnt] = [
  CHECK.outcomes[0],
  CHECK.outcomes[1],
  CHECK.outcomes[2] ?? CHECK.outcomes[0],
  CHECK.outcomes[3] ?? CHECK.outcomes[0],
];

test("knowledge that holds together has no problems", () => {
  expect(linesOf({})).toEqual([]);
});

describe("symptoms", () => {
  test("one that stops the work has a stop line in both languages", () => {
    const { stop: _, ...es } = STOP.words.es;
    expect(linesOf({ symptoms: [{ ...STOP, words: { en: STOP.words.en, es } }] })).toEqual([
      "symptom sparks urgency: stops the work, but has no stop line",
    ]);
  });
  test("one that no cause brings about is told", () => {
    expect(linesOf({ symptoms: [STOP, { ...STOP, id: "hum" }] })).toEqual(["symptom hum : no cause brings it about"]);
  });
});

describe("causes", () => {
  test("a symptom that is not there", () => {
    expect(withCause({ symptoms: { sparks: "likely", smoke: "likely" } })).toEqual([
      "cause bad_plug symptoms.smoke: there is no such symptom",
    ]);
  });
  test("a cause that brings about nothing, and a symptom left without one", () => {
    expect(withCause({ symptoms: {} })).toContain("cause bad_plug symptoms: brings about nothing");
  });
  test("a weight of zero, which nothing that is seen could bring back", () => {
    expect(withCause({ prior: { new: 1, mid: 0, old: 1 } })).toEqual([
      "cause bad_plug prior.mid: must be above zero: nothing that is seen could bring it back",
    ]);
  });
  test("a cause that no check tells apart in one kind of unit", () => {
    expect(withCause({ appliesTo: ["integrated", "split"] })).toEqual([
      "cause bad_plug applies_to: no check tells it apart in a unit of the kind split",
    ]);
  });
  test("a check that says of it what it says of any other cause tells nothing apart", () => {
    const blunt = { ...CHECK, byCause: { bad_plug: { ...CHECK.usual, burnt: "unlikely" as const } } };
    expect(linesOf({ checks: [blunt, { ...blunt, id: "plug_look" }] })).toEqual([
      "cause bad_plug applies_to: no check tells it apart in a unit of the kind integrated",
    ]);
  });
  test("a hazard without precaution", () => {
    expect(withCause({ hazards: ["lockout", "gas"] })).toEqual([
      "cause bad_plug hazards.1: no precaution is written for gas",
    ]);
  });
});

describe("checks", () => {
  test("a cause that is not there", () => {
    expect(withCheck({ byCause: { ...CHECK.byCause, ghost: CHECK.usual } })).toEqual([
      "check plug_ohms by_cause.ghost: there is no such cause",
    ]);
  });
  test("a check that tells nothing apart", () => {
    expect(withCheck({ byCause: {} })).toEqual(["check plug_ohms by_cause: tells nothing apart"]);
  });
  test("an outcome that is not there, and one that a row leaves out", () => {
    const { burnt: _, ...rest } = CHECK.usual;
    expect(withCheck({ usual: { ...rest, melted: "unlikely" } })).toEqual([
      "check plug_ohms usual.melted: there is no such outcome",
      "check plug_ohms usual: says nothing of the outcome burnt",
    ]);
  });
  test("levels that are far from adding up to one", () => {
    const all = { low: "very_likely", right: "very_likely", open: "very_likely", burnt: "unlikely" } as const;
    expect(withCheck({ byCause: { bad_plug: all } })).toEqual([
      "check plug_ohms by_cause.bad_plug: adds up to 2.61, too far from 1 for its words to hold",
    ]);
    const none = { low: "impossible", right: "possible", open: "unlikely", burnt: "unlikely" } as const;
    expect(withCheck({ byCause: { bad_plug: none } })).toEqual([
      "check plug_ohms by_cause.bad_plug: adds up to 0.38, too far from 1 for its words to hold",
    ]);
  });
  test("an outcome that stands there twice", () => {
    expect(withCheck({ outcomes: [low, right, open, burnt, burnt] })).toContain(
      "check plug_ohms outcomes: burnt stands there twice",
    );
  });
  test("an outcome without words in one language", () => {
    const mute = { ...burnt, words: { en: "Burnt", es: " " } };
    expect(withCheck({ outcomes: [low, right, open, mute] })).toEqual(["check plug_ohms outcomes.3.es: has no words"]);
  });
  test("a hazard whose precaution is missing in one language", () => {
    expect(linesOf({}, { ...CONTEXT, precautions: [SAID, { live: ["x"], lockout: [" "] }] })).toContain(
      "check plug_ohms hazards.0: no precaution is written for lockout",
    );
  });
  test("live work for somebody who is not qualified", () => {
    expect(withCheck({ hazards: ["live"], doer: "crew" })).toEqual([
      "check plug_ohms doer: live work is for qualified, electrician, controls, refrigerant only",
    ]);
  });
  test("a reading that nothing computes, or that is another quantity", () => {
    const reading = { quantity: "resistance", expected: "plug", error: { share: 0.02, least: 0.1 } } as const;
    expect(withCheck({ reading: { ...reading, expected: "socket" } })).toEqual([
      "check plug_ohms reading.expected: nothing computes it",
    ]);
    expect(withCheck({ reading: { ...reading, quantity: "voltage" } })).toEqual([
      "check plug_ohms reading.quantity: plug is a resistance",
    ]);
  });
});

describe("ranges of a reading", () => {
  const ranges = (...outcomes: readonly Check["outcomes"][number][]) => {
    const [first = low, second = right, ...others] = outcomes;
    return withCheck({ outcomes: [first, second, ...others, burnt] });
  };
  test("a gap", () => {
    expect(ranges(low, { ...right, share: { from: 0.6, to: 1.5 } }, open)).toEqual([
      "check plug_ohms outcomes.1: leaves a gap from 0.5 to 0.6",
    ]);
  });
  test("an overlap", () => {
    expect(ranges(low, right, { ...open, share: { from: 1.2 } })).toEqual([
      "check plug_ohms outcomes.2: overlaps its neighbour from 1.2 to 1.5",
    ]);
  });
  test("an end that nothing covers, below and above", () => {
    expect(ranges({ ...low, share: { from: 0.1, to: 0.5 } }, right, { ...open, share: { from: 1.5, to: 9 } })).toEqual([
      "check plug_ohms outcomes.0: leaves a gap from -Infinity to 0.1",
      "check plug_ohms outcomes.2: leaves everything above 9 to nobody",
    ]);
  });
  test("a range that ends before it begins", () => {
    expect(ranges(low, { ...right, share: { from: 0.5, to: 0.5 } }, { ...open, share: { from: 0.5 } })).toEqual([
      "check plug_ohms outcomes.1: ends before it begins",
    ]);
  });
  test("shares and base units in one check", () => {
    const { share: _, ...plain } = open;
    expect(ranges(low, right, { ...plain, range: { from: 1.5 } })).toEqual([
      "check plug_ohms outcomes: write all ranges as shares of what is expected, or all in the base unit",
    ]);
  });
  test("a reading with one range, and a range with no reading", () => {
    const bare = (outcome: Check["outcomes"][number]) => ({ id: outcome.id, words: outcome.words });
    expect(ranges(low, bare(right), bare(open))).toEqual([
      "check plug_ohms outcomes: a reading needs two ranges at least",
    ]);
    const { reading: _, ...unread } = { ...CHECK, outcomes: [low, bare(right), bare(open), burnt] as const };
    expect(linesOf({ checks: [unread, SECOND] })).toEqual([
      "check plug_ohms outcomes.0: has a range, but nothing is read",
    ]);
  });
});

describe("groups", () => {
  test("a check that is not there, or stands there twice", () => {
    expect(
      linesOf({
        groups: [
          ["plug_ohms", "socket"],
          ["plug_look", "plug_look"],
        ],
      }),
    ).toEqual([
      "group 0 0.1: socket is no check of its own here",
      "group 1 1.1: plug_look is no check of its own here",
    ]);
  });
  test("a group of one", () => {
    expect(linesOf({ groups: [["plug_ohms"]] })).toEqual(["group 0 0: a group takes two checks at least"]);
  });
});
