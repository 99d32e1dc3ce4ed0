import { describe, expect, test } from "vitest";
import type { Books } from "../../src/books/books.ts";
import type { Answer } from "../../src/declaration/answer.ts";
import { cost } from "../../src/topics/cost.ts";
import { toBase } from "../../src/units/convert.ts";
import { codesOf, resultOf } from "../support/ask-topic.ts";
import { answerWithSeeds, askWithSeeds, refusalWithSeeds, seedBooks } from "../support/ask-with-seeds.ts";

const CASE = { model: "hollin-80", people: 3, replaces: "electric_tank" };
const numberOf = (answer: Answer, id: string) => resultOf(answer, id).quantity.value;
const rowsOf = (answer: Answer, id: string) => answer.tables?.find((table) => table.id === id)?.rows ?? [];
const electric = answerWithSeeds(cost, CASE);
const gas = answerWithSeeds(cost, { ...CASE, replaces: "gas_tank", rate: "time_of_use" });

describe("sums", () => {
  test("saving is the old bill less the new, and payback is the net price over it", () => {
    const { tables } = electric;
    const old = rowsOf({ ...electric, tables: tables ?? [] }, "by_heater").at(-1)?.[2];
    const oldBill = typeof old === "object" && "value" in old ? old.value : Number.NaN;
    expect(numberOf(electric, "saving_per_year")).toBeCloseTo(oldBill - numberOf(electric, "cost_per_year"), 9);
    const years = numberOf(electric, "net_price") / numberOf(electric, "saving_per_year");
    expect(numberOf(electric, "payback")).toBeCloseTo(years, 9);
  });
  test("a flat rate prices the year at energy times 0.162", () => {
    expect(numberOf(electric, "cost_per_year")).toBeCloseTo(0.162 * numberOf(electric, "energy_per_year"), 6);
  });
  test("emissions are energy times the book's factor", () => {
    expect(numberOf(electric, "emissions")).toBeCloseTo(0.37 * numberOf(electric, "energy_per_year"), 6);
  });
  test.each([
    ["electric", electric],
    ["gas", gas],
  ])("the bars of the %s chart add up to the bills", (_, answer) => {
    const bars = answer.charts?.[0]?.series.map(({ y }) => y.reduce((sum, value) => sum + value, 0)) ?? [];
    const cost_usd = numberOf(answer, "cost_per_year");
    expect(bars[0]).toBeCloseTo(cost_usd, 6);
    expect(bars[1]).toBeCloseTo(cost_usd + numberOf(answer, "saving_per_year"), 6);
  });
  test("net price is price less 600 and 30 % of 4590 up to 1500", () => {
    const price = seedBooks.catalogue.find(({ id }) => id === "hollin-80")?.price;
    const installed = (price?.unit_usd ?? 0) + (price?.installation_usd ?? 0);
    expect(numberOf(electric, "net_price")).toBeCloseTo(installed - 600 - Math.min(1500, 0.3 * installed), 9);
  });
});

describe("modes", () => {
  const rows = rowsOf(electric, "by_heater");
  const column = (index: number) =>
    rows.map((row) => {
      const cell = row[index];
      return typeof cell === "object" && "value" in cell ? cell.value : Number.NaN;
    });
  test("are all in the table, with the heater that comes out last", () => {
    const names = rows.map(([name]) => (typeof name === "object" && "code" in name ? name.code : ""));
    const modes = ["heat_pump_first", "heat_pump_only", "both_together", "elements_only"];
    expect(names).toEqual([...modes, "electric_tank"]);
  });
  test("cost in order: heat pump only, first, both together, elements only", () => {
    const [first = 0, only = 0, both = 0, elements = 0] = column(2);
    expect([only < first, first < both, both < elements]).toEqual([true, true, true]);
  });
  test("with less element heat leave nobody warmer: heat pump only is cold on most days of all", () => {
    const [first = 0, only = 0, both = 0] = column(4);
    expect(only).toBeGreaterThanOrEqual(first);
    expect(first).toBeGreaterThanOrEqual(both);
  });
  test("the elements of the unit cost about what the old tank costs, within 10 %", () => {
    const [, , , elements = 0, old = 0] = column(2);
    expect(Math.abs(elements / old - 1)).toBeLessThan(0.1);
  });
  test("a plug-in unit has one row, and its mode is assumed", () => {
    const { facts, result } = askWithSeeds(cost, { model: "tarnley-50", people: 2, replaces: "none" });
    expect(facts["mode"]?.value).toBe("heat_pump_only");
    expect(facts["supply"]?.value).toBe(120);
    expect(result.kind === "answer" && rowsOf(result, "by_heater")).toHaveLength(1);
  });
});

describe("what comes out", () => {
  test("a gas tank is priced as gas, its cold days are not simulated, and it says so", () => {
    const row = rowsOf(gas, "by_heater").at(-1) ?? [];
    const energy = row[1];
    const bill = row[2];
    expect(row[4]).toEqual({ code: "not_simulated", data: {} });
    if (typeof energy !== "object" || typeof bill !== "object" || !("value" in energy) || !("value" in bill))
      throw new Error("not numbers");
    expect(bill.value / energy.value).toBeCloseTo(1.42 / toBase(1, "therm"), 9);
    expect(codesOf(gas)).toContain("gas_by_equation");
    expect(codesOf(gas)).toContain("gas_work_left_out");
    expect(codesOf(electric)).not.toContain("gas_by_equation");
  });
  test("nothing: no saving, no payback, verdict left open", () => {
    const alone = answerWithSeeds(cost, { model: "hollin-80", people: 2, replaces: "none", mode: "heat_pump_only" });
    const ids = alone.results.map(({ id }) => id);
    expect(ids).not.toContain("saving_per_year");
    expect(ids).not.toContain("payback");
    expect([alone.headline.code, alone.verdict]).toEqual(["costs", "info"]);
  });
  test("cheap gas in the books: it costs more, says no, and never pays", () => {
    const books: Books = { ...seedBooks, prices: { ...seedBooks.prices, gas_usd_kWh: 0.005 } };
    const answer = answerWithSeeds(cost, { ...CASE, replaces: "gas_tank" }, books);
    expect([answer.verdict, answer.headline.code]).toEqual(["no", "costs_more"]);
    expect(codesOf(answer)).toContain("never_pays");
    expect(answer.results.map(({ id }) => id)).not.toContain("payback");
  });
});

describe("prices", () => {
  test("without incentives the whole price has to come back", () => {
    const answer = answerWithSeeds(cost, { ...CASE, incentives: false, price: 4000 });
    expect(numberOf(answer, "net_price")).toBe(4000);
    expect(codesOf(answer)).not.toContain("check_incentives");
  });
  test("a usual heater for more than the net price pays from the first day", () => {
    const answer = answerWithSeeds(cost, { ...CASE, incentives: false, price: 4000, instead: 4500 });
    expect(numberOf(answer, "payback")).toBe(0);
    expect(codesOf(answer)).toContain("pays_at_once");
  });
  test("name the plan, the day they were set and the day of the factors", () => {
    const set = gas.findings.filter(({ code }) => code === "prices_set" || code === "factors_set");
    expect(set.map(({ data }) => data["day"])).toEqual(["2026-09-01", "2026-09-01"]);
    expect(set[0]?.data["plan"]).toBe("Evening peak");
  });
});

describe("refuses", () => {
  const cases = [
    ["an unknown model", { model: "holin-80" }, "model", "unknown_model"],
    ["an unknown place", { place: "Nowhere" }, "place", "unknown_place"],
    ["150 °F, over the unit's 143", { setpoint: toBase(150, "F") }, "setpoint", "setpoint_outside_unit"],
    ["elements in a plug-in unit", { model: "tarnley-50", mode: "elements_only" }, "mode", "mode_only_heat_pump"],
    ["a heat pump in a plain tank", { model: "brackwell-50", mode: "heat_pump_first" }, "mode", "mode_only_elements"],
    ["120 V for a 240 V unit", { supply: 120 }, "supply", "supply_unfit"],
    [
      "110 °F from a tank at 105",
      { setpoint: toBase(105, "F"), wanted: toBase(110, "F") },
      "wanted",
      "wanted_above_setpoint",
    ],
    ["an electric tank rated 0.6", { old_efficiency: 0.6 }, "old_efficiency", "efficiency_outside"],
    ["a gas tank rated 0.95", { replaces: "gas_tank", old_efficiency: 0.95 }, "old_efficiency", "efficiency_outside"],
  ] as const;
  test.each(cases)("%s", (_, change, fact, code) => {
    const refused = refusalWithSeeds(cost, { ...CASE, ...change });
    expect([refused.fact, refused.reason?.code]).toEqual([fact, code]);
  });
  test("an unknown model with the nearest ones named", () => {
    const refused = refusalWithSeeds(cost, { ...CASE, model: "holin-80" });
    expect(refused.reason?.data["nearest"]).toMatch(/^hollin-80, /);
  });
  test("a company without places, and one without time-of-use prices", () => {
    const noPlaces = refusalWithSeeds(cost, CASE, { ...seedBooks, places: [] });
    expect([noPlaces.fact, noPlaces.reason?.data["nearest"]]).toEqual(["place", ""]);
    const [flat] = seedBooks.prices.electricity;
    const books: Books = { ...seedBooks, prices: { ...seedBooks.prices, electricity: [flat] } };
    expect(refusalWithSeeds(cost, { ...CASE, rate: "time_of_use" }, books).reason?.code).toBe("rate_not_in_books");
  });
  const outside = [
    ["people", 0],
    ["people", 13],
    ["people", Number.NaN],
    ["price", -1],
    ["old_efficiency", 0.2],
  ] as const;
  test.each(outside)("%s of %f", (fact, value) => {
    expect(refusalWithSeeds(cost, { ...CASE, [fact]: value }).fact).toBe(fact);
  });
});

test("143 °F typed is the unit's own highest, though it may miss it by a rounding", () => {
  expect(askWithSeeds(cost, { ...CASE, setpoint: 143 / 1.8 - 32 / 1.8 + 1e-9 }).result.kind).toBe("answer");
});

test("230 V is taken for a unit made for 240 V", () => {
  expect(askWithSeeds(cost, { ...CASE, supply: 230 }).result.kind).toBe("answer");
});

test("progress goes forward to its end", () => {
  const shares: number[] = [];
  askWithSeeds(cost, { ...CASE, people: 1 }, seedBooks, (done, total) => shares.push(done / total));
  expect(shares.at(-1)).toBe(1);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares.length).toBeGreaterThanOrEqual(5);
});

test("asks for the model and the people", () => {
  expect(askWithSeeds(cost, {}).result).toEqual({ kind: "needs-facts", missing: ["model", "people"] });
});
