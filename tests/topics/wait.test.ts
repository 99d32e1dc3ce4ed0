import { describe, expect, test } from "vitest";
import { wait } from "../../src/topics/wait.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { CONTENTS, WAITS } from "../reference/pipe.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";
import { siteOf } from "../support/site-of.ts";

const CASE = { pipe: "copper_l", size: "3/4", length: toBase(50, "ft"), flow: toBase(2, "gpm") };
const ids = (facts: Readonly<Record<string, string | number | boolean>>) =>
  answerOf(wait, facts).results.map(({ id }) => id);

test.each(WAITS)("$length_ft ft of $kind $size at $flow_gpm gpm wait $wait_s s within 0.5 %", (row) => {
  const facts = {
    pipe: row.kind,
    size: row.size,
    length: toBase(row.length_ft, "ft"),
    flow: toBase(row.flow_gpm, "gpm"),
  };
  const answer = answerOf(wait, facts);
  const wait_s = resultOf(answer, "wait_time").quantity.value;
  expect(Math.abs(wait_s / row.wait_s - 1)).toBeLessThan(0.005);
  expect(resultOf(answer, "wait_time_likely").quantity.value / wait_s).toBeCloseTo(1.2, 9);
});

test.each(CONTENTS)("10 ft of $kind $size hold ten times $gal_ft gal within 1 %", ({ kind, size, gal_ft }) => {
  const answer = answerOf(wait, { ...CASE, pipe: kind, size, length: toBase(10, "ft") });
  const contents_gal = fromBase(resultOf(answer, "pipe_volume").quantity.value, "gal");
  expect(Math.abs(contents_gal / (10 * gal_ft) - 1)).toBeLessThan(0.01);
});

test("what is wasted runs from the pipe's contents to 1.2 times that", () => {
  const wasted = resultOf(answerOf(wait, CASE), "volume_wasted");
  expect((wasted.upTo ?? 0) / wasted.quantity.value).toBeCloseTo(1.2, 9);
});

test("the wait is called the shortest, and friction straight pipe only", () => {
  expect(codesOf(answerOf(wait, CASE)).slice(0, 2)).toEqual(["plug_flow_is_least", "straight_pipe_only"]);
});

describe("cool-down", () => {
  const cooled_s = (change: object) => resultOf(answerOf(wait, { ...CASE, ...change }), "cooldown_time").quantity.value;
  test("of 3/4 copper L from 120 to 105 °F in 70 °F air is a quarter of an hour bare, over half an hour in foam", () => {
    expect(cooled_s({}) / 60).toBeGreaterThan(12);
    expect(cooled_s({}) / 60).toBeLessThan(18);
    expect(cooled_s({ insulation: "half" }) / cooled_s({})).toBeGreaterThan(2);
    expect(cooled_s({ insulation: "one" })).toBeGreaterThan(cooled_s({ insulation: "three_quarter" }));
  });
  test("is sooner in a cold crawl space and in a thin pipe", () => {
    expect(cooled_s({ air: toBase(40, "F") })).toBeLessThan(cooled_s({}));
    expect(cooled_s({ size: "1/2" })).toBeLessThan(cooled_s({}));
  });
  const cases = [
    ["cools_in", {}],
    ["never_useful", { setpoint: toBase(100, "F") }],
    ["stays_useful", { air: toBase(110, "F") }],
    ["bare_pipe", {}],
    ["insulation_thin", { insulation: "half" }],
  ] as const;
  test.each(cases)("says %s", (code, change) => {
    expect(codesOf(answerOf(wait, { ...CASE, ...change }))).toContain(code);
  });
  test("has no number where the water was never warm enough, and no word on 1/2 in pipe or thick foam", () => {
    expect(ids({ ...CASE, setpoint: toBase(100, "F") })).not.toContain("cooldown_time");
    expect(codesOf(answerOf(wait, { ...CASE, size: "1/2" }))).not.toContain("bare_pipe");
    expect(codesOf(answerOf(wait, { ...CASE, insulation: "one" }))).not.toContain("insulation_thin");
  });
  test("a bare pipe and 70 °F air are shown as assumed", () => {
    const { facts } = askTopic(wait, CASE);
    expect([facts["insulation"]?.value, facts["air"]?.from]).toEqual(["none", "assumed"]);
  });
});

describe("circulation loop", () => {
  const LOOP = { ...CASE, loop: true, insulation: "half" };
  const number = (id: string, change: object = {}) =>
    resultOf(answerOf(wait, { ...LOOP, ...change }), id).quantity.value;
  test("is taken there and back, 10 °F colder at the end, all day, at a COP of 3 and the books' price", () => {
    const { facts } = askTopic(wait, LOOP);
    const taken = ["loop_length", "loop_fall", "loop_hours", "cop"].map((id) => facts[id]?.value);
    expect(taken).toEqual([toBase(100, "ft"), toBase(10, "F_diff"), 86_400, 3]);
    expect(facts["price"]?.value).toBeCloseTo(0.162, 9);
  });
  test("costs heat, power and money that follow from each other", () => {
    expect(number("loop_heat_per_day")).toBeCloseTo((number("loop_heat_loss") * 24) / 1000, 9);
    expect(number("loop_electricity_per_day", { cop: 2 })).toBeCloseTo(number("loop_heat_per_day") / 2, 9);
    const cost = number("loop_electricity_per_day") * 365 * 0.2;
    expect(number("loop_cost_per_year", { price: 0.2 })).toBeCloseTo(cost, 6);
  });
  test("wait behind it is the branch's alone", () => {
    const branch = { branch_size: "1/2", branch_length: toBase(10, "ft") };
    expect(Math.abs(fromBase(number("pipe_volume", branch), "gal") - 10 * 0.01212)).toBeLessThan(0.002);
    expect(codesOf(answerOf(wait, { ...LOOP, ...branch }))).toContain("loop_feeds_branch");
    expect(codesOf(answerOf(wait, LOOP))).toContain("loop_without_branch");
  });
  test("that moves the tank many times a day is said to stir it", () => {
    const small = { tank: toBase(30, "gal"), loop_fall: toBase(4, "F_diff") };
    expect(number("loop_turnovers", small)).toBeGreaterThan(4);
    expect(codesOf(answerOf(wait, { ...LOOP, ...small }))).toContain("loop_stirs");
    expect(codesOf(answerOf(wait, LOOP))).not.toContain("loop_stirs");
    expect(ids(LOOP)).not.toContain("loop_turnovers");
  });
  test("is not counted unless there is one", () => {
    expect(ids(CASE)).not.toContain("loop_heat_loss");
    expect(codesOf(answerOf(wait, CASE))).not.toContain("loop_costs");
  });
  test("tells the cautions of itself, of the insulation, and of its return, as far as it was told", () => {
    expect(siteOf(wait, CASE)).not.toHaveProperty("hasCirculationLoop");
    expect(siteOf(wait, CASE)).not.toHaveProperty("isHotPipeInsulated");
    const told = siteOf(wait, { ...LOOP, loop_fall: toBase(10, "F_diff") });
    expect(told).toMatchObject({ hasCirculationLoop: true, isHotPipeInsulated: true });
    expect(told).not.toHaveProperty("loopControl");
    expect(siteOf(wait, { ...LOOP, loop_hours: 86_400 }).loopControl).toBe("always_on");
    expect(told.loopReturn_C).toBeCloseTo(toBase(110, "F"), 9);
  });
});

test("twice the length waits twice as long, twice the flow half", () => {
  const wait_s = (change: object) => resultOf(answerOf(wait, { ...CASE, ...change }), "wait_time").quantity.value;
  expect(wait_s({ length: 2 * CASE.length }) / wait_s({})).toBeCloseTo(2, 9);
  expect(wait_s({ flow: 2 * CASE.flow }) / wait_s({})).toBeCloseTo(0.5, 9);
});

test("a cold line has no wait, but velocity and friction", () => {
  expect(ids({ ...CASE, water: "cold" })).toEqual(["pipe_volume", "velocity", "pressure_drop"]);
});

describe("velocity", () => {
  const cases = [
    ["7 gpm in 3/4 L, 4.6 ft/s", { flow: toBase(7, "gpm") }, "info"],
    ["8 gpm in 3/4 L, 5.3 ft/s", { flow: toBase(8, "gpm") }, "caution"],
    ["5 gpm of 160 °F, 3.3 ft/s", { flow: toBase(5, "gpm"), setpoint: toBase(160, "F") }, "caution"],
    ["8 gpm cold", { flow: toBase(8, "gpm"), water: "cold" }, "info"],
    ["8 gpm in 3/4 CPVC, 6.4 ft/s", { flow: toBase(8, "gpm"), pipe: "cpvc" }, "info"],
  ] as const;
  test.each(cases)("%s", (_, change, verdict) => expect(answerOf(wait, { ...CASE, ...change }).verdict).toBe(verdict));
});

describe("next size down", () => {
  const codes = (change: object) => (answerOf(wait, { ...CASE, ...change }).next ?? []).map(({ say }) => say.code);
  test("is offered at 2 gpm and not at 6, where 1/2 would run at 8 ft/s", () => {
    expect(codes({})).toEqual(["step_smaller", "step_insulate"]);
    expect(codes({ flow: toBase(6, "gpm") })).toEqual(["step_insulate"]);
  });
  test("is not offered with a branch, nor below the smallest", () => {
    expect(codes({ branch_size: "1/2", branch_length: 3 })).toEqual(["step_insulate"]);
    expect(codes({ size: "3/8", insulation: "one" })).toEqual([]);
  });
});

test("a branch adds its water: 10 ft of 1/2 L to 40 ft of 3/4 L", () => {
  const facts = { ...CASE, length: toBase(40, "ft"), branch_size: "1/2", branch_length: toBase(10, "ft") };
  const contents_gal = fromBase(resultOf(answerOf(wait, facts), "pipe_volume").quantity.value, "gal");
  expect(Math.abs(contents_gal - (40 * 0.02514 + 10 * 0.01212))).toBeLessThan(0.005);
});

describe("refuses, with a worded reason,", () => {
  const cases = [
    ["CPVC in 3/8", { pipe: "cpvc", size: "3/8" }, "size", "size_not_made"],
    [
      "a branch of copper M in 5/8",
      { pipe: "copper_m", branch_size: "5/8", branch_length: 3 },
      "branch_size",
      "size_not_made",
    ],
    ["a branch without size", { branch_length: 3 }, "branch_length", "branch_incomplete"],
    ["a branch without length", { branch_size: "1/2" }, "branch_size", "branch_incomplete"],
    [
      "a loop that comes back colder than the air",
      { loop: true, loop_fall: toBase(40, "F_diff"), air: toBase(90, "F") },
      "loop_fall",
      "loop_too_cold",
    ],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalOf(wait, { ...CASE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
});

describe("refuses outside its range", () => {
  const outside = [
    ["length", Number.NaN],
    ["length", 0],
    ["flow", 0],
    ["flow", toBase(61, "gpm")],
    ["setpoint", Number.NaN],
    ["cop", 0],
    ["loop_hours", 90_000],
  ] as const;
  test.each(outside)("%s of %f", (fact, value) => expect(refusalOf(wait, { ...CASE, [fact]: value }).fact).toBe(fact));
});

test("asks for pipe, size and length, and assumes 2 gpm of 120 °F water", () => {
  expect(askTopic(wait, {}).result).toEqual({ kind: "needs-facts", missing: ["pipe", "size", "length"] });
  const { facts } = askTopic(wait, { pipe: "pex", size: "1/2", length: 10 });
  expect([facts["flow"]?.value, facts["setpoint"]?.value]).toEqual([toBase(2, "gpm"), toBase(120, "F")]);
});
