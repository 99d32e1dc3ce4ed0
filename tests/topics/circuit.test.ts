import { describe, expect, test } from "vitest";
import { circuit } from "../../src/topics/circuit.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { CIRCUITS, DROPS, ELEMENTS } from "../reference/electrical.ts";
import { answerOf, askTopic, codesOf, refusalOf, resultOf } from "../support/ask-topic.ts";

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
