import { describe, expect, test } from "vitest";
import { findModel } from "../../src/equipment/find-model.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const find = (typed: string) => findModel(seedBooks.catalogue, typed);

describe("a model is found by", () => {
  test.each(["hollin-80", "Hollin 80", "HOLLIN80", " hollin  80 "])("“%s”", (typed) => {
    const found = find(typed);
    expect(found.ok && found.entry.id).toBe("hollin-80");
  });
});

test("hollin-80 is not taken for hollin-80-quiet", () => {
  const found = find("hollin 80 quiet");
  expect(found.ok && found.entry.id).toBe("hollin-80-quiet");
});

describe("an unknown name gets the three that look most like it", () => {
  const cases = [
    ["holin-50", "hollin-50"],
    ["tarnly 66", "tarnley-66"],
    ["fenmore-80", "fenmoor-80"],
    ["sedge", "sedge-50"],
  ] as const;
  test.each(cases)("%s: first %s", (typed, nearest) => {
    const found = find(typed);
    expect(found.ok).toBe(false);
    if (!found.ok) expect([found.nearest[0], found.nearest.length]).toEqual([nearest, 3]);
  });
});

test("an empty catalogue has nothing near", () => {
  expect(findModel([], "hollin-80")).toEqual({ ok: false, nearest: [] });
});
