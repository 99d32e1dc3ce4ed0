import { expect, test } from "vitest";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { answerToJson, problemsToJson } from "../../src/messages/answer-json.ts";
import type { Reader } from "../../src/messages/voice.ts";
import { speakOf, voiceFor } from "../../src/messages/voice.ts";
import { toBase } from "../../src/units/convert.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";

const EN: Reader = { language: "en", units: "us" };

function json(facts: KnownFacts, reader: Reader = EN) {
  const { topic } = speakOf(voiceFor(fixtureLibrary, reader), "barrel");
  return answerToJson(
    runTopic(topic, facts, fixtureBooks, fixtureLibrary.cautions, () => {}),
    fixtureLibrary,
    reader,
  );
}
const asked = (value: number) => ({ value, from: "asked" as const });

test("an answer has verdict, facts, quantities, findings and cautions under stable ids", () => {
  const drum_L = toBase(600, "gal") / 2;
  const hose_L_s = toBase(2, "gpm");
  const object = json({ drum: asked(drum_L), hose: asked(hose_L_s), warm: asked(70) });
  const source = "Test bench notes, 2 (invented for the demo)";
  expect(object).toMatchObject({
    topic: "barrel",
    kind: "answer",
    verdict: "no",
    headline: { code: "fills", data: { time: { value: drum_L / hose_L_s, unit: "s" } }, text: "Full in 2 h 30 min" },
    facts: {
      drum: { value: drum_L, unit: "L", from: "asked", text: "300 gal" },
      cold: { value: 10, unit: "C", from: "assumed", text: "50 °F" },
      lined: { value: true, unit: "", from: "assumed", text: "Yes" },
    },
    quantities: {
      fill_time: { value: drum_L / hose_L_s, unit: "s", text: "2 h 30 min", source },
      stir_time: { value: 8, unit: "s", up_to: 30, text: "8 to 30 s", source },
      warming: { value: 60, unit: "K", text: "108 °F", source },
      plug: { value: "M8", unit: "", text: "M8", source },
    },
    findings: [{ code: "slow", data: { fact: "hose" }, text: "Hose is slow: 2 h 30 min." }],
    cautions: [
      { id: "hot_barrel", severity: "stop", cites: [source], text: "158 °F burns skin." },
      { id: "wet_floor", severity: "note" },
    ],
    tables: { stages: { title: "Stages", columns: ["Stage", "Time"], rows: [["At 50 %", "1 h 15 min"]] } },
  });
  expect(JSON.parse(JSON.stringify(object))).toEqual(object);
});

test("ids and values do not depend on language or units, only texts do", () => {
  const facts = { drum: asked(100), hose: asked(1) };
  const strip = (value: unknown) =>
    JSON.stringify(value, (key, inner) =>
      ["text", "source", "title", "columns", "rows", "cites"].includes(key) ? null : inner,
    );
  expect(strip(json(facts, { language: "es", units: "si" }))).toBe(strip(json(facts)));
});

test("missing facts are named with the question to answer", () => {
  expect(json({ hose: asked(1) })).toMatchObject({
    topic: "barrel",
    kind: "needs-facts",
    missing: [{ fact: "drum", text: "How large is the drum?" }],
    text: "I still need: Drum.",
  });
});

test("out of range gives the value, the range in the base unit and a sentence in the reader's units", () => {
  expect(json({ drum: asked(0), hose: asked(1) })).toMatchObject({
    kind: "out-of-range",
    fact: "drum",
    value: 0,
    unit: "L",
    min: toBase(1, "gal"),
    max: toBase(500, "gal"),
    text: "Drum: 0 gal is outside what I can work with. Type a value from 1 gal to 500 gal, for example 30 gal.",
  });
});

test("out of range for a reason says the reason", () => {
  expect(json({ drum: asked(100), hose: asked(1), warm: asked(5) })).toMatchObject({
    kind: "out-of-range",
    fact: "warm",
    text: "Warm (41 °F) must be above cold (50 °F).",
  });
});

test("problems of a request keep their data and get a sentence", () => {
  const problems = [
    { kind: "ambiguous", typed: "60F", candidates: ["cold", "warm"] },
    { kind: "unknown-word", word: "softener", nearest: [] },
  ] as const;
  expect(problemsToJson("barrel", problems, fixtureLibrary, EN)).toEqual({
    topic: "barrel",
    kind: "not-understood",
    problems: [
      { ...problems[0], text: "“60F”: is that Cold water or Warm water?" },
      { ...problems[1], text: "I do not know “softener” in a question about: Filling a barrel." },
    ],
    text: "“60F”: is that Cold water or Warm water? I do not know “softener” in a question about: Filling a barrel.",
  });
});

test("a request without a topic is not understood", () => {
  expect(problemsToJson(undefined, [], fixtureLibrary, EN)).toEqual({
    topic: "",
    kind: "not-understood",
    problems: [],
    text: "I could not tell what that asks.",
  });
});
