import fc from "fast-check";
import { expect, test } from "vitest";
import { inputThatShows, isDay, isNumberFor } from "../../src/messages/field-values.ts";

/** The platform's calendar: what it reads and writes back unchanged is a day. */
const isRealDay = (text: string) => {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().slice(0, 10) === text;
};

test("a day is a day exactly when the platform's calendar has it", () => {
  const two = fc.integer({ min: 0, max: 40 }).map((number) => String(number).padStart(2, "0"));
  const year = fc.integer({ min: 1, max: 9999 }).map((number) => String(number).padStart(4, "0"));
  fc.assert(
    fc.property(year, two, two, (y, m, d) => {
      const text = `${y}-${m}-${d}`;
      expect(isDay(text)).toBe(isRealDay(text));
    }),
    {
      numRuns: 2_000,
      examples: [
        ["1900", "02", "29"],
        ["2000", "02", "29"],
        ["2024", "02", "29"],
      ],
    },
  );
});

test.each(["", "2026-1-1", "2026-01-01 ", "tomorrow", "20260101"])("“%s” is no day", (text) => {
  expect(isDay(text)).toBe(false);
});

test("a number is taken within its range, whole where it must be", () => {
  const field = { type: "number", min: -1, max: 3, whole: true } as const;
  expect(["-1", "0", "3"].map((text) => isNumberFor(field, text))).toEqual([true, true, true]);
  expect(["-2", "4", "1.5", "1e0", "0x1", "", " 1", "two"].filter((text) => isNumberFor(field, text))).toEqual([]);
  expect(isNumberFor({ type: "number" }, "1.5")).toBe(true);
});

test("a field that cannot show what stands in it becomes one for text", () => {
  expect(inputThatShows({ input: { type: "day" }, value: "next week" })).toEqual({ type: "text" });
  expect(inputThatShows({ input: { type: "day" }, value: "" })).toEqual({ type: "day" });
  expect(inputThatShows({ input: { type: "number", max: 3 }, value: "4" })).toEqual({ type: "text" });
});
