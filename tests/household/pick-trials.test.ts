import { describe, expect, test } from "vitest";
import { type Candidate, type PickCase, type PickFacts, planPick } from "../../src/household/pick-case.ts";
import { bestSoFar, rankFinalists } from "../../src/household/pick-search.ts";
import {
  drawFullSample,
  drawLookSample,
  type Finalist,
  lookAtModel,
  type ModelTrials,
  tryModel,
} from "../../src/household/pick-trials.ts";
import { toBase } from "../../src/units/convert.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const F = (value: number) => toBase(value, "F");
const FACTS: PickFacts = {
  people: 2,
  bedrooms: undefined,
  bathrooms: 2,
  wanted_C: F(105),
  place: undefined,
  month: undefined,
  rate: undefined,
  mode: "heat_pump_first",
  setpoint_C: undefined,
  hottest_C: undefined,
  mixing_valve: undefined,
  limit: 0.5,
  days: 60,
  door_m: undefined,
  height_m: undefined,
  floor_kg: undefined,
  room_m3: undefined,
  supply_V: undefined,
  breaker_A: undefined,
  spaces: undefined,
  bedroom_m: undefined,
  sound_dBA: undefined,
};

function plan(told: Partial<PickFacts>): PickCase {
  const planned = planPick({ ...FACTS, ...told }, seedBooks);
  if (!planned.ok) throw new Error(`refused: ${planned.refused.reason?.code}`);
  return planned.known;
}
function candidateOf({ candidates }: PickCase, id: string): Candidate {
  const found = candidates.find(({ model }) => model.id === id);
  if (found === undefined) throw new Error(`${id} is no candidate`);
  return found;
}
/** Tries one way to run a model by itself, so that it surely gets its year. */
function tryAlone(told: Partial<PickFacts>, id: string, setpoint_C: number): ModelTrials {
  const known = plan({ ...told, setpoint_C, limit: 0.5 });
  const candidate = candidateOf(known, id);
  return tryModel(known, drawFullSample(known), candidate, lookAtModel(known, drawLookSample(known), candidate));
}

describe("ways to run a model", () => {
  const setpointsOf = (told: Partial<PickFacts>) =>
    candidateOf(plan(told), "hollin-50").settings.map(({ setpoint_C }) => Math.round((setpoint_C - F(0)) * 1.8));
  test("are each of its modes at 120, 130 and 140 °F", () => {
    expect(setpointsOf({})).toEqual([120, 130, 140]);
    expect(candidateOf(plan({ mode: undefined }), "hollin-50").settings).toHaveLength(12);
    expect(candidateOf(plan({ mode: undefined }), "tarnley-50").settings).toHaveLength(3);
  });
  test("stay under the hottest that the tank may be kept, or are that alone", () => {
    expect(setpointsOf({ hottest_C: F(130) })).toEqual([120, 130]);
    expect(setpointsOf({ hottest_C: F(115) })).toEqual([115]);
    expect(setpointsOf({ setpoint_C: F(125) })).toEqual([125]);
  });
  test("a model that cannot be set so is refused with its own range", () => {
    const { refused } = plan({ setpoint_C: F(150) });
    const [reason] = refused.find(({ model }) => model.id === "hollin-50")?.others ?? [];
    expect(reason?.code).toBe("refused_setpoint");
  });
});

describe("a first look against the whole", () => {
  const known = plan({});
  const candidate = candidateOf(known, "hollin-50");
  const { looks } = lookAtModel(known, drawLookSample(known), candidate);
  const trials = looks.map(({ setpoint_C }) => tryAlone({}, "hollin-50", setpoint_C));

  test("23 days say which of two ways is dearer to 4 %, and the year to a tenth", () => {
    const ratios = looks.map(({ cost_usd }, index) => (cost_usd ?? Number.NaN) / (trials[index]?.best?.cost_usd ?? 0));
    expect(Math.max(...ratios) / Math.min(...ratios) - 1).toBeLessThan(0.04);
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
  });
  test("the search finds the way that is cheapest when every one gets its full sample and year", () => {
    for (const limit of [0.5, 0.1, 0.03]) {
      const limited = plan({ limit });
      const found = tryModel(limited, drawFullSample(limited), candidate, { model: "hollin-50", looks });
      const all = trials.flatMap(({ best }) => (best === undefined || best.share > limit ? [] : [best]));
      const cheapest = all.reduce<Finalist | undefined>((a, b) => (a && a.cost_usd <= b.cost_usd ? a : b), undefined);
      const sure = all.filter(({ high }) => high <= limit).sort((a, b) => a.cost_usd - b.cost_usd)[0];
      const isNear = sure !== undefined && cheapest !== undefined && sure.cost_usd <= 1.1 * cheapest.cost_usd;
      const wanted = isNear ? sure : cheapest;
      expect(found.best?.setpoint_C, String(limit)).toBe(wanted?.setpoint_C);
      expect(found.best?.cost_usd, String(limit)).toBe(wanted?.cost_usd);
    }
  });
  test("what a few days show to run cold is not priced, and is named with its full sample", () => {
    const crowd = plan({ people: 8, mode: "heat_pump_only", setpoint_C: F(120), limit: 0.02 });
    const small = candidateOf(crowd, "tarnley-40");
    const seen = lookAtModel(crowd, drawLookSample(crowd), small);
    expect(seen.looks.map(({ cost_usd }) => cost_usd)).toEqual([undefined]);
    const { best, warmest } = tryModel(crowd, drawFullSample(crowd), small, seen);
    expect(best).toBeUndefined();
    expect(warmest.days).toBe(60);
    expect(warmest.share).toBeGreaterThan(0.5);
  });
});

test("what leans to cold is given up after 80 of 200 days, and what serves gets them all", () => {
  const known = plan({ people: 3, setpoint_C: F(120), limit: 0.05, days: 200 });
  const [small, large] = ["hollin-40", "fenmoor-120"].map((id) => candidateOf(known, id));
  if (small === undefined || large === undefined) throw new Error("no such models");
  const sample = drawFullSample(known);
  const lean = { mode: "heat_pump_first", setpoint_C: F(120), coldDays: 4, days: 30, cost_usd: 300 } as const;
  const given = tryModel(known, sample, small, { model: "hollin-40", looks: [lean] });
  expect(given.best).toBeUndefined();
  expect(given.warmest.days).toBe(80);
  expect(given.warmest.low).toBeGreaterThan(0.05);
  const kept = tryModel(known, sample, large, { model: "fenmoor-120", looks: [lean] });
  expect(kept.best?.days).toBe(200);
});

describe("ranking", () => {
  const finalist = (model: string, cost_usd: number): Finalist => ({
    model,
    cost_usd,
    mode: "heat_pump_first",
    setpoint_C: 50,
    coldDays: 0,
    days: 60,
    share: 0,
    error: 0.01,
    low: 0,
    high: 0.06,
    isSure: false,
    energy_kWh: 1000,
    cop: 3,
  });
  const trialOf = (one: Finalist): ModelTrials => ({ model: one.model, best: one, warmest: one });
  const look = { mode: "heat_pump_only", setpoint_C: 49, coldDays: 0, days: 30 } as const;

  test("is by cost, and leaves out what does not serve", () => {
    const cold: ModelTrials = { model: "d", best: undefined, warmest: finalist("d", 0) };
    const ranked = rankFinalists([
      trialOf(finalist("a", 3)),
      trialOf(finalist("b", 1)),
      cold,
      trialOf(finalist("c", 2)),
    ]);
    expect(ranked.map(({ model }) => model)).toEqual(["b", "c", "a"]);
  });
  test("the best so far is a first look until a year is done", () => {
    const looks = {
      kind: "looks",
      models: [
        { model: "a", looks: [{ ...look, cost_usd: undefined }] },
        {
          model: "b",
          looks: [
            { ...look, cost_usd: 90 },
            { ...look, cost_usd: 80 },
          ],
        },
      ],
    } as const;
    expect(bestSoFar([[looks]])).toMatchObject({ model: "b", cost_usd: 80 });
    const trials = { kind: "trials", models: [trialOf(finalist("c", 100))] } as const;
    expect(bestSoFar([[looks], [trials]])).toMatchObject({ model: "c", cost_usd: 100 });
    expect(
      bestSoFar([[{ kind: "looks", models: [{ model: "a", looks: [{ ...look, cost_usd: undefined }] }] }]]),
    ).toBeUndefined();
    expect(bestSoFar([[]])).toBeUndefined();
  });
});
