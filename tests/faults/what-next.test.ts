import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { addSteps, type FaultCase, openCase, type Step } from "../../src/faults/case.ts";
import { DOERS, type Doer } from "../../src/faults/knowledge.ts";
import { buildModel } from "../../src/faults/model.ts";
import { rateChecks } from "../../src/faults/next-check.ts";
import { posteriorShares } from "../../src/faults/posterior.ts";
import { whatNext } from "../../src/faults/what-next.ts";
import { FIXTURE } from "./fixture-knowledge.ts";

const model = buildModel(FIXTURE);
const ALL = { doers: DOERS };
const start = openCase(ALL, { age: "mid", unitKind: "integrated" });
const tepid: Step = { kind: "complaint", symptom: "tepid", isThere: true };
const sparks: Step = { kind: "complaint", symptom: "sparks", isThere: true };
const saw = (check: string, outcome: string): Step => ({ kind: "outcome", check, outcome });
const ids = (known: FaultCase) => rateChecks(model, known).map(({ check }) => check.id);

describe("danger first", () => {
  test("a stop line comes before everything else until it is acknowledged", () => {
    const said = addSteps(start, tepid, sparks);
    expect(whatNext(model, said)).toMatchObject({ kind: "stop", symptoms: [{ id: "sparks" }] });
    expect(whatNext(model, addSteps(said, saw("look", "bad"))).kind).toBe("stop");
    expect(whatNext(model, addSteps(said, { kind: "acknowledged", symptom: "sparks" })).kind).not.toBe("stop");
  });

  test("the same danger told again stops again; one that is denied does not", () => {
    const acknowledged = addSteps(start, sparks, { kind: "acknowledged", symptom: "sparks" });
    expect(whatNext(model, addSteps(acknowledged, sparks)).kind).toBe("stop");
    expect(whatNext(model, addSteps(start, { ...sparks, isThere: false })).kind).not.toBe("stop");
  });

  test("live and refrigerant checks are only for those whose record shows it", () => {
    const asCrew = { ...addSteps(start, tepid), asker: { doers: ["crew", "plumber"] as const } };
    const obstacles = new Map(rateChecks(model, asCrew).map(({ check, obstacle }) => [check.id, obstacle]));
    expect(obstacles.get("amps")).toEqual({ kind: "doer", doer: "qualified" });
    expect(obstacles.get("gauges")).toEqual({ kind: "doer", doer: "refrigerant" });
    expect(obstacles.get("mix")).toBeUndefined();
  });

  test("an electrician counts as qualified", () => {
    const electrician = { ...start, asker: { doers: ["electrician"] as const } };
    expect(rateChecks(model, electrician).find(({ check }) => check.id === "amps")?.obstacle).toBeUndefined();
  });
});

describe("the next check", () => {
  test("tells most a minute: a quick look comes before a better check that takes longer", () => {
    const wet = addSteps(start, { kind: "complaint", symptom: "wet_floor", isThere: true });
    expect(ids(wet)[0]).toBe("look");
  });

  test("its gain is the mean drop of entropy over what its outcomes would leave", () => {
    const known = addSteps(start, tepid);
    const entropy = (shares: Float64Array) => shares.reduce((sum, p) => (p > 0 ? sum - p * Math.log2(p) : sum), 0);
    const now = posteriorShares(model, known);
    const table = model.checks.get("mix");
    const left = ["fine", "bad"].map((outcome, index) => {
      const chance = now.reduce((sum, p, cause) => sum + p * (table?.likelihood[index]?.[cause] ?? 0), 0);
      return chance * entropy(posteriorShares(model, addSteps(known, saw("mix", outcome))));
    });
    const gain = rateChecks(model, known).find(({ check }) => check.id === "mix")?.gain_bits;
    expect(gain).toBeCloseTo(entropy(now) - left.reduce((sum, one) => sum + one, 0), 9);
  });

  test("a check of a group that has spoken tells less than it did", () => {
    const gain = (known: FaultCase) =>
      rateChecks(model, known).find(({ check }) => check.id === "amps")?.gain_bits ?? 0;
    expect(gain(addSteps(start, tepid, saw("ohms", "open")))).toBeLessThan(gain(addSteps(start, tepid)));
  });

  test("answered, not sure and can't are not asked again", () => {
    const known = addSteps(
      start,
      saw("look", "fine"),
      { kind: "not_sure", check: "mix" },
      { kind: "cannot", check: "ohms" },
    );
    expect(ids(known).sort()).toEqual(["amps", "gauges", "split"]);
  });

  test("what was out of the ordinary may be looked at again after a remedy, what was fine not", () => {
    const known = addSteps(start, saw("look", "fine"), saw("mix", "bad"), { kind: "tried", cause: "valve" });
    expect(ids(known)).toContain("mix");
    expect(ids(known)).not.toContain("look");
  });

  test("checks for another kind of unit are left out", () => {
    expect(ids({ ...start, unitKind: "resistance" })).not.toContain("split");
  });

  test("each outcome comes with its chance and what it would mean", () => {
    const next = whatNext(model, addSteps(start, { kind: "complaint", symptom: "wet_floor", isThere: true }));
    if (next.kind !== "check") throw new Error(`not a check: ${next.kind}`);
    expect(next.meanings.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    expect(next.meanings.find(({ outcome }) => outcome === "bad")?.after[0]?.cause).toBe("tank");
  });
});

describe("the end", () => {
  const open = addSteps(start, tepid, saw("ohms", "open"), saw("look", "fine"), saw("mix", "fine"));

  test("a cause that is found comes with who may repair it", () => {
    const next = whatNext(model, { ...open, asker: { doers: ["plumber"] } });
    expect(next).toMatchObject({
      kind: "verdict",
      verdict: { kind: "found", mayRepair: false, repairBy: ["qualified"] },
    });
    expect(whatNext(model, open)).toMatchObject({ verdict: { cause: { id: "element" }, mayRepair: true } });
  });

  const looked = ["look", "mix", "split"].map((check): Step => ({ kind: "not_sure", check }));

  test("when only somebody else can go on, it says who", () => {
    const crew = { ...start, asker: { doers: [] as Doer[] } };
    expect(whatNext(model, addSteps(crew, tepid, ...looked))).toMatchObject({
      verdict: { kind: "call_for", obstacle: { kind: "doer", doer: "qualified" } },
    });
  });

  test("when only a tool is missing, it says which", () => {
    const bare = { ...start, asker: { doers: ["qualified"] as const, tools: [] } };
    const known = addSteps(bare, tepid, ...looked, { kind: "cannot", check: "amps" });
    expect(whatNext(model, known)).toMatchObject({
      verdict: { kind: "call_for", obstacle: { kind: "tools", tools: ["multimeter"] }, check: "ohms" },
    });
  });

  test("when nothing useful is left, nothing is named that is not likely", () => {
    const cannot = FIXTURE.checks.map(({ id }): Step => ({ kind: "cannot", check: id }));
    expect(whatNext(model, addSteps(start, ...cannot))).toMatchObject({ verdict: { kind: "open", mayBeElse: false } });
  });
});

const anyStep: fc.Arbitrary<Step> = fc.oneof(
  fc.record({
    kind: fc.constant("complaint" as const),
    symptom: fc.constantFrom("tepid", "wet_floor", "sparks", "?"),
    isThere: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant("outcome" as const),
    check: fc.constantFrom(...model.checks.keys(), "?"),
    outcome: fc.constantFrom("fine", "bad", "open", "?"),
  }),
  fc.record({
    kind: fc.constant("reading" as const),
    check: fc.constantFrom("ohms", "look"),
    value: fc.double(),
    expected: fc.double(),
  }),
  fc.record({
    kind: fc.constantFrom("not_sure" as const, "cannot" as const, "prepared" as const),
    check: fc.constantFrom(...model.checks.keys()),
  }),
  fc.record({ kind: fc.constant("tried" as const), cause: fc.constantFrom(...model.ids, "?") }),
  fc.record({ kind: fc.constant("acknowledged" as const), symptom: fc.constantFrom("sparks", "tepid") }),
);
const anyCase = fc
  .record({
    steps: fc.array(anyStep, { maxLength: 14 }),
    doers: fc.subarray([...DOERS]),
    unitKind: fc.constantFrom("integrated" as const, "split" as const, "resistance" as const),
    site: fc.subarray(["winter", "hard_water", "?"]),
  })
  .map(({ steps, doers, unitKind, site }) => addSteps(openCase({ doers }, { unitKind, site }), ...steps));

describe("whatever is said, in whatever order", () => {
  test("nothing throws, and the shares stay shares of one", () => {
    fc.assert(
      fc.property(anyCase, (known) => {
        whatNext(model, known);
        const shares = posteriorShares(model, known);
        expect(shares.every((share) => share >= 0 && share <= 1)).toBe(true);
        expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 300 },
    );
  });

  test("a hazardous check is shown only after its precaution, and never to somebody who may not", () => {
    fc.assert(
      fc.property(anyCase, (known) => {
        const next = whatNext(model, known);
        if (next.kind !== "check" && next.kind !== "prepare") return;
        const { id, hazards, doer } = next.rated.check;
        const isPrepared = known.steps.some((step) => step.kind === "prepared" && step.check === id);
        if (next.kind === "check" && hazards.length > 0) expect(isPrepared).toBe(true);
        if (next.kind === "prepare") expect(next.hazards).toEqual(hazards);
        const { doers } = known.asker;
        if (hazards.includes("refrigerant")) expect(doers).toContain("refrigerant");
        if (hazards.includes("live") || doer === "qualified")
          expect(doers.includes("qualified") || doers.includes("electrician")).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test("one soft observation excludes no cause", () => {
    fc.assert(
      fc.property(anyCase, anyStep, (known, step) => {
        if (step.kind === "tried") return;
        const before = posteriorShares(model, known);
        const later = posteriorShares(model, addSteps(known, step));
        // A step that takes back an earlier one may move the shares twice as far.
        for (const [cause, share] of before.entries()) expect(later[cause] ?? 0).toBeGreaterThanOrEqual(share / 2000);
      }),
      { numRuns: 300 },
    );
  });
});
