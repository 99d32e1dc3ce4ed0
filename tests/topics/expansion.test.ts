import { describe, expect, test } from "vitest";
import { expansion } from "../../src/topics/expansion.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { FULL_FORMULA } from "../reference/expansion.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const HOUSE = {
  tank: toBase(80, "gal"),
  setpoint: toBase(140, "F"),
  cold: toBase(50, "F"),
  line_pressure: toBase(60, "psi"),
};
const gal = (id: string, facts = {}) =>
  fromBase(resultOf(answerOf(expansion, { ...HOUSE, ...facts }), id).quantity.value, "gal");

test.each(FULL_FORMULA)("case $name answers both ways within 0.1 %", (row) => {
  const facts = {
    tank: toBase(row.system_gal, "gal"),
    cold: toBase(row.cold_F, "F"),
    setpoint: toBase(row.hot_F, "F"),
    line_pressure: toBase(row.line_psi, "psi"),
    pressure_limit: toBase(row.ceiling_psi, "psi"),
  };
  const expected = [
    ["expanded_volume", row.expanded_gal],
    ["acceptance_volume", row.expanded_gal],
    ["tank_volume_minimum", row.tank_gal],
    ["tank_volume_full_formula", row.tankLessMetal_gal],
  ] as const;
  for (const [id, value] of expected) expect(Math.abs(gal(id, facts) / value - 1)).toBeLessThan(1e-3);
});

describe("an 80 gal tank, 50 to 140 °F, 60 psi", () => {
  test("gets the next common size and a precharge of the line pressure", () => {
    const answer = answerOf(expansion, HOUSE);
    expect(answer.verdict).toBe("caution");
    expect(answer.headline.code).toBe("needs_tank");
    expect(gal("next_stock_size")).toBeCloseTo(4.4, 9);
    expect(fromBase(resultOf(answer, "precharge").quantity.value, "psi")).toBeCloseTo(60, 9);
    expect(fromBase(resultOf(answer, "pressure_ceiling").quantity.value, "psi")).toBeCloseTo(135, 9);
  });
  test("is told of the larger tank that the code's 80 psi takes", () => {
    expect(codesOf(answerOf(expansion, HOUSE))).toContain("code_limit_larger");
    expect(gal("tank_volume_code_limit")).toBeGreaterThan(gal("tank_volume_minimum"));
  });
  test("counts the metal only in the full formula", () => {
    expect(gal("tank_volume_minimum", { vessel_metal: "none" })).toBe(gal("tank_volume_minimum"));
    expect(gal("tank_volume_full_formula", { vessel_metal: "none" })).toBe(gal("tank_volume_minimum"));
  });
  test("needs no stock size beyond the list: 500 gal at 80 psi limit 85 psi", () => {
    const facts = {
      ...HOUSE,
      tank: toBase(500, "gal"),
      line_pressure: toBase(80, "psi"),
      pressure_limit: toBase(85, "psi"),
    };
    const answer = answerOf(expansion, facts);
    expect(answer.headline.code).toBe("needs_large_tank");
    expect(answer.results.map(({ id }) => id)).not.toContain("next_stock_size");
  });
});

describe("a tank that is there", () => {
  const there = (size_gal: number, precharge_psi?: number) => ({
    ...HOUSE,
    existing_tank: toBase(size_gal, "gal"),
    ...(precharge_psi !== undefined && { existing_precharge: toBase(precharge_psi, "psi") }),
  });
  const cases = [
    [4.4, 60, "good", "existing_enough"],
    [2, 60, "no", "existing_short"],
    [4.4, 20, "no", "existing_short"],
  ] as const;
  test.each(cases)("of %f gal charged to %f psi is %s", (size_gal, precharge_psi, verdict, code) => {
    const answer = answerOf(expansion, there(size_gal, precharge_psi));
    expect([answer.verdict, answer.headline.code]).toEqual([verdict, code]);
  });
  test("with an unknown charge says that the charge was taken", () => {
    expect(codesOf(answerOf(expansion, there(4.4)))).toContain("existing_precharge_assumed");
    expect(codesOf(answerOf(expansion, there(4.4, 60)))).not.toContain("existing_precharge_assumed");
  });
});

test("an open system needs no tank and says where the growth goes", () => {
  const answer = answerOf(expansion, { ...HOUSE, closed: false });
  expect([answer.verdict, answer.headline.code]).toEqual(["info", "open_system"]);
});

describe("refuses, with a worded reason,", () => {
  const cases = [
    ["a tank no hotter than the cold water", { setpoint: toBase(50, "F") }, "setpoint", "hot_not_above_cold"],
    [
      "a line pressure of 135 psi, which is the ceiling",
      { line_pressure: toBase(135, "psi") },
      "line_pressure",
      "line_at_ceiling",
    ],
    [
      "a limit above the relief setting",
      { pressure_limit: toBase(160, "psi") },
      "pressure_limit",
      "limit_above_relief",
    ],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalOf(expansion, { ...HOUSE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  test("takes 134 psi, just under the ceiling", () => {
    expect(answerOf(expansion, { ...HOUSE, line_pressure: toBase(134, "psi") }).headline.code).toBe("needs_large_tank");
  });
});

describe("refuses outside its range", () => {
  const cases = [
    ["tank", Number.NaN],
    ["tank", 1],
    ["setpoint", toBase(211, "F")],
    ["cold", -0.1],
    ["line_pressure", toBase(201, "psi")],
    ["line_pressure", Number.NaN],
  ] as const;
  test.each(cases)("%s of %f", (fact, value) => {
    const refused = refusalOf(expansion, { ...HOUSE, [fact]: value });
    expect(refused.fact).toBe(fact);
    expect(refused.reason).toBeUndefined();
  });
});

test("asks for tank, tank temperature and line pressure", () => {
  expect(askTopic(expansion, {}).result).toEqual({
    kind: "needs-facts",
    missing: ["tank", "setpoint", "line_pressure"],
  });
});

describe("tells the site", () => {
  const site = (change: object) => expansion.site?.({ ...complete, ...change }, fixtureBooks);
  const complete = {
    tank_L: 300,
    setpoint_C: 60,
    line_pressure_kPa: 400,
    cold_C: 10,
    closed: true,
    control: undefined,
    relief_setting_kPa: 1034,
    pressure_limit_kPa: undefined,
    pipe_volume_L: 0,
    vessel_metal: "steel",
    existing_tank_L: undefined,
    existing_precharge_kPa: undefined,
  } as const;
  const cases = [
    ["nothing is known", {}, undefined, undefined],
    ["none is fitted", { control: "none" }, false, false],
    ["the relief valve drips", { control: "relief_valve" }, false, true],
    ["a tank is fitted", { control: "tank" }, true, undefined],
    ["a tank of 10 L is there", { existing_tank_L: 10 }, true, undefined],
  ] as const;
  test.each(cases)("of expansion control when %s", (_, change, hasTank, throughRelief) => {
    expect(site(change)?.hasExpansionTank).toBe(hasTank);
    expect(site(change)?.expandsThroughRelief).toBe(throughRelief);
  });
});
