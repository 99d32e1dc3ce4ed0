import { describe, expect, test } from "vitest";
import { buildPhraseBook, endsWord, matchPhrase, plainPhrase } from "../../src/units/phrase-book.ts";

const book = buildPhraseBook([
  ["cold", "cold"],
  ["cold water", "cold water"],
  ["pre charge", "pre-charge"],
  ["in wc", "inches of water"],
  ["ft2", "square feet"],
  ["cold", "also this"],
  ["un dos tres cuatro cinco", "five words"],
] as const);
const match = (text: string, at = 0) => matchPhrase(book, text, at, endsWord);

describe("the longest phrase at a place", () => {
  test.each([
    { text: "cold 50", phrase: "cold", end: 4 },
    { text: "cold water 50", phrase: "cold water", end: 10 },
    { text: "cold-water 50", phrase: "cold water", end: 10 },
    { text: "coldwater 50", phrase: "coldwater", end: 9 },
    { text: "cold_water", phrase: "cold water", end: 10 },
    { text: "precharge", phrase: "precharge", end: 9 },
    { text: "pre-charge", phrase: "pre charge", end: 10 },
    { text: "in. w.c. more", phrase: "in wc", end: 8 },
    { text: "ft^2", phrase: "ft2", end: 4 },
    { text: "un dos tres cuatro cinco", phrase: "un dos tres cuatro cinco", end: 24 },
    { text: "cold.", phrase: "cold", end: 5 },
  ])("$text", ({ text, phrase, end }) => {
    expect(match(text)).toMatchObject({ phrase, end });
  });

  test.each(["colder", "col", "hot cold", "cold_", "cold's", " cold?x".slice(2), "ft 2"])("none in '%s'", (text) => {
    expect(match(text)).toBeUndefined();
  });

  test("a phrase may have several meanings", () => {
    expect(match("cold")?.meanings).toEqual(["cold", "also this"]);
  });
  test("a row of dashes ends the search", () => {
    expect(match("cold------water")).toMatchObject({ phrase: "cold" });
  });
  test("what stood before is part of the phrase", () => {
    const prices = buildPhraseBook([["$/kwh", "price"]]);
    expect(matchPhrase(prices, "0.14/kwh", 4, endsWord, "$")).toMatchObject({ end: 8, meanings: ["price"] });
  });
});

test.each([
  { phrase: "Agua  FRÍA", plain: "agua fria" },
  { phrase: "in. w.c.", plain: "in wc" },
  { phrase: "pre-charge_set", plain: "pre charge set" },
  { phrase: "1.5 in", plain: "1.5 in" },
  { phrase: "m^3", plain: "m3" },
])("$phrase is held as $plain", ({ phrase, plain }) => {
  expect(plainPhrase(phrase)).toBe(plain);
});
