import { describe, expect, test } from "vitest";
import { bedroomsFor, fixtureUse_L, peopleFor, ratedFixtureUse_L } from "../../src/household/daily-use.ts";
import { peakHourDemand_L } from "../../src/household/peak-hour-worksheet.ts";
import { DAILY_VOLUMES, USE_HABITS } from "../../src/household/use-habits-table.ts";

const GALLON_L = 3.785411784;
/** Water and gallon factors are exact, so one part in a million is generous. */
const near = (actual: number, expected: number) => expect(Math.abs(actual / expected - 1)).toBeLessThan(1e-6);

describe("published daily use", () => {
  test("Building America equation 3: three bedrooms use 60 gal a day", () => near(fixtureUse_L(3), 60 * GALLON_L));

  test("ANSI/RESNET 301-2014 Addendum A: three bedrooms use 44.6 and waste 15.7177 gal a day", () => {
    expect(Math.abs(ratedFixtureUse_L(3) / GALLON_L - (44.6 + 15.7177))).toBeLessThan(1e-3);
  });

  test("the end uses in gallons add to the published line of 30 + 10 a bedroom within 0.05 gal", () => {
    // Showers are the remaining end use of the same table: 14.0 + 4.67 a bedroom (from memory).
    const { bath, sink } = DAILY_VOLUMES.values;
    expect(Math.abs(14 + bath.base + sink.base - 30)).toBeLessThan(0.05);
    expect(Math.abs(4.67 + bath.each + sink.each - 10)).toBeLessThan(0.05);
  });
});

test("people and bedrooms are each other's inverse from one bedroom up", () => {
  for (const bedrooms of [1, 2, 3, 4, 6]) near(bedroomsFor(peopleFor(bedrooms)), bedrooms);
  expect(bedroomsFor(0.5)).toBe(0);
});

test.each([-1, 13, Number.NaN])("refuses %f bedrooms", (bedrooms) => {
  expect(() => fixtureUse_L(bedrooms)).toThrow(/bedrooms must lie in 0..12/);
});

describe("peak-hour worksheet", () => {
  test("middle edition: three showers and two shaves are 34 gal, as in a trade copy's example", () => {
    near(peakHourDemand_L({ shower: 3, shave: 2 }, "middle"), 34 * GALLON_L);
  });

  test("middle edition: three showers, a shave and a hand dish wash are 36 gal, the department's own example (from memory)", () => {
    near(peakHourDemand_L({ shower: 3, shave: 1, hand_dishes: 1 }, "middle"), 36 * GALLON_L);
  });

  test("present edition counts a shower twice as high as the middle one", () => {
    near(peakHourDemand_L({ shower: 1 }, "present") / peakHourDemand_L({ shower: 1 }, "middle"), 2);
  });

  test("nobody uses nothing", () => expect(peakHourDemand_L({}, "present")).toBe(0));

  test("refuses a negative count", () => {
    expect(() => peakHourDemand_L({ shower: -1 }, "present")).toThrow(/shower must lie in 0..20/);
  });
});

test("a mean shower is the published 17.2 gal within 5 %", () => {
  // Mayer et al. 1999 gives 8.2 min, 2.2 gpm and 17.2 gal; the product of the means is 18.0 gal.
  const { flow_L_s, duration_s } = USE_HABITS.shower;
  expect(Math.abs((flow_L_s * duration_s) / GALLON_L / 17.2 - 1)).toBeLessThan(0.05);
});
