import { describe, expect, test } from "vitest";
import { mainsTemperature_C, midMonthDay } from "../../src/household/mains-temperature.ts";

/** Chicago O'Hare: 9.69 °C mean, 28.1 K span; formula and inputs in EnergyPlus Engineering Reference 24.1. */
const CHICAGO = { yearMean_C: 9.69, monthlySpan_K: 28.1 };
const toC = (value_F: number) => (value_F - 32) / 1.8;

describe("EnergyPlus Engineering Reference 24.1, Chicago: expected values by arithmetic on the formula, within 0.05 °F", () => {
  test.each([
    [15, 45.4],
    [45, 43.95],
    [106, 49.8],
    [197, 65.43],
    [228, 66.93],
  ])("day %i is %f °F", (day, expected_F) => {
    expect(Math.abs(mainsTemperature_C(CHICAGO, day) - toC(expected_F))).toBeLessThanOrEqual(0.05 / 1.8);
  });

  test("the year's mean is 55.44 °F", () => {
    const days = Array.from({ length: 365 }, (_, index) => mainsTemperature_C(CHICAGO, index + 1));
    const mean_C = days.reduce((sum, one) => sum + one, 0) / days.length;
    expect(Math.abs(mean_C - toC(55.44))).toBeLessThanOrEqual(0.05 / 1.8);
  });
});

test("water from the street never falls below freezing", () => {
  expect(mainsTemperature_C({ yearMean_C: -8, monthlySpan_K: 45 }, 45)).toBe(0);
});

test.each([0, 367, Number.NaN])("refuses day %f", (day) => {
  expect(() => mainsTemperature_C(CHICAGO, day)).toThrow(/day must lie in 1..366/);
});

test("the middle of January is day 15 and of December day 350", () => {
  expect([midMonthDay(1), midMonthDay(12)]).toEqual([15, 350]);
  expect(() => midMonthDay(13)).toThrow(/month/);
});
