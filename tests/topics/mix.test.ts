import { describe, expect, test } from "vitest";
import { mix } from "../../src/topics/mix.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";

const F = (value: number) => toBase(value, "F");
const CASE = { setpoint: F(140), wanted: F(120), cold: F(50), tank: toBase(50, "gal") };
const number = (id: string, facts: Readonly<Record<string, number | boolean>> = CASE) =>
  resultOf(answerOf(mix, facts), id).quantity.value;

describe("50 gal at 140 °F mixed to 120 °F with 50 °F", () => {
  test("makes 45 gal from 35 gal hot (energy balance, exact)", () => {
    expect(fromBase(number("hot_volume"), "gal")).toBeCloseTo(35, 9);
    expect(fromBase(number("mixed_volume"), "gal")).toBeCloseTo(45, 9);
  });
  test("is 7/9 hot and gains 2/7", () => {
    expect(number("mix_fraction_hot")).toBeCloseTo(7 / 9, 12);
    expect(number("gain_over_unmixed")).toBeCloseTo(2 / 7, 12);
  });
  test("burns in 3 to 6 s from the tank and 5 to 10 min at the tap (published lists)", () => {
    const answer = answerOf(mix, CASE);
    const storage = resultOf(answer, "scald_time_storage");
    const tap = resultOf(answer, "scald_time_tap");
    expect(storage.quantity.value).toBeCloseTo(3, 9);
    expect(storage.upTo).toBeCloseTo(6, 9);
    expect(tap.quantity.value).toBeCloseTo(300, 6);
    expect(tap.upTo).toBeCloseTo(600, 6);
  });
  test("is a caution until a mixing valve is known", () => {
    expect(answerOf(mix, CASE).verdict).toBe("caution");
    expect(answerOf(mix, { ...CASE, mixing_valve: true }).verdict).toBe("info");
    expect(codesOf(answerOf(mix, CASE))).toContain("gain_needs_valve");
    expect(codesOf(answerOf(mix, { ...CASE, mixing_valve: true }))).not.toContain("gain_needs_valve");
  });
});

test("without a tank it gives shares and no volume", () => {
  const answer = answerOf(mix, { setpoint: F(135), wanted: F(120), cold: F(50) });
  expect(answer.headline.code).toBe("mixes");
  expect(answer.results.map(({ id }) => id)).not.toContain("mixed_volume");
});

test("stored as hot as wanted, nothing is gained", () => {
  const answer = answerOf(mix, { ...CASE, wanted: F(140) });
  expect(answer.headline.code).toBe("mixes_nothing");
  expect(resultOf(answer, "gain_over_unmixed").quantity.value).toBe(0);
});

test("125 °F at the tap is over the limit, 120 °F is not", () => {
  expect(codesOf(answerOf(mix, { ...CASE, wanted: F(125) }))).toContain("tap_burns");
  expect(codesOf(answerOf(mix, CASE))).not.toContain("tap_burns");
});

test("at 105 °F, below the burn tables, no time is given and it says so", () => {
  const answer = answerOf(mix, { ...CASE, wanted: F(105) });
  expect(answer.results.map(({ id }) => id)).not.toContain("scald_time_tap");
  expect(codesOf(answer)).toContain("below_scald_table");
});

test("a tank hotter than the lists is given zero to one second", () => {
  const storage = resultOf(answerOf(mix, { ...CASE, setpoint: F(180) }), "scald_time_storage");
  expect([storage.quantity.value, storage.upTo]).toEqual([0, 1]);
});

describe("refuses", () => {
  const cases = [
    ["wanted above storage", { wanted: F(141) }, "wanted", "wanted_above_storage"],
    ["cold above wanted", { wanted: F(85), cold: F(90) }, "cold", "cold_above_wanted"],
    ["cold as warm as wanted", { wanted: F(90), cold: F(90) }, "cold", "cold_above_wanted"],
  ] as const;
  test.each(cases)("%s, with a worded reason", (_, change, fact, code) => {
    const refused = refusalOf(mix, { ...CASE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  const outside = [
    ["setpoint", Number.NaN],
    ["setpoint", F(211)],
    ["wanted", F(59)],
    ["drawable", 0],
    ["drawable", 1.01],
    ["tank", Number.NaN],
  ] as const;
  test.each(outside)("%s of %f", (fact, value) => {
    expect(refusalOf(mix, { ...CASE, [fact]: value }).fact).toBe(fact);
  });
});

test("asks for tank temperature and wanted temperature, and assumes 50 °F cold and 70 % drawn", () => {
  expect(askTopic(mix, {}).result).toEqual({ kind: "needs-facts", missing: ["setpoint", "wanted"] });
  const { facts } = askTopic(mix, { setpoint: F(140), wanted: F(120) });
  expect(facts["cold"]).toEqual({ value: F(50), from: "assumed" });
  expect(facts["drawable"]).toEqual({ value: 0.7, from: "assumed" });
});
