import { describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { BIN_SOURCE, PATTERN_SOURCE, usageBin } from "../../src/equipment/test-procedure/draw-patterns.ts";
import { rateUnit } from "../../src/equipment/test-procedure/rate-unit.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";

const { catalogue } = await loadBooks(new URL("../../seeds", import.meta.url).pathname);
/**
 * What published ratings of such classes span: plain electric tanks 0.88 to 0.95, integrated and split heat pumps 2.8 to
 * 4.1, plug-in heat pumps 2.2 to 3.3 (common practice, from published product lists; from memory). The least that the
 * federal standard asks of a plain tank of 50 gal and medium use is 0.9307 - 0.0002 V (10 CFR 430.32(d), from memory).
 */
const UEF = { resistance: [0.88, 0.95], integrated: [2.8, 4.1], split: [2.8, 4.1], plug_in: [2.2, 3.3] } as const;
/** First-hour ratings over nominal volume: 1.1 to 1.7 with elements, 0.6 to 1.0 for plug-in units (from memory). */
const FIRST_HOUR_SHARE = {
  resistance: [1.1, 1.7],
  integrated: [1.1, 1.7],
  split: [0.8, 1.7],
  plug_in: [0.6, 1],
} as const;

describe.each(catalogue)("the demo sheet $id, rated by the simulator", ({ id, kind, nominal_L, heater }) => {
  const { firstHour, bin, day } = rateUnit(heater);

  test("has a uniform energy factor in the range of its class", () => {
    const [least, most] = UEF[kind];
    expect(day.uef, id).toBeGreaterThan(least);
    expect(day.uef, id).toBeLessThan(most);
  });

  test("has a first-hour rating in the range of its class, and the bin that goes with it", () => {
    const [least, most] = FIRST_HOUR_SHARE[kind];
    expect(firstHour.firstHour_L / nominal_L, id).toBeGreaterThan(least);
    expect(firstHour.firstHour_L / nominal_L, id).toBeLessThan(most);
    expect(usageBin(firstHour.firstHour_L)).toBe(bin);
  });
});

test.each([
  [17.9, "very_small"],
  [18, "low"],
  [50.9, "low"],
  [51, "medium"],
  [74.9, "medium"],
  [75, "high"],
])("%f gal in the first hour is the bin %s (16 CFR 305, appendices D1 and D3)", (first_gal, bin) => {
  expect(usageBin(toBase(first_gal, "gal")).replace(" ", "_")).toBe(bin);
  expect(fromBase(toBase(first_gal, "gal"), "gal")).toBeCloseTo(first_gal, 9);
});

test("the draw patterns and the bins name their source, and say what is from memory", () => {
  expect(PATTERN_SOURCE.basis).toBe("from_memory");
  expect(BIN_SOURCE.document.length).toBeGreaterThan(5);
});
