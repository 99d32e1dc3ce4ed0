import { describe, expect, test } from "vitest";
import { addSteps, openCase, type Step, undoStep } from "../../src/faults/case.ts";
import { buildModel, SOMETHING_ELSE } from "../../src/faults/model.ts";
import { posteriorShares, rankCauses } from "../../src/faults/posterior.ts";
import { explainPrior, priorShares } from "../../src/faults/prior.ts";
import { FIXTURE } from "./fixture-knowledge.ts";

const model = buildModel(FIXTURE);
const start = openCase({ doers: ["plumber"] }, { age: "mid", unitKind: "integrated" });
const share = (shares: Float64Array, cause: string) => shares[model.indexOf.get(cause) ?? -1] ?? Number.NaN;
const given = (...steps: Step[]) => posteriorShares(model, addSteps(start, ...steps));
const SAID = { kind: "complaint", symptom: "tepid", isThere: true } as const;
const saw = (check: string, outcome: string): Step => ({ kind: "outcome", check, outcome });

describe("before anything is said", () => {
  test("the shipped weights share what something else leaves", () => {
    const shares = priorShares(model, start);
    // Weights 2, 1, 1, 1, 1 by hand; 3 % for something else.
    expect(share(shares, "element")).toBeCloseTo((0.97 * 2) / 6, 12);
    expect(share(shares, "tank")).toBeCloseTo(0.97 / 6, 12);
    expect(share(shares, SOMETHING_ELSE)).toBeCloseTo(0.03, 12);
  });

  test("a cause of another kind of unit has no share, and an unknown kind keeps every cause", () => {
    expect(share(priorShares(model, { ...start, unitKind: "resistance" }), "gas_lost")).toBe(0);
    expect(share(priorShares(model, openCase({ doers: [] })), "gas_lost")).toBeGreaterThan(0.05);
  });

  test("closed faults of the company move the shares as a Dirichlet count, and taking them back restores them", () => {
    const counted = { ...start, counts: { valve: 30, nonsense: 9 } };
    // (60 x 1/6 + 30) / (60 + 30), times 0.97.
    expect(share(priorShares(model, counted), "valve")).toBeCloseTo((0.97 * 40) / 90, 12);
    expect(explainPrior(model, counted).find(({ cause }) => cause === "valve")).toMatchObject({ counted: 30 });
    expect(priorShares(model, { ...counted, counts: {} })).toEqual(priorShares(model, start));
  });

  test("counts that are no counts are passed over", () => {
    const odd = { ...start, counts: { valve: Number.NaN, tank: -4 } };
    expect(priorShares(model, odd)).toEqual(priorShares(model, start));
  });
});

describe("Bayes' rule by hand", () => {
  test("one complaint", () => {
    // P(tepid): element 0.85, valve 0.6, tank 0.06, wiring 0.25, gas_lost 0.6, else 0.25; each x 0.95 + 0.05 x 0.25.
    const said = [0.85, 0.6, 0.06, 0.25, 0.6, 0.25].map((p) => p * 0.95 + 0.0125);
    const prior = [2, 1, 1, 1, 1].map((weight) => (0.97 * weight) / 6).concat(0.03);
    const weights = prior.map((p, index) => p * (said[index] ?? 0));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const shares = given(SAID);
    for (const [index, weight] of weights.entries()) expect(shares[index]).toBeCloseTo(weight / total, 12);
  });

  test("one answer: odds of two causes move by the ratio of their likelihoods", () => {
    const odds = (shares: Float64Array) => share(shares, "valve") / share(shares, "element");
    // mix bad: 0.85 and 0.06 of 0.91, x 0.96 + 0.04 / 2.
    const ratio = ((0.85 / 0.91) * 0.96 + 0.02) / ((0.06 / 0.91) * 0.96 + 0.02);
    expect(odds(given(SAID, saw("mix", "bad"))) / odds(given(SAID))).toBeCloseTo(ratio, 9);
  });

  test("a second look at the same physics counts by half in logarithms", () => {
    const odds = (shares: Float64Array) => share(shares, "element") / share(shares, "valve");
    const alone = odds(given(saw("amps", "bad"))) / odds(given());
    const second = odds(given(saw("ohms", "open"), saw("amps", "bad"))) / odds(given(saw("ohms", "open")));
    expect(second).toBeCloseTo(Math.sqrt(alone), 9);
  });

  test("not sure and can't do that say nothing", () => {
    const silent = given(SAID, { kind: "not_sure", check: "mix" }, { kind: "cannot", check: "ohms" });
    expect(silent).toEqual(given(SAID));
  });

  test("the last word on a complaint and on a check stands", () => {
    expect(given({ ...SAID, isThere: false }, SAID)).toEqual(given(SAID));
    expect(given(saw("mix", "bad"), saw("mix", "fine"))).toEqual(given(saw("mix", "fine")));
  });

  test("what start-up measured counts for less than what was measured now", () => {
    const record = posteriorShares(model, { ...start, record: [{ kind: "outcome", check: "mix", outcome: "bad" }] });
    expect(share(record, "valve")).toBeGreaterThan(share(given(), "valve"));
    expect(share(record, "valve")).toBeLessThan(share(given(saw("mix", "bad")), "valve"));
  });
});

describe("a remedy that did not cure", () => {
  const found = [SAID, saw("mix", "bad"), saw("ohms", "open")];
  const [first] = rankCauses(model, given(...found));
  const tried = { kind: "tried", cause: first?.cause ?? "" } as const;

  test("puts its cause behind the others, without excluding it", () => {
    expect(first?.share).toBeGreaterThan(0.5);
    const left = share(given(...found, tried), tried.cause);
    expect(left).toBeLessThan(0.05);
    expect(left).toBeGreaterThan(1e-4);
  });

  test("leaves the second of two causes in front", () => {
    expect([first?.cause, rankCauses(model, given(...found, tried))[0]?.cause].sort()).toEqual(["element", "valve"]);
  });

  test("what is seen after it speaks for its cause again", () => {
    const itsOwn = tried.cause === "valve" ? saw("mix", "bad") : saw("ohms", "open");
    const again = given(...found, tried, itsOwn);
    expect(share(again, tried.cause)).toBeGreaterThan(3 * share(given(...found, tried), tried.cause));
  });

  test("a complaint that went away with it no longer asks for another cause", () => {
    const wet = { kind: "complaint", symptom: "wet_floor", isThere: true } as const;
    const both = [SAID, wet, saw("look", "bad")];
    const cured = { kind: "tried", cause: "tank" } as const;
    const dry = share(given(...both, { ...cured, remaining: ["tepid"] }), "element");
    expect(dry).toBeGreaterThan(share(given(...both, { ...cured, remaining: ["wet_floor"] }), "element"));
  });
});

test("undo restores the posterior exactly", () => {
  const one = addSteps(start, SAID, saw("mix", "bad"));
  const more = addSteps(one, { kind: "tried", cause: "valve" });
  expect(posteriorShares(model, undoStep(more))).toEqual(posteriorShares(model, one));
  expect(undoStep(start)).toBe(start);
});
