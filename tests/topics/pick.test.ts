import { describe, expect, test } from "vitest";
import { parseRequest } from "../../src/conversation/grammar/parse-request.ts";
import type { Answer, Finding, TableCell } from "../../src/declaration/answer.ts";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { buildTableBlock } from "../../src/messages/build-table-blocks.ts";
import { sayFinding, speakOf, voiceFor } from "../../src/messages/voice.ts";
import { cost } from "../../src/topics/cost.ts";
import { pick } from "../../src/topics/pick.ts";
import { size } from "../../src/topics/size.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { codesOf, resultOf } from "../support/ask-topic.ts";
import { answerWithSeeds, askWithSeeds, refusalWithSeeds, seedBooks, type Told } from "../support/ask-with-seeds.ts";

const F = (value: number) => toBase(value, "F");
const inch = (value: number) => toBase(value, "in");
/** Five models of the demo company fit under 71 in and have this mode. */
const LOW_SPOT: Told = { people: 2, height: inch(71), mode: "heat_pump_first", setpoint: F(130), days: 60 };

type Cell = TableCell;
const rowsOf = (answer: Answer, id: string): readonly (readonly Cell[])[] =>
  answer.tables?.find((table) => table.id === id)?.rows ?? [];
const numberIn = (cell: Cell | undefined) => (typeof cell === "object" && "value" in cell ? cell.value : Number.NaN);
const codeIn = (cell: Cell | undefined) =>
  typeof cell === "object" && "code" in cell && typeof cell.code === "string" ? cell.code : "";
const reasonsOf = (rows: readonly (readonly Cell[])[], model: string) => {
  const reasons = rows.find(([name]) => name === model)?.[1];
  return Array.isArray(reasons) ? reasons : [];
};

function factsOf(request: string): { readonly topic: string | undefined; readonly told: Told } {
  const { topic, facts, problems } = parseRequest(request, library, { language: "en", units: "us" });
  expect(problems, request).toEqual([]);
  const told = Object.entries(facts).map(([id, { value }]): [string, FactValue] => [id, value]);
  return { topic, told: Object.fromEntries(told) };
}
function step(answer: Answer, code: string): string {
  const found = answer.next?.find(({ say }) => say.code === code);
  if (found === undefined) throw new Error(`no ${code}, only ${answer.next?.map(({ say }) => say.code)}`);
  return found.request;
}

describe("a site where some models fit", () => {
  const given = answerWithSeeds(pick, LOW_SPOT);
  const ranking = rowsOf(given, "ranking");
  const refused = rowsOf(given, "refused");

  test("ranks those that serve by the cost of a year, each under the limit that was asked", () => {
    const costs = ranking.map((row) => numberIn(row[4]));
    expect(ranking.length).toBeGreaterThan(1);
    expect(costs).toEqual([...costs].sort((a, b) => a - b));
    expect(ranking.map((row) => numberIn(row[0]))).toEqual(ranking.map((_, index) => index + 1));
    expect(Math.max(...ranking.map((row) => numberIn(row[6])))).toBeLessThanOrEqual(0.05);
  });
  test("names the first of them in the headline and the results", () => {
    const [first] = ranking;
    expect(given.headline.code).toBe("best_heat_pump_first");
    expect(given.headline.data["model"]).toBe(first?.[1]);
    expect(resultOf(given, "cost_per_year").quantity.value).toBe(numberIn(first?.[4]));
    expect(resultOf(given, "energy_per_year").quantity.value).toBe(numberIn(first?.[5]));
    expect(resultOf(given, "chance_of_running_cold").quantity.value).toBe(numberIn(first?.[6]));
  });
  test("every model of the catalogue stands in the ranking or among the refused, and none in both", () => {
    const ranked = new Set(ranking.map((row) => row[1]));
    const out = new Set(refused.map((row) => row[0]));
    expect([...ranked].filter((name) => out.has(name))).toEqual([]);
    expect(new Set([...ranked, ...out])).toEqual(new Set(seedBooks.catalogue.map(({ name }) => name)));
  });
  test("says for each refusal what is needed and what there is", () => {
    const [tall] = reasonsOf(refused, "Hollin 80");
    const voice = speakOf(voiceFor(library, { language: "en", units: "us" }), "pick");
    expect(tall && sayFinding(voice, tall)).toBe("It needs 80 in with the clearance above; there are 71 in.");
    expect(reasonsOf(refused, "Tarnley 50 plug-in").map(({ code }) => code)).toEqual(["refused_mode"]);
  });
  test("names a refused model once, with all its reasons in one row", () => {
    const narrow = answerWithSeeds(pick, { ...LOW_SPOT, height: inch(66), door: inch(21), days: 20 });
    const rows = rowsOf(narrow, "refused");
    expect(new Set(rows.map(([name]) => name)).size).toBe(rows.length);
    expect(reasonsOf(rows, "Hollin 80").map(({ code }) => code)).toEqual(
      expect.arrayContaining(["refused_door", "refused_height"]),
    );
    const voice = speakOf(voiceFor(library, { language: "es", units: "us" }), "pick");
    const shown = buildTableBlock(voice, { id: "refused", rows }).rows.find(([name]) => name === "Hollin 80");
    expect(shown?.[1]).toMatch(/21 in\..+66 in\./);
  });
  test("says that a tank over 120 °F needs a mixing valve, before anything else", () => {
    expect(codesOf(given)[0]).toBe("fit_valve");
    expect(ranking.map((row) => codeIn(row[7]).includes("valve"))).toEqual(ranking.map(() => true));
    const behind = answerWithSeeds(pick, { ...LOW_SPOT, height: inch(66), mixing_valve: true });
    expect(codesOf(behind)).not.toContain("fit_valve");
  });
  test("says which limits were not told, by their names", () => {
    const finding = given.findings.find(({ code }) => code === "not_checked");
    const voice = speakOf(voiceFor(library, { language: "en", units: "us" }), "pick");
    expect(finding && sayFinding(voice, finding)).toMatch(/^Not told, so not checked: Narrowest door, Weight/);
    expect(rowsOf(given, "limits")).toHaveLength(1);
  });
  test("tells the site what cautions go by: storage and size of the best pick", () => {
    const known = Object.entries(LOW_SPOT).map(([id, value]) => [id, { value, from: "asked" as const }]);
    const { cautions } = runTopic(pick, Object.fromEntries(known), seedBooks, library.cautions, () => undefined);
    expect(cautions.map(({ id }) => id)).toContain("storage_above_tap_limit");
  });
});

describe("the best pick", () => {
  const given = answerWithSeeds(pick, {
    people: 1,
    height: inch(66),
    mode: "heat_pump_first",
    setpoint: F(120),
    days: 60,
  });

  test("has the chance of running cold that size gives for its own request", () => {
    const { topic, told } = factsOf(step(given, "step_size"));
    expect(topic).toBe("size");
    const sized = answerWithSeeds(size, told);
    const chance = "chance_of_running_cold";
    expect(resultOf(sized, chance).quantity.value).toBe(resultOf(given, chance).quantity.value);
  });
  test("has the yearly cost and energy that cost gives for its own request", () => {
    const { topic, told } = factsOf(step(given, "step_cost"));
    expect(topic).toBe("cost");
    const costed = answerWithSeeds(cost, { ...told, replaces: "none" });
    for (const id of ["cost_per_year", "energy_per_year", "cop_year"])
      expect(resultOf(costed, id).quantity.value, id).toBeCloseTo(resultOf(given, id).quantity.value, 6);
  });
  test("offers circuit and expansion tank as requests that have all their facts", () => {
    expect(factsOf(step(given, "step_circuit"))).toMatchObject({ topic: "circuit", told: { supply: 240 } });
    expect(factsOf(step(given, "step_expansion")).told["setpoint"]).toBeCloseTo(F(120), 6);
  });
  test("is the same each time", () => {
    const again: Told = { people: 1, height: inch(66), mode: "heat_pump_first", setpoint: F(120), days: 60 };
    expect(answerWithSeeds(pick, again)).toEqual(given);
  });
});

describe("where nothing fits", () => {
  const site: Told = { people: 3, height: inch(50), door: inch(30) };
  const given = answerWithSeeds(pick, site);

  test("says so, with a reason for every model, and runs nothing", () => {
    expect(given.verdict).toBe("no");
    expect(given.headline).toEqual({ code: "nothing_fits", data: { models: { kind: "count", value: 15 } } });
    expect(new Set(rowsOf(given, "refused").map(([name]) => name)).size).toBe(15);
    expect(given.results).toEqual([]);
  });
  test("names the one limit that keeps out most by itself, and how far it would have to give way", () => {
    expect(given.findings[0]).toEqual({
      code: "relax_first",
      data: { limit: "height", models: { kind: "count", value: 15 } },
    });
    const [door, height] = rowsOf(given, "limits");
    expect(numberIn(door?.[2])).toBe(0);
    // The lowest model, 49 in and 4 in over it.
    expect(numberIn(height?.[4])).toBeCloseTo(inch(53), 9);
  });
  test("offers the request that lets one model in", () => {
    const { told } = factsOf(step(given, "step_relax"));
    expect(told["height"]).toBeCloseTo(inch(53), 6);
    const let_in = answerWithSeeds(pick, { ...told, people: 1, days: 20, setpoint: F(130) });
    expect(let_in.headline.data["model"]).toBe("Brackwell 50 resistance");
  });
  test("says where two limits are in the way of every model", () => {
    const both = answerWithSeeds(pick, { people: 3, height: inch(50), door: inch(18) });
    expect(codesOf(both)).toContain("two_limits");
    expect(both.next).toEqual([]);
  });
});

describe("where all that fit run cold", () => {
  const crowd: Told = {
    people: 8,
    height: inch(66),
    door: inch(20.5),
    mode: "heat_pump_only",
    setpoint: F(120),
    days: 20,
  };
  const given = answerWithSeeds(pick, crowd);
  const HOT: Told = { ...crowd, people: 2, mode: "heat_pump_first", setpoint: F(140), days: 60 };

  test("says how often, at the warmest way to run it", () => {
    expect(given.verdict).toBe("no");
    expect(given.headline.code).toBe("all_cold");
    expect(reasonsOf(rowsOf(given, "refused"), "Hollin 40").map(({ code }) => code)).toEqual(["cold_heat_pump_only"]);
  });
  test("offers more cold days only where half of the days would do", () => {
    expect(given.next).toEqual([]);
    const couple = answerWithSeeds(pick, { ...HOT, limit: 0.02 });
    expect(couple.headline.code).toBe("all_cold");
    const { told } = factsOf(step(couple, "step_limit"));
    expect(told["limit"]).toBeGreaterThan(0.02);
    expect(told["days"]).toBe(60);
    expect(answerWithSeeds(pick, told).headline.code).toBe("best_heat_pump_first");
  });
});

describe("verdict", () => {
  const one: Told = { people: 1, height: inch(66), door: inch(20.5), mode: "heat_pump_first", setpoint: F(120) };
  test("is good where 95 % confidence lies under the limit, and take care where it does not", () => {
    const sure = answerWithSeeds(pick, { ...one, days: 60, limit: 0.3 });
    expect(sure.verdict).toBe("good");
    expect(codesOf(sure)).not.toContain("too_close");
    const share = resultOf(sure, "chance_of_running_cold").quantity.value;
    const close = answerWithSeeds(pick, { ...one, days: 60, limit: Math.max(0.002, share) });
    expect(close.verdict).toBe("caution");
    expect(codesOf(close)).toContain("too_close");
  });
});

describe("while it works", () => {
  test("says the best so far, and gets from little to the whole", () => {
    const seen: { readonly share: number; readonly soFar: Finding | undefined }[] = [];
    askWithSeeds(pick, { ...LOW_SPOT, days: 20 }, seedBooks, (done, total, soFar) =>
      seen.push({ share: done / total, soFar }),
    );
    const shares = seen.map(({ share }) => share);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(seen[0]?.soFar?.code).toBe("so_far_heat_pump_first");
    expect(Object.keys(seen[0]?.soFar?.data ?? {})).toEqual(["model", "setpoint", "cost"]);
  });
});

describe("what nobody told", () => {
  test("comes from the books and is listed as assumed", () => {
    const { facts } = askWithSeeds(pick, { people: 2, height: inch(50) });
    expect(facts["month"]).toEqual({ value: "2", from: "assumed" });
    expect(facts["place"]).toEqual({ value: "Ostrowick", from: "assumed" });
    expect(facts["rate"]).toEqual({ value: "flat", from: "assumed" });
    expect(facts["height"]).toEqual({ value: inch(50), from: "asked" });
    expect(facts["door"]).toBeUndefined();
  });
  test("bedrooms stand in for people, and it says so", () => {
    expect(codesOf(answerWithSeeds(pick, { bedrooms: 3, height: inch(50) }))).toContain("bedrooms_as_people");
    expect(askWithSeeds(pick, {}).result).toEqual({ kind: "needs-facts", missing: ["people"] });
  });
  test("a catalogue without models has nothing to pick from", () => {
    const empty = answerWithSeeds(pick, { people: 2 }, { ...seedBooks, catalogue: [] });
    expect(empty.headline.code).toBe("empty_catalogue");
    expect(empty.verdict).toBe("no");
  });
});

describe("facts that cannot be worked with", () => {
  test.each<[string, Told, string, string]>([
    ["a place that the books do not know", { place: "ostrowik" }, "place", "unknown_place"],
    ["a tap hotter than the one tank", { wanted: F(120), setpoint: F(110) }, "wanted", "wanted_above_storage"],
    ["a tap hotter than any tank may be", { wanted: F(120), hottest: F(110) }, "wanted", "wanted_above_storage"],
    ["a tank hotter than any may be", { setpoint: F(140), hottest: F(120) }, "hottest", "setpoint_above_hottest"],
  ])("%s", (_name, told, fact, code) => {
    const refusal = refusalWithSeeds(pick, { people: 3, ...told });
    expect(refusal.fact).toBe(fact);
    expect(refusal.reason?.code).toBe(code);
  });
  test("a rate that the company has no plan for", () => {
    const [flat] = seedBooks.prices.electricity;
    const books = { ...seedBooks, prices: { ...seedBooks.prices, electricity: [flat] as const } };
    const refusal = refusalWithSeeds(pick, { people: 3, rate: "time_of_use" }, books);
    expect(refusal.reason?.code).toBe("rate_not_in_books");
  });
  test.each<[string, Told]>([
    ["limit", { limit: 0.9 }],
    ["height", { height: inch(5) }],
    ["door", { door: inch(3) }],
    ["days", { days: 5 }],
    ["sound", { sound: 200 }],
  ])("%s out of its range", (fact, told) => {
    expect(refusalWithSeeds(pick, { people: 3, ...told }).fact).toBe(fact);
  });
});
