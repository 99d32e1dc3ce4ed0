import fc from "fast-check";
import { expect, test } from "vitest";
import { knowWords, nearestWords } from "../../../src/conversation/grammar/nearest-words.ts";

const KNOWN = ["tank", "cold", "hot", "pressure", "presión", "setpoint", "gallons", "galones", "pex", "t&p"];

test.each([
  { word: "tnak", nearest: ["tank"], name: "two letters swapped" },
  { word: "presure", nearest: ["pressure", "presión"].slice(0, 1), name: "a letter missed" },
  { word: "presion", nearest: ["presión"], name: "an accent missed" },
  { word: "colld", nearest: ["cold"], name: "a letter too many" },
  { word: "galons", nearest: ["gallons", "galones"], name: "between two languages" },
  { word: "PRESSUER", nearest: ["pressure"], name: "capital letters" },
  { word: "hat", nearest: ["hot"], name: "a short word, one slip" },
  { word: "zorp", nearest: [], name: "nothing like it" },
  { word: "ho", nearest: [], name: "two letters are too few" },
  { word: "tonq", nearest: [], name: "a short word, two slips" },
])("$word: $name", ({ word, nearest }) => {
  expect(nearestWords(word, knowWords(KNOWN))).toEqual(nearest);
});

test("at most three are named, nearest first", () => {
  expect(nearestWords("galon", knowWords(["talon", "galons", "galons", "salon", "galan", "galon"]))).toEqual([
    "galon",
    "talon",
    "galons",
  ]);
});

test("one slip in a word of six letters or more is always found", () => {
  const slip = fc.tuple(fc.nat(), fc.constantFrom("drop", "double", "swap"));
  fc.assert(
    fc.property(fc.constantFrom("pressure", "setpoint", "gallons", "galones"), slip, (word, [place, kind]) => {
      const at = place % (word.length - 1);
      const [head, tail] = [word.slice(0, at), word.slice(at + 1)];
      const letter = word.charAt(at);
      const next = word.charAt(at + 1);
      const slipped = {
        drop: head + tail,
        double: head + letter + letter + tail,
        swap: head + next + letter + word.slice(at + 2),
      }[kind];
      expect(nearestWords(slipped, knowWords(KNOWN))).toContain(word);
    }),
  );
});
