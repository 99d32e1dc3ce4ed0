import { expect, test } from "vitest";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { writeLp } from "../../adapters/solver/write-lp.ts";
import type { ChoiceModel } from "../../src/ports/solver.ts";

const solve = await openHighsSolver();

/** A knapsack whose optimum is found by trying all sixteen ways: b and c, worth 11. */
const KNAPSACK: ChoiceModel = {
  choices: [
    { name: "a", cost: -8 },
    { name: "b", cost: -6 },
    { name: "c", cost: -5 },
    { name: "d", cost: -1 },
  ],
  rows: [
    {
      terms: [
        ["a", 7],
        ["b", 4],
        ["c", 3],
        ["d", 2],
      ],
      max: 7,
    },
  ],
};

test("it proves the best of all choices", () => {
  expect(solve(KNAPSACK)).toEqual({ kind: "optimal", taken: new Set(["b", "c"]), cost: -11 });
});

test("the same model comes to the same solution", () => {
  expect(solve(KNAPSACK)).toEqual(solve(KNAPSACK));
});

test("rows that no choice keeps to are infeasible, with terms and without", () => {
  expect(solve({ ...KNAPSACK, rows: [{ terms: [["a", 1]], min: 2 }] })).toEqual({ kind: "infeasible" });
  expect(solve({ ...KNAPSACK, rows: [{ terms: [], min: 1 }] })).toEqual({ kind: "infeasible" });
  expect(solve({ choices: [], rows: [{ terms: [], min: 0, max: 3 }] })).toEqual({
    kind: "optimal",
    taken: new Set(),
    cost: 0,
  });
});

test("long sums are broken into short lines", () => {
  const names = Array.from({ length: 200 }, (_, index) => `x${index}`);
  const model: ChoiceModel = {
    choices: names.map((name) => ({ name, cost: -1 })),
    rows: [{ terms: names.map((name) => [name, 1]), min: 0, max: 17 }],
  };
  expect(
    Math.max(
      ...writeLp(model)
        .split("\n")
        .map(({ length }) => length),
    ),
  ).toBeLessThan(200);
  expect(solve(model)).toMatchObject({ kind: "optimal", cost: -17 });
});
