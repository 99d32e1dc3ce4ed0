import { describe, expect, test } from "vitest";
import type { FactWords } from "../../../src/conversation/grammar/fact-words.ts";
import { parseAnswer } from "../../../src/conversation/grammar/parse-answer.ts";
import type { BadValueReason } from "../../../src/conversation/grammar/parse-request.ts";
import type { FactValue } from "../../../src/declaration/facts.ts";
import { LANGUAGES, type Language } from "../../../src/messages/language.ts";
import { toBase } from "../../../src/units/convert.ts";
import type { UnitSystem } from "../../../src/units/quantity-kinds.ts";
import type { UnitId } from "../../../src/units/unit-table.ts";
import { fixtureLibrary } from "./fixture-topics.ts";

function answer(topic: string, fact: string, typed: string, language: Language = "en", units: UnitSystem = "us") {
  const spec = fixtureLibrary.topics.get(topic)?.facts[fact];
  if (spec === undefined) throw new Error(`the fixture has no ${topic}.${fact}`);
  const texts = LANGUAGES.flatMap(
    (one): FactWords | readonly FactWords[] => fixtureLibrary.texts[one].topics.get(topic)?.facts[fact] ?? [],
  );
  return parseAnswer(typed, fact, spec, texts, { language, units });
}
const taken = (value: FactValue, readAs?: UnitId) => ({ ok: true, value, ...(readAs && { readAs }) });
const refused = (fact: string, typed: string, because: BadValueReason) => ({
  ok: false,
  problem: { kind: "bad-value", fact, typed, because },
});

describe("quantities", () => {
  test.each([
    { typed: "80 gal", value: toBase(80, "gal") },
    { typed: "80 gal tank", value: toBase(80, "gal") },
    { typed: "it's an 80-gallon tank.", value: toBase(80, "gal") },
    { typed: "about 80 gallons", value: toBase(80, "gal") },
    { typed: "tank = 80 gal", value: toBase(80, "gal") },
    { typed: "un tanque de 300 litros", value: 300 },
    { typed: " 80\u00a0gal ", value: toBase(80, "gal") },
  ])("tank: $typed", ({ typed, value }) => {
    expect(answer("expansion", "tank", typed)).toEqual(taken(value));
  });

  test("a bare number takes the reader's unit and says so", () => {
    expect(answer("expansion", "tank", "80")).toEqual(taken(toBase(80, "gal"), "gal"));
    expect(answer("expansion", "tank", "300", "en", "si")).toEqual(taken(300, "L"));
    expect(answer("expansion", "setpoint", "140°")).toEqual(taken(60, "F"));
  });
  test("a decimal comma is read in both languages", () => {
    expect(answer("expansion", "setpoint", "57,3 C", "es")).toEqual(taken(57.3));
    expect(answer("expansion", "setpoint", "57,3 C", "en")).toEqual(taken(57.3));
  });
  test("the range of the fact tells 1.250 L from 1.25 L", () => {
    expect(answer("expansion", "tank", "1.250 L", "es")).toEqual(taken(1250));
  });
  test("6' 3 alone is feet and inches", () => {
    expect(answer("wait", "length", "6' 3")).toEqual(taken(expect.closeTo(1.905, 12)));
  });
  test.each([
    { typed: "big", because: "not-a-number" },
    { typed: "", because: "not-a-number" },
    { typed: "120/240", because: "not-a-number" },
    { typed: "80 psi", because: "wrong-unit" },
    { typed: "80 gal 60 psi", because: "left-over" },
    { typed: "80 or 50", because: "left-over" },
    { typed: "80 galons", because: "left-over" },
  ] as const)("tank: '$typed' is refused, $because", ({ typed, because }) => {
    expect(answer("expansion", "tank", typed)).toEqual(refused("tank", typed, because));
  });
  test("a time without its unit is refused", () => {
    expect(answer("away", "hold", "30")).toEqual(refused("hold", "30", "wrong-unit"));
  });
});

describe("yes or no", () => {
  test.each([
    "yes",
    "y",
    "Yes.",
    "YEP",
    "yeah",
    "sí",
    "si",
    "SÍ",
    "s",
    "closed",
    "it's closed",
    "yes, closed",
    "claro",
    "cerrado",
    "true",
  ])("closed: %s is true", (typed) => {
    expect(answer("expansion", "closed", typed)).toEqual(taken(true));
  });
  test.each([
    "no",
    "n",
    "No!",
    "nope",
    "not closed",
    "it isn't closed",
    "no, not closed",
    "no está cerrado",
    "no es cerrado",
    "nope, it's not",
    "false",
  ])("closed: %s is false", (typed) => {
    expect(answer("expansion", "closed", typed)).toEqual(taken(false));
  });
  test.each(["", "maybe", "yes and no", "yes no", "no clue", "open", "80", "yes 80"])(
    "closed: '%s' is refused",
    (typed) => {
      expect(answer("expansion", "closed", typed)).toEqual(refused("closed", typed, "unknown-option"));
    },
  );
});

describe("choices", () => {
  test.each([
    { typed: "pex", option: "pex" },
    { typed: "PEX", option: "pex" },
    { typed: "copper L", option: "copper_l" },
    { typed: "copper_l", option: "copper_l" },
    { typed: "Cobre L", option: "copper_l" },
    { typed: "it's type M pipe", option: "copper_m" },
    { typed: "3", option: "pex" },
    { typed: "3)", option: "pex" },
    { typed: "3.", option: "pex" },
    { typed: "#1", option: "copper_l" },
    { typed: "option 2", option: "copper_m" },
    { typed: "opción 2", option: "copper_m" },
  ])("pipe: $typed is $option", ({ typed, option }) => {
    expect(answer("wait", "pipe", typed)).toEqual(taken(option));
  });
  test.each(["", "lead", "0", "5", "copper", "pex or cpvc", "2 3"])("pipe: '%s' is refused", (typed) => {
    expect(answer("wait", "pipe", typed)).toEqual(refused("pipe", typed, "unknown-option"));
  });

  test.each([
    { typed: "3/4", option: "3/4" },
    { typed: '3/4"', option: "3/4" },
    { typed: "¾ in", option: "3/4" },
    { typed: "0.75 in", option: "3/4" },
    { typed: "1 in", option: "1" },
    { typed: "half inch", option: "1/2" },
    { typed: "2", option: "3/4" },
    { typed: "3", option: "1" },
  ])("size: $typed is $option", ({ typed, option }) => {
    expect(answer("wait", "size", typed)).toEqual(taken(option));
  });
  test("a size wins over a place in the list: 1 is 1 in, not the first option", () => {
    expect(answer("wait", "size", "1")).toEqual(taken("1"));
  });
  test("5/8 is no size here", () => {
    expect(answer("wait", "size", "5/8")).toEqual(refused("size", "5/8", "unknown-option"));
  });
});

describe("days", () => {
  test.each([
    "2026-12-01",
    "12/1/2026",
    "12/01/26",
    "1 dic 2026",
    "1 de diciembre de 2026",
    "Dec 1, 2026",
    "December 1st 2026",
    "1 Dec. 2026",
  ])("%s is 2026-12-01", (typed) => {
    expect(answer("away", "start", typed)).toEqual(taken("2026-12-01"));
  });
  test.each(["leaving 2026-12-01", "from the 1 dec 2026.", "desde el 1 dic 2026"])("%s is 2026-12-01 too", (typed) => {
    expect(answer("away", "start", typed)).toEqual(taken("2026-12-01"));
  });
  test.each(["", "tomorrow", "12/1", "2026-13-01", "2026-02-29", "30/12/2026", "1 foo 2026", "2026-12-01 or later"])(
    "'%s' is no day",
    (typed) => {
      expect(answer("away", "start", typed)).toEqual(refused("start", typed, "not-a-day"));
    },
  );
  test("2028-02-29 is a leap day", () => {
    expect(answer("away", "start", "2028-02-29")).toEqual(taken("2028-02-29"));
  });
  test("2100-02-29 is none", () => {
    expect(answer("away", "start", "2100-02-29")).toMatchObject({ ok: false });
  });
});

describe("names", () => {
  test.each([
    { typed: "HX 50", name: "HX 50" },
    { typed: '"HX 50, tall"', name: "HX 50, tall" },
    { typed: "“HX 50”", name: "HX 50" },
    { typed: " it's-a-50 ", name: "it's-a-50" },
    { typed: "Peñón", name: "Peñón" },
  ])("$typed", ({ typed, name }) => {
    expect(answer("size", "model", typed)).toEqual(taken(name));
  });
  test("nothing is no name", () => {
    expect(answer("size", "model", " ")).toEqual(refused("model", "", "unknown-option"));
  });
});
