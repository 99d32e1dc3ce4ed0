import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/declaration/answer.ts";
import { planAway } from "../../src/household/away-plan.ts";
import { planUnit } from "../../src/household/unit-case.ts";
import { STUDY_WATER } from "../../src/physics/tank/tank-model.ts";
import { away } from "../../src/topics/away.ts";
import { toBase } from "../../src/units/convert.ts";
import { codesOf, resultOf } from "../support/ask-topic.ts";
import { answerWithSeeds, askWithSeeds, refusalWithSeeds, seedBooks, type Told } from "../support/ask-with-seeds.ts";

const days = (count: number) => toBase(count, "day");
const ask = (change: Told) => answerWithSeeds(away, { model: "hollin-80", absence: days(60), month: "1", ...change });
const numberOf = (answer: Answer, id: string) => resultOf(answer, id).quantity.value;
const idsOf = (answer: Answer) => answer.results.map(({ id }) => id);
const long = ask({});

function plan(model: string, absence_s: number, setpoint_C = toBase(125, "F")) {
  const none = { place: undefined, mode: undefined, supply_V: undefined, rate: undefined };
  const unit = planUnit({ model, setpoint_C, ...none }, seedBooks);
  if (!unit.ok) throw new Error("refused");
  return { known: unit.known, away: planAway(unit.known, absence_s, 1) };
}

describe("against the exact cooling curve of a tank of one temperature", () => {
  // T = T_air + (T_0 - T_air) exp(-UA t / C): first law, no source running.
  test.each([5, 10, 20])("a plain tank that is off for %f days cools to within 0.6 K", (count) => {
    const { known, away: found } = plan("brackwell-50", days(count));
    const { tank } = known.model.heater;
    const capacity_J_K = tank.volume_L * STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K;
    const off_s = days(count) - (found.hold?.lead_s ?? 0);
    const exact_C =
      found.air_C + (known.setpoint_C - found.air_C) * Math.exp((-tank.heatLoss_W_K * off_s) / capacity_J_K);
    expect(Math.abs((found.hold?.coolest_C ?? Number.NaN) - exact_C)).toBeLessThan(0.6);
  });
  test("the time it spends from 45 to 25 °C is the curve's, to two hours", () => {
    const { known, away: found } = plan("brackwell-50", days(40));
    const { tank } = known.model.heater;
    const capacity_J_K = tank.volume_L * STUDY_WATER.density_kg_L * STUDY_WATER.specificHeat_J_kg_K;
    const falling_s = (capacity_J_K / tank.heatLoss_W_K) * Math.log((45 - found.air_C) / (25 - found.air_C));
    const slack_s = 2 * 3600;
    expect(found.hold?.growth_s).toBeGreaterThan(falling_s - slack_s);
    // Reheating passes the range once more, within the reheating time.
    expect(found.hold?.growth_s).toBeLessThan(falling_s + slack_s + (found.hold?.lead_s ?? 0));
  });
});

describe("reheating", () => {
  test("of a plain tank takes at least the heat over the element's power", () => {
    const { known, away: found } = plan("brackwell-50", days(40));
    const { tank, elements } = known.model.heater;
    const heat_J =
      tank.volume_L *
      STUDY_WATER.density_kg_L *
      STUDY_WATER.specificHeat_J_kg_K *
      (known.setpoint_C - (found.hold?.coolest_C ?? 0));
    const least_s = heat_J / (elements[0]?.rated_W ?? 1);
    expect(found.hold?.lead_s).toBeGreaterThan(0.9 * least_s);
    expect(found.hold?.lead_s).toBeLessThan(least_s + 3600);
  });
  test("takes longer the longer the tank has cooled, and is told in half hours", () => {
    const leads = [3, 6, 12, 24].map((count) => plan("hollin-80", days(count)).away.hold?.lead_s ?? Number.NaN);
    expect(leads).toEqual([...leads].sort((a, b) => a - b));
    expect(leads.map((lead_s) => lead_s % 1800)).toEqual([0, 0, 0, 0]);
    expect(new Set(leads).size).toBeGreaterThan(1);
  });
});

describe("saving", () => {
  test("grows with the absence and is the difference of the two ways", () => {
    expect(numberOf(ask({ absence: days(120) }), "saving")).toBeGreaterThan(numberOf(long, "saving"));
    const saved = numberOf(long, "energy_left_alone") - numberOf(long, "energy_away");
    expect(numberOf(long, "energy_saved")).toBeCloseTo(saved, 9);
    expect(numberOf(long, "saving")).toBeCloseTo(0.162 * saved, 6);
  });
  test("of a plain tank for 60 days is larger than a heat pump's", () => {
    expect(numberOf(ask({ model: "brackwell-80" }), "saving")).toBeGreaterThan(numberOf(long, "saving"));
  });
});

describe("headline", () => {
  const cases = [
    ["60 days", { absence: days(60) }, "caution", "hold_cool"],
    ["10 days, which save cents", { absence: days(10) }, "info", "hardly_pays"],
    ["one day, which saves nothing", { absence: days(1) }, "info", "leave_it"],
    ["60 days with a plain tank", { model: "brackwell-50" }, "caution", "switch_off"],
  ] as const;
  test.each(cases)("for %s", (_, change, verdict, code) => {
    const answer = ask(change);
    expect([answer.verdict, answer.headline.code]).toEqual([verdict, code]);
  });
});

describe("coming back", () => {
  const expectBefore = (answer: Answer, first: string, second: string) => {
    const codes = codesOf(answer);
    expect(codes, first).toContain(first);
    expect(codes.indexOf(first)).toBeLessThan(codes.indexOf(second));
  };
  test("says each danger before its step", () => {
    expectBefore(long, "hydrogen_first", "heat_through");
    expectBefore(long, "scald_first", "heat_through");
    expectBefore(long, "heat_through", "flush_outlets");
    expectBefore(ask({ model: "brackwell-50" }), "breaker_locked", "hot_on_arrival");
  });
  test("warns of hydrogen from 14 days on, not at 13", () => {
    expect(codesOf(ask({ absence: days(14) }))).toContain("hydrogen_first");
    expect(codesOf(ask({ absence: days(13) }))).not.toContain("hydrogen_first");
  });
  test("always asks to flush, and leaves the last word to the health authority", () => {
    for (const absence of [days(1), days(10), days(60)])
      expect(codesOf(ask({ absence }))).toEqual(expect.arrayContaining(["flush_outlets", "people_at_risk"]));
  });
  test("does not heat through where the tank is better left alone", () => {
    expect(codesOf(ask({ absence: days(10) }))).not.toContain("heat_through");
  });
  test("warns of frozen pipes in a room at 4 °C, not at 5", () => {
    const [place] = seedBooks.places;
    if (place === undefined) throw new Error("no place");
    const at = (air_C: number) => ({
      ...seedBooks,
      places: [{ ...place, heaterRoom_C: place.heaterRoom_C.map(() => air_C) }],
    });
    const facts = { model: "hollin-80", absence: days(60), month: "1" };
    expect(codesOf(answerWithSeeds(away, facts, at(4)))).toContain("frost");
    expect(codesOf(answerWithSeeds(away, facts, at(5)))).not.toContain("frost");
  });
});

test("a plain tank has no temperature to hold", () => {
  expect(idsOf(ask({ model: "brackwell-50" }))).not.toContain("hold_temperature");
  expect(numberOf(long, "hold_temperature")).toBe(10);
});

test("the month nobody told is the one with the coldest water, shown as assumed", () => {
  const { facts } = askWithSeeds(away, { model: "hollin-80", absence: days(30) });
  expect([facts["month"]?.value, facts["month"]?.from]).toEqual(["2", "assumed"]);
});

describe("refuses", () => {
  const cases = [
    ["an unknown model", { model: "hollin" }, "model", "unknown_model"],
    ["150 °F, over the unit's 143", { setpoint: toBase(150, "F") }, "setpoint", "setpoint_outside_unit"],
    ["a mode that the unit lacks", { model: "tarnley-40", mode: "both_together" }, "mode", "mode_only_heat_pump"],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalWithSeeds(away, { model: "hollin-80", absence: days(9), ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  test.each([Number.NaN, days(0.5), days(366)])("an absence of %f s", (absence) => {
    expect(refusalWithSeeds(away, { model: "hollin-80", absence }).fact).toBe("absence");
  });
});

test("asks for the model and the time away", () => {
  expect(askWithSeeds(away, {}).result).toEqual({ kind: "needs-facts", missing: ["model", "absence"] });
});
