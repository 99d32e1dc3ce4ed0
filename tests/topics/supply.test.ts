import { describe, expect, test } from "vitest";
import { supply } from "../../src/topics/supply.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";
import { siteOf } from "../support/site-of.ts";

const psi = (value: number) => toBase(value, "psi");
const ft = (value: number) => toBase(value, "ft");
/** 10 fixture units by the IPC, all rows read: two bath groups, kitchen sink, dishwasher. */
const CASE = {
  bath_groups: 2,
  pipe: "copper_l",
  length: ft(80),
  line_pressure: psi(60),
  rise: ft(20),
  clothes_washers: 0,
  hose_bibbs: 0,
};
const number = (id: string, change: object = {}) =>
  resultOf(answerOf(supply, { ...CASE, ...change }), id).quantity.value;
const nameOf = (id: string, change: object = {}) => {
  const found = answerOf(supply, { ...CASE, ...change }).results.find((result) => result.id === id);
  return found && "name" in found ? found.name : undefined;
};

describe("two baths, sink and dishwasher", () => {
  test("are 10 units, 14.6 gpm by the IPC and less by the other curve, each with its table named", () => {
    expect(number("fixture_units")).toBeCloseTo(10, 9);
    expect(fromBase(number("demand_flow"), "gpm")).toBeCloseTo(14.6, 9);
    expect(number("demand_flow_other")).toBeLessThan(number("demand_flow"));
    const [curves] = answerOf(supply, CASE).findings;
    expect(curves).toMatchObject({
      code: "curves",
      data: { followed: "IPC Table E103.3(3)", other: "Hunter, UPC Chart A-2" },
    });
  });
  test("take a 1 in main in copper L and 3/4 or more for the hot line, both under their velocity limits", () => {
    expect(nameOf("pipe_size")).toBe("1 in");
    expect(number("velocity")).toBeLessThanOrEqual(number("velocity_limit"));
    expect(number("velocity_hot")).toBeLessThanOrEqual(number("velocity_limit_hot"));
  });
  test("leave 60 psi less height, meter and friction", () => {
    const left =
      number("pressure_at_start") - number("elevation_loss") - number("other_losses") - number("friction_loss");
    expect(number("pressure_left")).toBeCloseTo(left, 9);
    expect(Math.abs(fromBase(number("elevation_loss"), "psi") - 8.66)).toBeLessThan(0.02);
  });
  test("with 140 °F and hotter water in copper the hot line is held to 3 ft/s", () => {
    expect(fromBase(number("velocity_limit_hot", { setpoint: toBase(150, "F") }), "ft_s")).toBeCloseTo(3, 9);
  });
});

describe("verdict and headline", () => {
  const cases = [
    ["without a size", {}, "info", "serves"],
    ["for 1 in", { size: "1" }, "good", "size_serves"],
    ["for 3/4 in, too fast", { size: "3/4", length: ft(20), rise: 0 }, "no", "size_too_fast"],
    ["for 3/4 in, too little left", { size: "3/4", length: ft(200) }, "no", "size_too_low"],
    ["for 1 in on a weak street", { size: "1", line_pressure: psi(30) }, "no", "size_fails"],
    ["on a weak street", { line_pressure: psi(30) }, "no", "none_serves"],
  ] as const;
  test.each(cases)("%s", (_, change, verdict, code) => {
    const answer = answerOf(supply, { ...CASE, ...change });
    expect([answer.verdict, answer.headline.code]).toEqual([verdict, code]);
  });
  test("for 1/2 in that serves a tiny house still say that a service is larger", () => {
    const tiny = { bath_groups: undefined, toilets: 0, lavatories: 1, kitchen_sinks: 0, dishwashers: 0, size: "1/2" };
    const { bath_groups: _, ...rest } = CASE;
    const answer = answerOf(supply, { ...rest, ...withoutUndefined(tiny), length: ft(10), rise: 0 });
    expect(answer.verdict).toBe("caution");
    expect(codesOf(answer)).toContain("below_service");
  });
});

function withoutUndefined(facts: Readonly<Record<string, string | number | undefined>>) {
  return Object.fromEntries(
    Object.entries(facts).flatMap(([id, value]): [string, string | number][] =>
      value === undefined ? [] : [[id, value]],
    ),
  );
}

describe("findings", () => {
  const cases = [
    ["hose_is_steady", { hose_bibbs: 2 }],
    ["from_regulator", { regulator: psi(50) }],
    ["regulator_wanted", { line_pressure: psi(90) }],
    ["cannot_flow", { size: "3/4", length: ft(400) }],
  ] as const;
  test.each(cases)("say %s where it applies and not for plain facts", (code, change) => {
    expect(codesOf(answerOf(supply, { ...CASE, ...change }))).toContain(code);
    expect(codesOf(answerOf(supply, CASE))).not.toContain(code);
  });
  test("ask for the flowing pressure and the losses until they are told", () => {
    expect(codesOf(answerOf(supply, CASE))).toEqual(expect.arrayContaining(["from_static", "losses_not_told"]));
    const told = codesOf(answerOf(supply, { ...CASE, residual: psi(50), softener_loss: psi(10) }));
    expect(told).not.toContain("from_static");
    expect(told).not.toContain("losses_not_told");
  });
  test("leave it to the local code, always", () => {
    for (const change of [{}, { size: "3/4" }, { line_pressure: psi(30) }, { code: "upc" }])
      expect(codesOf(answerOf(supply, { ...CASE, ...change }))).toContain("authority_decides");
  });
});

describe("what is followed", () => {
  test("is the UPC's table and curve where asked for: 18 units", () => {
    expect(number("fixture_units", { code: "upc" })).toBeCloseTo(18, 9);
    expect(number("demand_flow", { code: "upc" })).toBeCloseTo(number("demand_flow_other"), 12);
  });
  test("is the column for flush valves where toilets have them, but not on the hot line", () => {
    const valves = { toilets: 3, flush: "valve" };
    expect(number("demand_flow", valves)).toBeGreaterThan(1.5 * number("demand_flow", { toilets: 3 }));
    expect(number("demand_flow_hot", { toilets: 3, flush: "valve", bath_groups: 0 })).toBe(
      number("demand_flow_hot", { toilets: 3, bath_groups: 0 }),
    );
  });
  test("every source of a remembered row says so", () => {
    const sources = answerOf(supply, { ...CASE, clothes_washers: 1 }).results.flatMap(({ how }) => how.sources);
    expect(sources.filter(({ section }) => section === "Table E103.3(2)").map(({ basis }) => basis)).toContain(
      "from_memory",
    );
  });
});

test("part of the pipe as hot line loses less there: it carries the hot demand alone", () => {
  expect(number("friction_loss", { size: "1", hot_length: ft(40) })).not.toBe(number("friction_loss", { size: "1" }));
  const rows = answerOf(supply, { ...CASE, hot_length: ft(40) }).tables?.find(({ id }) => id === "pressure")?.rows;
  expect(rows?.map(([cell]) => (typeof cell === "object" && "code" in cell ? cell.code : cell))).toEqual([
    "row_static",
    "row_rise",
    "row_meter",
    "row_main",
    "row_hot",
    "row_left",
    "row_needed",
  ]);
});

test("the table of sizes goes from 3/4 in up, slower and with more left at each", () => {
  const rows = answerOf(supply, CASE).tables?.find(({ id }) => id === "sizes")?.rows ?? [];
  expect(rows.map(([name]) => name)).toEqual(["3/4 in", "1 in", "1-1/4 in", "1-1/2 in", "2 in"]);
  const left = rows.map((row) => (typeof row[3] === "object" && "kind" in row[3] ? row[3].value : Number.NaN));
  expect(left).toEqual([...left].sort((a, b) => a - b));
});

describe("refuses, with a worded reason,", () => {
  const cases = [
    ["nothing to serve", { bath_groups: 0, kitchen_sinks: 0, dishwashers: 0 }, "bath_groups", "no_fixtures"],
    ["more units than the tables hold", { bath_groups: 40, toilets: 40 }, "bath_groups", "beyond_curve"],
    ["more hot line than pipe", { hot_length: ft(81) }, "hot_length", "hot_beyond_length"],
    ["more pressure flowing than at rest", { residual: psi(61) }, "residual", "residual_above_static"],
    ["CPVC in 3/8", { pipe: "cpvc", size: "3/8" }, "size", "size_not_made"],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalOf(supply, { ...CASE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  const outside = [
    ["length", Number.NaN],
    ["length", 0],
    ["line_pressure", psi(201)],
    ["bath_groups", -1],
    ["fittings", 2.1],
  ] as const;
  test.each(outside)("%s of %f", (fact, value) =>
    expect(refusalOf(supply, { ...CASE, [fact]: value }).fact).toBe(fact),
  );
});

test("asks for bathrooms, pipe, length and pressure, and for no bathrooms where toilets are counted", () => {
  expect(askTopic(supply, {}).result).toEqual({
    kind: "needs-facts",
    missing: ["bath_groups", "pipe", "length", "line_pressure"],
  });
  expect(askTopic(supply, { toilets: 2 }).result).toMatchObject({ missing: ["pipe", "length", "line_pressure"] });
});

test("tells the cautions of pressure, pipe and both velocities", () => {
  const site = siteOf(supply, { ...CASE, line_pressure: psi(90) });
  expect(site.linePressure_kPa).toBe(psi(90));
  expect(site).toMatchObject({ pipeMetal: "copper", hotPipe_C: toBase(120, "F") });
  expect(site.coldPipeVelocity_m_s).toBeGreaterThan(1);
  expect(site.hotPipeVelocity_m_s).toBeGreaterThan(0.5);
});
