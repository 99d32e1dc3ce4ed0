import { describe, expect, test } from "vitest";
import { circuit } from "../../src/topics/circuit.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { CIRCUITS, DROPS, ELEMENTS, RATED_208, RECOVERIES } from "../reference/electrical.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";
import { siteOf } from "../support/site-of.ts";

const CASE = { element: 4500, supply: 240 };
const conductorOf = (facts: Readonly<Record<string, string | number>>) => {
  const found = answerOf(circuit, facts).results.find(({ id }) => id === "conductor");
  return found && "name" in found ? found.name : undefined;
};

test.each(CIRCUITS)("$power_W W at $volts V takes a breaker of $smallest_A to $largest_A A", (row) => {
  const answer = answerOf(circuit, { element: row.power_W, supply: row.volts });
  const range = resultOf(answer, "breaker_range");
  expect([range.quantity.value, range.upTo]).toEqual([row.smallest_A, row.largest_A]);
  expect(Math.abs(resultOf(answer, "load_current").quantity.value - row.load_A)).toBeLessThan(0.01);
  expect(Math.abs(resultOf(answer, "design_current").quantity.value - row.design_A)).toBeLessThan(0.01);
});

test.each(ELEMENTS)("$rated_W W for $rated_V V make $power_W W at $supply_V V, $ohm ohm", (row) => {
  const answer = answerOf(circuit, { element: row.rated_W, rated_volts: row.rated_V, supply: row.supply_V });
  expect(Math.abs(resultOf(answer, "element_power_at_volts").quantity.value - row.power_W)).toBeLessThan(0.01);
  expect(Math.abs(resultOf(answer, "element_resistance").quantity.value - row.ohm)).toBeLessThan(1e-4);
});

test.each(DROPS)("$size AWG over $run_ft ft loses $drop_V V", ({ size, run_ft, drop_V, percent }) => {
  const answer = answerOf(circuit, { ...CASE, wire: size, run: toBase(run_ft, "ft") });
  expect(Math.abs(resultOf(answer, "voltage_drop").quantity.value - drop_V)).toBeLessThan(0.01);
  expect(Math.abs(fromBase(resultOf(answer, "voltage_drop_share").quantity.value, "percent") - percent)).toBeLessThan(
    0.01,
  );
});

describe("conductor", () => {
  const cases = [
    [{ ...CASE }, "10 AWG Cu"],
    [{ ...CASE, wire_metal: "aluminium" }, "10 AWG Al"],
    [{ element: 5500, supply: 240, wire_metal: "aluminium" }, "8 AWG Al"],
    [{ element: 2500, supply: 240 }, "14 AWG Cu"],
    [{ element: 3500, supply: 240 }, "12 AWG Cu"],
  ] as const;
  test.each(cases)("for %o is %s", (facts, name) => expect(conductorOf(facts)).toBe(name));
});

describe("verdict and headline", () => {
  const cases = [
    ["a plain circuit", {}, "info", "plan"],
    ["a 240 V element on 208 V", { supply: 208 }, "caution", "plan"],
    ["a 208 V element on 240 V", { rated_volts: 208 }, "no", "overpowered"],
    ["12 AWG for 4500 W", { wire: "12" }, "no", "wire_too_thin"],
    ["a 40 A breaker", { breaker: 40 }, "no", "breaker_outside"],
    ["a 20 A breaker", { breaker: 20 }, "no", "breaker_outside"],
    ["a 30 A breaker", { breaker: 30 }, "info", "plan"],
    ["200 ft of wire", { run: toBase(200, "ft") }, "caution", "plan"],
    ["4500 W with 10 A left on the feeder", { feeder: 100, feeder_load: 90 }, "no", "plan"],
    ["4500 W on a feeder that holds it", { feeder: 100, feeder_load: 70 }, "info", "plan"],
    ["14 A on cord and plug of a 20 A circuit", { element: 0, supply: 120, compressor: 14 }, "info", "plan"],
    ["a shared circuit", { shared: true }, "caution", "plan"],
    ["150 ft where 2 % is asked", { run: toBase(150, "ft"), drop_limit: 0.02 }, "caution", "plan"],
    ["12 kW with 20 A of compressor", { element: 12_000, compressor: 20 }, "caution", "beyond_table"],
  ] as const;
  test.each(cases)("for %s", (_, change, verdict, code) => {
    const answer = answerOf(circuit, { ...CASE, ...change });
    expect([answer.verdict, answer.headline.code]).toEqual([verdict, code]);
  });
});

describe("findings", () => {
  const cases = [
    ["element_slower", { supply: 208 }],
    ["drop_high", { run: toBase(200, "ft") }],
    ["drop_beyond_table", { run: toBase(500, "ft"), wire_metal: "aluminium", element: 9000 }],
    ["motor_in_load", { compressor: 3 }],
    ["ninety_needs_terminals", { column: "90" }],
    ["conductor_caps_breaker", { element: 5500 }],
    ["aluminium_joints", { wire_metal: "aluminium" }],
    ["total_drop_high", { run: toBase(100, "ft"), feeder_drop: 0.04 }],
    ["feeder_full", { feeder: 60, feeder_load: 50 }],
    ["feeder_holds", { feeder: 100, feeder_load: 50 }],
    ["circuit_shared", { shared: true }],
    ["plug_in", { element: 0, supply: 120, compressor: 8 }],
    ["plug_in_over", { element: 0, supply: 120, compressor: 14, breaker: 15 }],
    ["receptacle_unguarded", { element: 0, supply: 120, compressor: 8, room: "garage" }],
    ["no_disconnect", { disconnect: "neither" }],
    ["breaker_not_listed", { breaker_listed: false }],
  ] as const;
  test.each(cases)("say %s where it applies and not for a plain circuit", (code, change) => {
    expect(codesOf(answerOf(circuit, { ...CASE, ...change }))).toContain(code);
    expect(codesOf(answerOf(circuit, CASE))).not.toContain(code);
  });

  test("say that no compressor is counted until one is given", () => {
    expect(codesOf(answerOf(circuit, CASE))).toContain("compressor_left_out");
    expect(codesOf(answerOf(circuit, { ...CASE, compressor: 3 }))).not.toContain("compressor_left_out");
  });

  test("leave it to a licensed electrician, always", () => {
    for (const change of [
      {},
      { supply: 208 },
      { rated_volts: 208 },
      { wire: "14" },
      { element: 12_000, compressor: 40 },
    ])
      expect(codesOf(answerOf(circuit, { ...CASE, ...change }))).toContain("electrician_decides");
  });
});

describe("long runs", () => {
  const rowsOf = (facts: Readonly<Record<string, string | number>>, id: string) =>
    answerOf(circuit, { ...CASE, ...facts }).tables?.find((table) => table.id === id)?.rows ?? [];
  test("show each conductor's drop, by Table 8: 10, 8 AWG over 100 ft", () => {
    const rows = rowsOf({ run: toBase(100, "ft") }, "conductors");
    expect(rows.map(([name]) => name)).toEqual(["10 AWG Cu", "8 AWG Cu", "6 AWG Cu", "4 AWG Cu"]);
    for (const [size, place] of [
      ["10", 0],
      ["8", 1],
    ] as const) {
      const cell = rows[place]?.[1];
      const drop_V = DROPS.find((row) => row.size === size)?.drop_V ?? Number.NaN;
      expect(typeof cell === "object" && "kind" in cell ? cell.value : Number.NaN).toBeCloseTo(drop_V, 2);
    }
  });
  test("take the next conductor that keeps the asked share: 8 AWG for 2 % over 150 ft, 10 AWG for 3 %", () => {
    const nameOf = (drop_limit: number) =>
      answerOf(circuit, { ...CASE, run: toBase(150, "ft"), drop_limit }).results.find(
        ({ id }) => id === "conductor_for_drop",
      );
    expect(nameOf(0.02)).toMatchObject({ name: "8 AWG Cu" });
    expect(nameOf(0.03)).toMatchObject({ name: "10 AWG Cu" });
  });
  test("name what the other metal takes: 10 AWG Al, one size up from copper's for 5500 W", () => {
    const others = (facts: object) =>
      answerOf(circuit, { ...CASE, ...facts }).findings.find(({ code }) => code === "other_metal")?.data["other"];
    expect(others({})).toBe("10 AWG Al");
    expect(others({ element: 5500 })).toBe("8 AWG Al");
    expect(others({ element: 5500, wire_metal: "aluminium" })).toBe("10 AWG Cu");
  });
  test("have no table without a run", () => expect(rowsOf({}, "conductors")).toEqual([]));
});

describe("choice of supply", () => {
  const choices = (facts: Readonly<Record<string, string | number>>) =>
    (answerOf(circuit, { ...CASE, ...facts }).tables?.find(({ id }) => id === "supplies")?.rows ?? []).map((row) =>
      row.map((cell) => (typeof cell === "object" && "kind" in cell ? cell.value : cell)),
    );
  test("4500 W: 3380 W at 208 V and 1125 W at 120 V (trade table), 21.63 A with an element for 208 V", () => {
    const rows = choices({});
    expect(rows.map(([supply, rated]) => [supply, rated])).toEqual([
      [240, 240],
      [208, 240],
      [208, 208],
      [120, 240],
    ]);
    expect(rows.map((row) => row[2])).toEqual([4500, expect.closeTo(3380, 6), 4500, expect.closeTo(1125, 6)]);
    expect(Number(rows[2]?.[3])).toBeCloseTo(RATED_208.load_A, 2);
  });
  test.each(RECOVERIES)("$power_W W warm $gph gal/h by $rise_F °F within 1 % (trade recovery table)", (row) => {
    const rise = toBase(row.rise_F, "F_diff");
    const answer = answerOf(circuit, { element: row.power_W, supply: 240, rise });
    const gph = fromBase(resultOf(answer, "recovery_rate").quantity.value, "gph");
    expect(Math.abs(gph / row.gph - 1)).toBeLessThan(0.01);
  });
  test("never shows a supply that would overload the element: 240 V on one for 208 V", () => {
    expect(choices({ supply: 208, rated_volts: 208 }).map(([supply]) => supply)).toEqual([208, 120]);
  });
});

describe("feeder", () => {
  test("has 100 - 70 - 18.75 = 11.25 A left, without the quarter for continuous load (NEC 422.13)", () => {
    const answer = answerOf(circuit, { ...CASE, feeder: 100, feeder_load: 70 });
    expect(resultOf(answer, "feeder_spare").quantity.value).toBeCloseTo(11.25, 9);
  });
  test("drop adds to the branch's: 1.94 % and 2 %", () => {
    const answer = answerOf(circuit, { ...CASE, run: toBase(100, "ft"), feeder_drop: 0.02 });
    expect(resultOf(answer, "total_drop_share").quantity.value).toBeCloseTo(0.039375, 4);
  });
  test("is said not to be checked until both its size and its load are told", () => {
    expect(codesOf(answerOf(circuit, CASE))).toContain("feeder_unknown");
    expect(refusalOf(circuit, { ...CASE, feeder: 100 })).toMatchObject({
      fact: "feeder",
      reason: { code: "feeder_incomplete" },
    });
    expect(refusalOf(circuit, { ...CASE, feeder_load: 70 }).fact).toBe("feeder_load");
  });
});

describe("tells the cautions", () => {
  test("nothing of feeder, breaker or switch that was not told", () => {
    const site = siteOf(circuit, CASE);
    for (const field of ["feederSpare_A", "isBreakerListed", "hasDisconnectInSight", "isBreakerLockable", "room"])
      expect(site).not.toHaveProperty(field);
  });
  test("what is left on the feeder, and what was seen of breaker, switch and room", () => {
    const facts = {
      ...CASE,
      feeder: 100,
      feeder_load: 90,
      breaker_listed: false,
      room: "outdoors",
      ground_fault: false,
    };
    const site = siteOf(circuit, { ...facts, disconnect: "neither" });
    expect(site).toMatchObject({ isBreakerListed: false, hasDisconnectInSight: false, isBreakerLockable: false });
    expect(site).toMatchObject({ feederSpare_A: -8.75, room: "outdoors", hasGroundFault: false });
  });
  test("a breaker that locks open, and no word on the lock where a switch is in sight", () => {
    expect(siteOf(circuit, { ...CASE, disconnect: "lockable" })).toMatchObject({
      hasDisconnectInSight: false,
      isBreakerLockable: true,
    });
    const inSight = siteOf(circuit, { ...CASE, disconnect: "in_sight" });
    expect(inSight.hasDisconnectInSight).toBe(true);
    expect(inSight).not.toHaveProperty("isBreakerLockable");
  });
});

test("a unit with a compressor only has no element to speak of: 4 A at 120 V", () => {
  const answer = answerOf(circuit, { element: 0, supply: 120, compressor: 4 });
  expect(answer.results.map(({ id }) => id)).not.toContain("element_resistance");
  expect(resultOf(answer, "load_current").quantity.value).toBe(4);
});

test("every source of the code tables names the 2023 edition", () => {
  const sources = answerOf(circuit, { ...CASE, run: 30 }).results.flatMap(({ how }) => how.sources);
  const code = sources.filter(({ document }) => document.startsWith("NEC"));
  expect(code.length).toBeGreaterThan(5);
  expect(code.filter(({ edition }) => edition !== "2023")).toEqual([]);
});

describe("refuses", () => {
  test("14 AWG aluminium, which the table does not have, with a worded reason", () => {
    const refused = refusalOf(circuit, { ...CASE, wire: "14", wire_metal: "aluminium" });
    expect([refused.fact, refused.reason?.code]).toEqual(["wire", "wire_not_made"]);
  });
  const outside = [
    ["element", Number.NaN],
    ["element", -1],
    ["element", 12_001],
    ["supply", 99],
    ["supply", 278],
    ["run", -1],
    ["compressor", 41],
  ] as const;
  test.each(outside)("%s of %f", (fact, value) =>
    expect(refusalOf(circuit, { ...CASE, [fact]: value }).fact).toBe(fact),
  );
});

test("asks for the element and the supply voltage", () => {
  expect(askTopic(circuit, {}).result).toEqual({ kind: "needs-facts", missing: ["element", "supply"] });
});
