import { describe, expect, test } from "vitest";
import { collectKit } from "../../src/jobs/kit.ts";
import { KIT_REASONS } from "../../src/jobs/kit-rule.ts";
import { KIT_RULES } from "../../src/jobs/kit-rules-table.ts";
import { readKitTold } from "../../src/jobs/kit-told-facts.ts";
import { toBase } from "../../src/units/convert.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

describe.each(KIT_RULES.map((rule) => [rule.id, rule] as const))("%s", (_, { parts, cases, asks }) => {
  test.each(cases.fires)("brings: $name", ({ site, brings }) => {
    const brought = parts(site);
    expect(brought?.length).toBeGreaterThan(0);
    if (brings !== undefined)
      expect(brought).toEqual(brings.map(({ part, amount }) => ({ part, amount: expect.closeTo(amount, 9) })));
  });
  test.each(cases.silent)("stays silent: $name", ({ site }) => expect(parts(site)).toBeUndefined());
  test("says how much in one of its cases, and is silent in one unless every job needs it", () => {
    expect(cases.fires.some(({ brings }) => brings !== undefined)).toBe(true);
    expect(cases.silent.length > 0 || parts({}) !== undefined).toBe(true);
    expect(asks.length === 0 || cases.silent.length > 0).toBe(true);
  });
});

test("there is one rule for each reason, and for each line of the check list at least", () => {
  expect(KIT_RULES.map(({ id }) => id).sort()).toEqual(Object.keys(KIT_REASONS).sort());
  // The check list of parts, knowledge of 2026-11-25, has 23 lines.
  expect(KIT_RULES.length).toBeGreaterThanOrEqual(23);
});

test("every part that a rule brings has a name in both languages, measured as the rule counts", () => {
  const named = new Map(seedBooks.crew.parts.map((part) => [part.id, part]));
  const brought = KIT_RULES.flatMap(({ parts, cases }) => cases.fires.flatMap(({ site }) => parts(site) ?? []));
  const unnamed = brought.filter(({ part }) => named.get(part)?.group !== "part").map(({ part }) => part);
  expect(unnamed).toEqual([]);
  const counted = brought.filter(({ part }) => named.get(part)?.measure === "each");
  expect(counted.filter(({ amount }) => !Number.isInteger(amount))).toEqual([]);
});

describe("the kit", () => {
  test("adds up, takes off what the truck has, and leaves what is ordered apart", () => {
    const { lines } = collectKit(KIT_RULES, {}, { "ball-valve": 3, "flexible-connector": 1 });
    const line = (wanted: string) => lines.find(({ part }) => part === wanted);
    expect(line("ball-valve")).toMatchObject({ amount: 1, onTruck: 1, toLoad: 0 });
    expect(line("flexible-connector")).toMatchObject({ amount: 2, onTruck: 1, toLoad: 1 });
    expect(line("heater")).toMatchObject({ amount: 1, toLoad: 0, isOrdered: true });
  });

  test("says which facts nobody has told, and no longer once one of them is told", () => {
    expect(collectKit(KIT_RULES, {}).open).toContain("closed");
    expect(collectKit(KIT_RULES, { closed: false }).open).not.toContain("closed");
    expect(collectKit(KIT_RULES, { line_pressure_kPa: 300 }).open).not.toContain("line_pressure");
  });
});

test("the facts of a job are read under their shared ids; others and values of another type are left out", () => {
  expect(
    readKitTold({ closed: true, line_pressure: 400, replaces: "gas", floor: "marble", freezes: "yes", where: "attic" }),
  ).toEqual({ closed: true, line_pressure_kPa: 400, replaces: "gas" });
  expect(readKitTold({ tank: toBase(50, "gal") })).toEqual({ tank_L: toBase(50, "gal") });
});
