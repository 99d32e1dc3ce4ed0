import { describe, expect, test } from "vitest";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import { DAY_SERIES } from "../../src/household/day-chart.ts";
import { size } from "../../src/topics/size.ts";
import { fromBase, toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { codesOf, resultOf } from "../support/ask-topic.ts";
import { answerWithSeeds, askWithSeeds, refusalWithSeeds, seedBooks, type Told } from "../support/ask-with-seeds.ts";

const F = (value: number) => toBase(value, "F");
const gal = (value: number) => toBase(value, "gal");
const HOUSEHOLD: Told = { people: 4, tank: gal(80), setpoint: F(135), days: 60 };
const answer = (facts: Told = HOUSEHOLD) => answerWithSeeds(size, facts);
const number = (id: string, facts: Told = HOUSEHOLD) => resultOf(answer(facts), id).quantity.value;

/** What a request on one line comes to, as if it had been typed. */
function ask(request: string) {
  const { topic, facts, problems } = parseRequest(request, library, { language: "en", units: "us" });
  expect(problems).toEqual([]);
  expect(topic).toBe("size");
  return answerWithSeeds(size, Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value])));
}

describe("answers", () => {
  test("size people=4 tank=80gal setpoint=135F, with every number", () => {
    const given = ask("size people=4 tank=80gal setpoint=135F");
    expect(given.results.map(({ id }) => id).sort()).toEqual([...size.results].sort());
    expect(resultOf(given, "chance_of_running_cold").how.inputs).toContainEqual({
      symbol: "n",
      quantity: { kind: "count", value: 200 },
    });
  });
  test("size people=4 model=hollin-80 setpoint=125F without asking for the tank", () => {
    const given = ask("size people=4 model=hollin-80 setpoint=125F");
    expect(codesOf(given)).not.toContain("generic_sheet");
    expect(resultOf(given, "cop_day").quantity.value).toBeGreaterThan(2);
  });
  test("the same question twice has the same answer", () => expect(answer()).toEqual(answer()));
});

describe("numbers agree with each other and with closed forms", () => {
  test("worksheet, present page: 3 showers, a shave and dishes are 65 gal; middle edition 36 gal, its own example", () => {
    expect(fromBase(number("peak_hour_demand"), "gal")).toBeCloseTo(65, 9);
    expect(fromBase(number("peak_hour_demand", { ...HOUSEHOLD, worksheet: "middle" }), "gal")).toBeCloseTo(36, 9);
  });
  test("storage gain is (135 - cold) / (120 - cold) - 1", () => {
    expect(number("storage_gain", { ...HOUSEHOLD, cold: F(60) })).toBeCloseTo(75 / 60 - 1, 9);
    expect(number("storage_gain", { ...HOUSEHOLD, setpoint: F(120) })).toBeCloseTo(0, 9);
  });
  test("one go gives less than a perfect tank of 72 gal, and more than 70 % of it, the rule of thumb in print", () => {
    const perfect_L = (gal(72) * (135 - 60)) / (105 - 60);
    const usable_L = number("usable_volume_mixed", { ...HOUSEHOLD, cold: F(60) });
    expect(usable_L).toBeLessThan(perfect_L);
    expect(usable_L).toBeGreaterThan(0.7 * perfect_L);
  });
  test("energy in is what cop says: heat out over power in", () => {
    const { how, quantity } = resultOf(answer(), "cop_day");
    const [out, electricity] = how.inputs.map((input) => input.quantity.value);
    expect((out ?? 0) / (electricity ?? 1)).toBeCloseTo(quantity.value, 12);
    expect(number("energy_per_day")).toBeCloseTo((electricity ?? 0) / 60, 12);
  });
  test("elements only deliver less heat than the power they take", () => {
    expect(number("cop_day", { ...HOUSEHOLD, heat_pump: 0 })).toBeLessThan(1);
  });
});

describe("verdict", () => {
  const verdictAt = (limit: number) => answer({ ...HOUSEHOLD, setpoint: F(120), limit }).verdict;
  const { how } = resultOf(answer({ ...HOUSEHOLD, setpoint: F(120) }), "sampling_error");
  const end = (symbol: string) => how.inputs.find((input) => input.symbol === symbol)?.quantity.value ?? Number.NaN;
  const [low, high] = [end("p_low"), end("p_high")];

  test("is good from the upper end of the confidence interval on, no below its lower end, and caution between", () => {
    expect(low).toBeGreaterThan(0.004);
    expect(verdictAt(high + 0.001)).toBe("good");
    expect(verdictAt((low + high) / 2)).toBe("caution");
    expect(verdictAt(low - 0.001)).toBe("no");
  });
  test("a good answer needs no remedies", () => {
    const given = answer({ ...HOUSEHOLD, people: 1, setpoint: F(140), days: 100 });
    expect(given.verdict).toBe("good");
    expect(given.headline.code).toBe("runs_warm");
    expect(given.tables).toBeUndefined();
  });
});

describe("what to change when the answer is no", () => {
  const cold: Told = { people: 5, model: "hollin-50", setpoint: F(120), days: 60 };
  const given = answer(cold);
  const [table] = given.tables ?? [];
  const rows = (table?.rows ?? []).map(([change, chance, energy]) => ({
    code: typeof change === "object" && "code" in change ? change.code : "",
    chance: typeof chance === "object" && "value" in chance ? chance.value : Number.NaN,
    energy: typeof energy === "object" && "value" in energy ? energy.value : Number.NaN,
  }));
  const row = (code: string) => rows.find((one) => one.code === code);

  test("names hotter storage, a stronger mode, quiet hours, a larger tank and the two strongest together", () => {
    expect(given.verdict).toBe("no");
    expect(rows.map(({ code }) => code)).toEqual([
      "change_none",
      "change_hotter",
      "change_both_together",
      "change_quiet_hours",
      "change_model",
      "change_model",
      "change_hotter_and_mode",
    ]);
  });
  test("each is computed: the row of a change is the answer to its own request", () => {
    const hotter = answer({ ...cold, setpoint: F(140), mixing_valve: true });
    expect(row("change_hotter")?.chance).toBe(resultOf(hotter, "chance_of_running_cold").quantity.value);
    expect(row("change_hotter")?.energy).toBeCloseTo(resultOf(hotter, "energy_per_day").quantity.value, 9);
    const both = answer({ ...cold, mode: "both_together" });
    expect(row("change_both_together")?.chance).toBe(resultOf(both, "chance_of_running_cold").quantity.value);
  });
  test("both together costs more energy than the heat pump first", () => {
    expect(row("change_both_together")?.energy ?? 0).toBeGreaterThan(row("change_none")?.energy ?? 99);
  });
  test("the buttons are requests that parse and that run cold less often", () => {
    const present = resultOf(given, "chance_of_running_cold").quantity.value;
    expect(given.next?.length).toBeGreaterThan(2);
    for (const { request } of given.next ?? [])
      expect(resultOf(ask(request), "chance_of_running_cold").quantity.value, request).toBeLessThan(present);
  });
  test("says for each what it means for scalding and hygiene", () => {
    const remarks = (table?.rows ?? []).map((cells) => cells.at(-1));
    const codes = remarks.map((remark) => (typeof remark === "object" && "code" in remark ? remark.code : ""));
    expect(codes[0]).toBe("remark_stays_cool");
    expect(codes[1]).toBe("remark_fit_valve");
    expect(codes).not.toContain("");
  });
  test("reports progress up to the whole", () => {
    const seen: [number, number][] = [];
    askWithSeeds(size, cold, seedBooks, (done, total) => seen.push([done, total]));
    expect(seen.map(([done]) => done)).toEqual([1, 2, 3, 4, 5, 6, 7]);
    expect(seen.every(([, total]) => total === 7)).toBe(true);
  });
});

describe("what nobody told", () => {
  test("comes from the books and is listed as assumed: coldest month of the company's own place", () => {
    const { facts, result } = askWithSeeds(size, HOUSEHOLD);
    expect(facts["month"]).toEqual({ value: "2", from: "assumed" });
    expect(facts["place"]).toEqual({ value: "Ostrowick", from: "assumed" });
    expect(facts["mode"]).toEqual({ value: "heat_pump_first", from: "assumed" });
    expect(facts["people"]).toEqual({ value: 4, from: "asked" });
    const taken = result.kind === "answer" ? result.assumed : undefined;
    expect(taken?.["cold"]?.source.document).toMatch(/Water Mains Temperatures/);
  });
  test("a told temperature stands, and the place is left out when both are told", () => {
    const { facts } = askWithSeeds(size, { ...HOUSEHOLD, cold: F(50), air: F(60) });
    expect(facts["cold"]?.from).toBe("asked");
    expect(facts["place"]).toBeUndefined();
  });
  test("July asks less of the tank than the coldest month", () => {
    expect(number("energy_per_day", { ...HOUSEHOLD, month: "7" })).toBeLessThan(number("energy_per_day"));
  });
  test("three bedrooms are 2.64 people, and people told beside them win", () => {
    const { people: _, ...rest } = HOUSEHOLD;
    const byRooms = answer({ ...rest, bedrooms: 3 });
    const said = byRooms.findings.find(({ code }) => code === "bedrooms_as_people");
    expect(said?.data["people"]).toEqual({ kind: "ratio", value: expect.closeTo(0.87 + 3 * 0.59, 9) });
    expect(answer({ ...HOUSEHOLD, bedrooms: 3 }).findings).toContainEqual({
      code: "not_used",
      data: { left: "bedrooms", taken: "people" },
    });
  });
  test("a model beside a tank wins, and that is said", () => {
    const given = answer({ ...HOUSEHOLD, model: "hollin-80" });
    expect(given.findings).toContainEqual({ code: "not_used", data: { left: "tank", taken: "model" } });
  });
});

describe("refuses", () => {
  const base: Told = { people: 4, model: "hollin-80", setpoint: F(125), days: 20 };
  test.each([
    ["a model that is not in the catalogue", { model: "hollyn-80" }, "model", "unknown_model"],
    ["a place that is not in the books", { place: "Nowhere" }, "place", "unknown_place"],
    ["150 °F on a unit that goes to 143 °F", { setpoint: F(150) }, "setpoint", "setpoint_outside_unit"],
    ["elements only on a plug-in unit", { model: "tarnley-50", mode: "elements_only" }, "mode", "mode_only_heat_pump"],
    ["heat pump only on a plain tank", { model: "brackwell-50", mode: "heat_pump_only" }, "mode", "mode_only_elements"],
    ["120 V on a 240 V unit", { supply: 120 }, "supply", "supply_unfit"],
    ["110 °F wanted of a tank at 100 °F", { setpoint: F(100), wanted: F(110) }, "wanted", "wanted_above_storage"],
    ["95 °F wanted with cold at 95 °F", { wanted: F(95), cold: F(95) }, "cold", "cold_above_wanted"],
  ])("%s", (_, change, fact, code) => {
    const refused = refusalWithSeeds(size, { ...base, ...change });
    expect(refused.fact).toBe(fact);
    expect(refused.reason?.code).toBe(code);
  });
  test("an unknown model names the nearest ones", () => {
    expect(refusalWithSeeds(size, { ...base, model: "hollyn-80" }).reason?.data["nearest"]).toMatch(/^hollin-80/);
  });
  test("a model without any catalogue says so", () => {
    expect(refusalWithSeeds(size, base, { ...seedBooks, catalogue: [] }).reason?.code).toBe("no_catalogue");
  });
  test("a tank that nothing heats, and an element of 200 W", () => {
    expect(refusalWithSeeds(size, { ...HOUSEHOLD, element: 0, heat_pump: 0 }).reason?.code).toBe("no_source");
    expect(refusalWithSeeds(size, { ...HOUSEHOLD, element: 200 })).toMatchObject({ fact: "element", min: 300 });
  });
  test("230 V and 143 °F, a hair off the plate and the sheet, are taken", () => {
    expect(answer({ ...base, supply: 230, setpoint: F(143) }).kind).toBe("answer");
  });
});

test("asks for people, tank and tank temperature, and a model or bedrooms do as well", () => {
  const missing = (facts: Told) => {
    const { result } = askWithSeeds(size, facts);
    return result.kind === "needs-facts" ? result.missing : [];
  };
  expect(missing({})).toEqual(["people", "tank", "setpoint"]);
  expect(missing({ model: "hollin-80" })).toEqual(["people", "setpoint"]);
  expect(missing({ bedrooms: 3, tank: gal(50) })).toEqual(["setpoint"]);
});

test("air at 30 °F locks the heat pump out, and the answer says so", () => {
  expect(codesOf(answer({ ...HOUSEHOLD, air: F(30) }))).toContain("heat_pump_barred");
  const only = answer({ ...HOUSEHOLD, air: F(30), mode: "heat_pump_only" });
  expect(only.verdict).toBe("no");
  expect(codesOf(only)).toContain("never_recovers");
  expect(only.results.map(({ id }) => id)).not.toContain("recovery_time");
});

test("the chart shows outlet, 12 layers top first, draws and what ran, each with words, at ten-minute steps", () => {
  const [day] = answer().charts ?? [];
  const marks = day?.series.map(({ mark }) => mark) ?? [];
  expect(marks.filter((mark) => mark === "layer").length).toBe(12);
  const strips = (facts: Told) =>
    answer(facts).charts?.[0]?.series.flatMap(({ id, mark }) => (mark === "strip" ? [id] : []));
  expect(strips(HOUSEHOLD)).toEqual(["heat_pump", "upper", "lower"]);
  expect(strips({ ...HOUSEHOLD, heat_pump: 0 })).toEqual(["upper", "lower"]);
  expect(strips({ ...HOUSEHOLD, element: 0 })).toEqual(["heat_pump"]);
  const ids = [...(day?.series ?? []), ...(day?.marks ?? [])].map(({ id }) => id);
  expect(ids.filter((id) => !DAY_SERIES.some((known) => known === id))).toEqual([]);
  expect(day?.series.every(({ x, y }) => x.length === 144 && y.length === 144)).toBe(true);
  const [top, bottom] = [
    day?.series.find(({ id }) => id === "layer_1"),
    day?.series.find(({ id }) => id === "layer_12"),
  ];
  const mean = (y: readonly number[] = []) => y.reduce((sum, one) => sum + one, 0) / y.length;
  expect(mean(top?.y)).toBeGreaterThan(mean(bottom?.y));
});

test("tells the site what cautions go by: storage, taps, valve, volume and the element's voltage", () => {
  const { facts } = askWithSeeds(size, { ...HOUSEHOLD, supply: 208, mixing_valve: true });
  expect(facts["supply"]?.value).toBe(208);
  const site = size.site?.(
    { ...emptyFacts, people: 4, tank_L: gal(80), setpoint_C: F(135), supply_V: 208, mixing_valve: true },
    seedBooks,
  );
  expect(site).toEqual({
    storage_C: F(135),
    tap_C: F(105),
    tank_L: expect.closeTo(gal(72), 9),
    supply_V: 208,
    ratedVoltage_V: 240,
    elementPower_W: 4500,
    hasMixingValve: true,
  });
});

const emptyFacts = {
  people: undefined,
  bedrooms: undefined,
  model: undefined,
  tank_L: undefined,
  mixing_valve: undefined,
  bathrooms: 2,
  element_W: undefined,
  heat_pump_W: undefined,
  wanted_C: F(105),
  cold_C: undefined,
  place: undefined,
  month: undefined,
  air_C: undefined,
  mode: undefined,
  supply_V: undefined,
  shower: undefined,
  shave: undefined,
  hand_dishes: undefined,
  dishwasher: undefined,
  clothes_washer: undefined,
  worksheet: "present",
  appliances: "any_hour",
  limit: 0.05,
  days: 20,
} as const;
