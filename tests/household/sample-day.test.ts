import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawCount, drawPositive, openRandomStream } from "../../src/household/random.ts";
import { eventsADay, type HotWaterUse, type Household, sampleDay } from "../../src/household/sample-day.ts";
import { USES } from "../../src/household/use-habits-table.ts";

const FAMILY: Household = { people: 4, bathrooms: 2 };
const manyDays = Array.from({ length: 2_000 }, (_, day) => sampleDay(FAMILY, 7, day));

test("the same seed and day give the same day, another seed another", () => {
  expect(sampleDay(FAMILY, 1, 3)).toEqual(sampleDay(FAMILY, 1, 3));
  expect(sampleDay(FAMILY, 1, 3)).not.toEqual(sampleDay(FAMILY, 2, 3));
});

test("one day can be drawn alone, without the days before it", () => {
  expect(sampleDay(FAMILY, 7, 1_234)).toEqual(manyDays[1_234]);
});

describe("over 2,000 days of four people", () => {
  test.each(USES)("the mean number of %s events is what was asked for within four standard errors", (use) => {
    const fills = use === "dishwasher" ? 3 : 1;
    const total = manyDays.flatMap(({ uses }) => uses).filter((one) => one.use === use).length / fills;
    const expected = eventsADay(use, FAMILY) * manyDays.length;
    expect(Math.abs(total - expected)).toBeLessThan(4 * Math.sqrt(expected));
  });

  test("showers a person a day come to 0.67 (Mayer et al. 1999)", () => {
    const showers = manyDays.flatMap(({ uses }) => uses).filter(({ use }) => use === "shower").length;
    expect(Math.abs(showers / manyDays.length / 4 - 0.67)).toBeLessThan(0.03);
  });

  test("a mean shower lasts 8.2 min within 3 %", () => {
    const showers = manyDays.flatMap(({ uses }) => uses).filter(({ use }) => use === "shower");
    const mean_s = showers.reduce((sum, { duration_s }) => sum + duration_s, 0) / showers.length;
    expect(Math.abs(mean_s / (8.2 * 60) - 1)).toBeLessThan(0.03);
  });

  test("two days of seven are a weekend", () => {
    expect(manyDays.slice(0, 7).map(({ isWeekend }) => isWeekend)).toEqual([
      false,
      false,
      false,
      false,
      false,
      true,
      true,
    ]);
  });
});

test("never more showers at once than bathrooms, uses in order and inside the day", () => {
  const households = fc.record({ people: fc.integer({ min: 1, max: 12 }), bathrooms: fc.integer({ min: 1, max: 4 }) });
  fc.assert(
    fc.property(households, fc.integer(), fc.nat(3_000), (household, seed, day) => {
      const { uses } = sampleDay(household, seed, day);
      const starts = uses.map(({ start_s }) => start_s);
      expect(starts).toEqual([...starts].sort((a, b) => a - b));
      expect(starts.every((start_s) => start_s >= 0 && start_s < 86_400)).toBe(true);
      expect(uses.every(({ flow_L_s, duration_s }) => flow_L_s > 0 && duration_s > 0 && duration_s <= 2_400)).toBe(
        true,
      );
      if (!isCrowded(uses)) expect(mostAtOnce(uses)).toBeLessThanOrEqual(household.bathrooms);
    }),
    { numRuns: 300 },
  );
});

/** True when the last showers of the day were pressed against midnight, where nobody can wait any longer. */
function isCrowded(uses: readonly HotWaterUse[]): boolean {
  return uses.some(({ use, start_s, duration_s }) => use === "shower" && start_s + duration_s >= 86_400 - 1e-6);
}

function mostAtOnce(uses: readonly HotWaterUse[]): number {
  const showers = uses.filter(({ use }) => use === "shower");
  const running = showers.map(
    ({ start_s }) => showers.filter((one) => one.start_s <= start_s && start_s < one.start_s + one.duration_s).length,
  );
  return Math.max(0, ...running);
}

describe("random stream", () => {
  test("100,000 numbers lie in [0, 1) with mean 1/2 and variance 1/12 within four standard errors", () => {
    const random = openRandomStream(42, 0);
    const numbers = Array.from({ length: 100_000 }, () => random.next());
    const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
    const variance = numbers.reduce((sum, one) => sum + (one - mean) ** 2, 0) / numbers.length;
    expect(numbers.every((one) => one >= 0 && one < 1)).toBe(true);
    expect(Math.abs(mean - 1 / 2)).toBeLessThan(4 * Math.sqrt(1 / 12 / numbers.length));
    expect(Math.abs(variance - 1 / 12)).toBeLessThan(4 * Math.sqrt(1 / 180 / numbers.length));
  });

  test("first numbers of 10,000 neighbouring days are spread evenly over ten bins (chi-square, 9 degrees, 0.1 %: 27.9)", () => {
    const bins = new Array<number>(10).fill(0);
    for (let day = 0; day < 10_000; day++) {
      const bin = Math.floor(openRandomStream(1, day).next() * 10);
      bins[bin] = (bins[bin] ?? 0) + 1;
    }
    expect(bins.reduce((sum, count) => sum + (count - 1_000) ** 2 / 1_000, 0)).toBeLessThan(27.9);
  });

  test("counts of mean 3 have mean and variance 3 within four standard errors", () => {
    const random = openRandomStream(5, 5);
    const counts = Array.from({ length: 20_000 }, () => drawCount(random, 3));
    const mean = counts.reduce((sum, one) => sum + one, 0) / counts.length;
    const variance = counts.reduce((sum, one) => sum + (one - mean) ** 2, 0) / counts.length;
    expect(Math.abs(mean - 3)).toBeLessThan(4 * Math.sqrt(3 / counts.length));
    expect(Math.abs(variance - 3)).toBeLessThan(0.15);
  });

  test("positive numbers have the asked mean and spread within 2 %", () => {
    const random = openRandomStream(9, 9);
    const numbers = Array.from({ length: 50_000 }, () => drawPositive(random, 8, 3));
    const mean = numbers.reduce((sum, one) => sum + one, 0) / numbers.length;
    const spread = Math.sqrt(numbers.reduce((sum, one) => sum + (one - mean) ** 2, 0) / numbers.length);
    expect(Math.abs(mean / 8 - 1)).toBeLessThan(0.02);
    expect(Math.abs(spread / 3 - 1)).toBeLessThan(0.02);
    expect(Math.min(...numbers)).toBeGreaterThan(0);
  });
});
