import { expect, test } from "vitest";
import { acceptanceShare } from "../../src/physics/expansion-tank.ts";
import { pressureAfter_kPa } from "../../src/physics/pressure-rise.ts";

test("a tank takes in what its acceptance between the two pressures says", () => {
  for (const precharge_kPa of [100, 400, 550]) {
    const after_kPa = pressureAfter_kPa(20, precharge_kPa, 400, 3);
    expect(20 * acceptanceShare(precharge_kPa, 400, after_kPa)).toBeCloseTo(3, 9);
  }
});

test("nothing taken in leaves the pressure; more than it holds has no end", () => {
  expect(pressureAfter_kPa(20, 400, 400, 0)).toBeCloseTo(400, 9);
  expect(pressureAfter_kPa(20, 400, 400, 20)).toBe(Number.POSITIVE_INFINITY);
});
