import { describe, expect, test } from "vitest";
import { addSteps, openCase } from "../../src/faults/case.ts";
import { answerCheck } from "../../src/faults/contradiction.ts";
import { buildModel } from "../../src/faults/model.ts";
import { normalShareBelow, weighReading } from "../../src/faults/readings.ts";
import { FIXTURE } from "./fixture-knowledge.ts";

const ohms = FIXTURE.checks.find(({ id }) => id === "ohms");
if (ohms === undefined) throw new Error("the fixture has no ohms");
const EXPECTED_ohm = 12.8;

test("the normal distribution agrees with published tables", () => {
  // Standard normal table, as printed in any statistics text: 0, 1, 1.96 and -2.5758 standard deviations.
  expect(normalShareBelow(0)).toBeCloseTo(0.5, 6);
  expect(normalShareBelow(1)).toBeCloseTo(0.841345, 5);
  expect(normalShareBelow(1.959964)).toBeCloseTo(0.975, 5);
  expect(normalShareBelow(-2.575829)).toBeCloseTo(0.005, 5);
});

describe("a reading is a likelihood, not a threshold", () => {
  const weigh = (value: number) => weighReading(ohms, value, EXPECTED_ohm) ?? {};

  test("12.9 ohm where 12.8 is expected is as it should be", () => {
    expect(weigh(12.9)["fine"]).toBeGreaterThan(0.999);
  });

  test("on the edge of a range both sides count by half", () => {
    expect(weigh(1.2 * EXPECTED_ohm)["fine"]).toBeCloseTo(0.5, 6);
    expect(weigh(1.2 * EXPECTED_ohm)["open"]).toBeCloseTo(0.5, 6);
  });

  test("one standard error inside the edge, 84 % lies inside", () => {
    // The error is 1.5 % of the reading: edge 15.36, reading 15.36 / 1.015.
    expect(weigh((1.2 * EXPECTED_ohm) / 1.015)["fine"]).toBeCloseTo(0.8413, 4);
  });

  test("the weights add up to one, however far off the reading", () => {
    for (const value of [-5, 0, 0.001, 9, 10.24, 15, 1e6, 1e12]) {
      const sum = Object.values(weigh(value)).reduce((all, weight) => all + weight, 0);
      expect(sum).toBeCloseTo(1, 9);
    }
  });

  test("no number is no reading", () => {
    expect(weighReading(ohms, Number.NaN, 12.8)).toBeUndefined();
    expect(weighReading(ohms, 12.8, Number.POSITIVE_INFINITY)).toBeUndefined();
  });
});

describe("contradictions", () => {
  const model = buildModel(FIXTURE);
  const start = openCase({ doers: ["qualified"] }, { age: "mid", unitKind: "integrated" });
  const reading = (value: number) => ({ kind: "reading", check: "ohms", value, expected: EXPECTED_ohm }) as const;

  test("the same check with another outcome", () => {
    const known = addSteps(start, reading(12.9));
    expect(answerCheck(model, known, reading(1e6)).contradiction).toEqual({ now: "ohms", earlier: "ohms" });
    expect(answerCheck(model, known, reading(12.7)).contradiction).toBeUndefined();
  });

  test("after a remedy another outcome is what was hoped for", () => {
    const known = addSteps(start, reading(1e6), { kind: "tried", cause: "element" });
    expect(answerCheck(model, known, reading(12.8)).contradiction).toBeUndefined();
  });

  test("the answer is kept all the same", () => {
    expect(answerCheck(model, addSteps(start, reading(12.9)), reading(1e6)).known.steps).toHaveLength(2);
  });
});
