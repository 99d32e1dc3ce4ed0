import { expect, test } from "vitest";
import { countSlips, slipsAllowed } from "../../src/units/count-slips.ts";

test.each([
  ["leak", "leak", 0],
  ["laek", "leak", 1],
  ["leek", "leak", 1],
  ["lek", "leak", 1],
  ["kitten", "sitting", 3],
])("%s to %s is %i", (from, to, slips) => {
  // The last one is the textbook example of the Levenshtein distance.
  expect(countSlips(from, to, 3)).toBe(slips);
});

test("more than is allowed is nothing", () => {
  expect(countSlips("kitten", "sitting", 2)).toBeUndefined();
  expect(countSlips("ab", "abcdef", 3)).toBeUndefined();
});

test("short words must match closely", () => {
  expect([2, 5, 6].map(slipsAllowed)).toEqual([0, 1, 2]);
});
