import { describe, expect, test } from "vitest";
import { parseRequest, type RequestOptions } from "../../../src/conversation/grammar/parse-request.ts";
import type { FactValue } from "../../../src/declaration/facts.ts";
import { toBase } from "../../../src/units/convert.ts";
import type { UnitId } from "../../../src/units/unit-table.ts";
import { fixtureLibrary } from "./fixture-topics.ts";

const EN: RequestOptions = { language: "en", units: "us" };
const ES: RequestOptions = { language: "es", units: "us" };
const SI: RequestOptions = { language: "es", units: "si" };

const of = (unit: UnitId) => (value: number) => toBase(value, unit);
const [F, gal, psi, ft, gpm] = [of("F"), of("gal"), of("psi"), of("ft"), of("gpm")];

function read(typed: string, options: RequestOptions = EN) {
  const { topic, facts, problems, readings } = parseRequest(typed, fixtureLibrary, options);
  const values = Object.fromEntries(Object.entries(facts).map(([fact, known]) => [fact, known.value]));
  return { topic, values, problems, readings };
}

interface Case {
  readonly typed: string;
  readonly topic: string;
  readonly values: Readonly<Record<string, FactValue>>;
}

const EXPANSION = { tank: gal(80), cold: F(50), setpoint: F(140), line_pressure: psi(60) };
const MIX = { storage: F(135), wanted: F(120), cold: F(50) };
const CIRCUIT = { element: 4500, supply: 208, run: ft(60) };
const WAIT = { pipe: "pex", size: "3/4", length: ft(60), flow: gpm(2) };

describe("trade English", () => {
  const cases: readonly Case[] = [
    ...[
      "expansion 80 gal tank, 50F cold 140F hot 60 psi",
      "expansion tank=80gal cold=50F setpoint=140F line_pressure=60psi",
      "expansion tank = 80 gal, cold = 50, hot = 140, line pressure = 60",
      "expansion: tank: 80 gal; cold: 50 F; hot: 140 F; pressure: 60 psi",
      "Expansion 80-gal tank 140°F hot 50°F cold 60 PSI",
      "60 psi line, cold 50F hot 140F, 80 gallon tank expansion",
      "what expansion tank do I need for an 80 gal heater, hot 140, cold 50 and 60 psi?",
      "EXPANSION hot 140F cold 50F tank 80 gal 60psi",
      "expansion 80 gal\n50F cold\n140F hot\n60 psi",
      "expansion (80 gal) hot water is at 140 F, incoming is 50 F, line is 60 psi",
      "expansion 80\u00a0gal tank\u200b, 50ºF cold 140ºF hot 60 psi",
      "expansion 50F cold 80 gal 60 psi 140F",
      "please check the expansion on this job: it's an 80 gal, 50F cold, 140F hot, 60 psi",
      "expansion incoming 50F, set to 140F, 80 gal, 60 lbs",
    ].map((typed): Case => ({ typed, topic: "expansion", values: EXPANSION })),
    ...[
      "mix 135 to 120 with 50 in",
      "mix 135F to 120F with 50F in",
      "mix 135 to 120, 50 in",
      "mix 135 to 120 cold 50",
      "mix hot 135 wanted 120 cold 50",
      "mix to 120 with 50, hot 135",
      "mix storage=135F wanted=120F cold=50F",
      "mix 135°F → 120°F wanted, 50°F cold",
      "mixing 135 to 120 w/ 50",
      "mix 135→120 with 50",
      "mix 135 -> 120 with 50",
      "mix 135F > 120F with 50F",
      "mix 135 to 120 cold=50 in",
    ].map((typed): Case => ({ typed, topic: "mix", values: MIX })),
    ...[
      "circuit 4500W at 208V 60 ft",
      "circuit 4500W @ 208V 60'",
      "circuit 4500W @208V 60'",
      "circuit 4500W/208V/60ft",
      "circuit 60 ft 208V 4.5kW",
      "circuit element=4500W supply=208V run=60ft",
      "circuit 4,500 watts at 208 for a 60 ft run",
    ].map((typed): Case => ({ typed, topic: "circuit", values: CIRCUIT })),
    {
      typed: "circuit 4500W 208V 60 ft 12/2 aluminum, breaker 30 A",
      topic: "circuit",
      values: { ...CIRCUIT, wire: "12", metal: "aluminium", breaker: 30 },
    },
    {
      typed: "circuit 4500W 208V 60 ft #10 cu 75c",
      topic: "circuit",
      values: { ...CIRCUIT, wire: "10", metal: "copper", terminals: "75" },
    },
    { typed: "circuit 4500W 208V 60 ft 14 awg", topic: "circuit", values: { ...CIRCUIT, wire: "14" } },
    ...[
      "wait 60 ft of 3/4 pex at 2 gpm",
      "wait 3/4 pex 60 ft 2 gpm",
      "wait 60' 3/4\" pex, 2 gpm",
      "wait 60 ft 3/4 in pex 2 gpm",
      "wait pipe=pex size=3/4 length=60ft flow=2gpm",
      "wait length=60 ft 3/4 in pex flow=2 gpm",
      "wait pex ¾ 60 ft 2 gpm",
      "wait three quarter pex, 60 ft, shower 2 gpm",
      "how long is the wait for hot water through 60 ft of 3/4 pex at 2 gpm",
    ].map((typed): Case => ({ typed, topic: "wait", values: WAIT })),
    {
      typed: "wait 1 in copper L 60 ft 2 gpm",
      topic: "wait",
      values: { pipe: "copper_l", size: "1", length: ft(60), flow: gpm(2) },
    },
    { typed: "wait 3/4 pex 60 ft 2 gpm branch 1/2", topic: "wait", values: { ...WAIT, branch_size: "1/2" } },
    {
      typed: "size people=4 tank=80gal setpoint=135F",
      topic: "size",
      values: { people: 4, tank: gal(80), setpoint: F(135) },
    },
    { typed: "size 4 people 80 gal 135F", topic: "size", values: { people: 4, tank: gal(80), setpoint: F(135) } },
    { typed: "size 4people 80gal 135F", topic: "size", values: { people: 4, tank: gal(80), setpoint: F(135) } },
    { typed: "room 7x10x10 ft", topic: "room", values: { room: 700 * ft(1) ** 3 } },
    {
      typed: "room 700 cu ft, duct 6 in, 12 ft",
      topic: "room",
      values: { room: toBase(700, "ft3"), duct: toBase(6, "in"), duct_length: ft(12) },
    },
    {
      typed: "room 7'x10'x10' duct length 6'3\"",
      topic: "room",
      values: { room: 700 * ft(1) ** 3, duct_length: ft(6.25) },
    },
  ];
  test.each(cases)("$typed", ({ typed, topic, values }) => {
    const seen = read(typed);
    expect(seen.problems).toEqual([]);
    expect(seen.topic).toBe(topic);
    expect(Object.keys(seen.values).sort()).toEqual(Object.keys(values).sort());
    for (const [fact, value] of Object.entries(values))
      expect(seen.values[fact], fact).toEqual(typeof value === "number" ? expect.closeTo(value, 9) : value);
  });
});

describe("trade Spanish, with accents and without", () => {
  const cases: readonly (Case & { readonly options?: RequestOptions })[] = [
    ...[
      "expansión tanque de 80 galones, fría 50F, caliente 140F, 60 psi",
      "expansion tanque de 80 galones, fria 50F, caliente 140F, 60 psi",
      "EXPANSIÓN 80 GAL FRÍA 50 CALIENTE 140 PRESIÓN 60",
      "expansion tanque=80gal fría=50F caliente=140F presión=60psi",
      "¿qué tanque de expansión necesito para un calentador de 80 galones, agua fría a 50 F, caliente 140 F, línea 60 libras?",
      "expansion tank 80 gal, fria 50F, hot 140F, presion 60 psi",
      "agua de entrada 50 F, 140 F caliente, 80 gal y 60 libras de presion, expansion",
    ].map((typed) => ({ typed, topic: "expansion", values: EXPANSION, options: ES })),
    ...[
      "mezcla 135 a 120 con 50 de entrada",
      "mezcla 135 a 120 con 50",
      "mix 135 a 120, fria 50",
      "mezcla 135F a 120F c/ 50F",
    ].map((typed) => ({ typed, topic: "mix", values: MIX, options: ES })),
    ...[
      "circuito 4500 vatios a 208 voltios 60 pies",
      "circuito 4500W a 208V, tramo 60 pies",
      "circuito 4,500 vatios a 208 V y 60 pies",
    ].map((typed) => ({ typed, topic: "circuit", values: CIRCUIT, options: ES })),
    ...["espera 60 pies de pex de 3/4 a 2 gpm", "espera: tubo pex, medida 3/4, largo 60 pies, flujo 2 gpm"].map(
      (typed) => ({
        typed,
        topic: "wait",
        values: WAIT,
        options: ES,
      }),
    ),
    {
      typed: "expansion fria 10,5 caliente 57,3 tanque 300,5 L 4,1 bar",
      topic: "expansion",
      values: { cold: 10.5, setpoint: 57.3, tank: 300.5, line_pressure: 410 },
      options: SI,
    },
    {
      typed: "tamaño personas=4 tanque=80gal ajuste=135F",
      topic: "size",
      values: { people: 4, tank: gal(80), setpoint: F(135) },
      options: ES,
    },
    {
      typed: "tamano 4 personas, 80 galones, 135F",
      topic: "size",
      values: { people: 4, tank: gal(80), setpoint: F(135) },
      options: ES,
    },
    // Spanish words are understood while the language is English.
    {
      typed: "expansion tanque 80 gal fria 50F caliente 140F 60 psi",
      topic: "expansion",
      values: EXPANSION,
      options: EN,
    },
    { typed: "espera 60 pies de pex de 3/4 a 2 gpm", topic: "wait", values: WAIT, options: EN },
  ];
  test.each(cases)("$typed ($options.language)", ({ typed, topic, values, options }) => {
    const seen = read(typed, options);
    expect(seen.problems).toEqual([]);
    expect(seen.topic).toBe(topic);
    expect(Object.keys(seen.values).sort()).toEqual(Object.keys(values).sort());
    for (const [fact, value] of Object.entries(values))
      expect(seen.values[fact], fact).toEqual(typeof value === "number" ? expect.closeTo(value, 9) : value);
  });
});

describe("flags", () => {
  test.each([
    { typed: "expansion closed", values: { closed: true } },
    { typed: "expansion closed system", values: { closed: true } },
    { typed: "expansion not closed", values: { closed: false } },
    { typed: "expansion it's not a closed system", values: { closed: false } },
    { typed: "expansion isn’t closed", values: { closed: false } },
    { typed: "expansion closed=no", values: { closed: false } },
    { typed: "expansion closed: yes", values: { closed: true } },
    { typed: "expansion closed no, mixing valve yes", values: { closed: false, mixing_valve: true } },
    { typed: "expansion no mixing valve", values: { mixing_valve: false } },
    { typed: "expansion closed no mixing valve", values: { closed: true, mixing_valve: false } },
    { typed: "expansion without a check valve or mixer", values: { closed: false, mixing_valve: false } },
    { typed: "expansion w/o mixing valve", values: { mixing_valve: false } },
    { typed: "expansion don't have a mixing valve", values: { mixing_valve: false } },
    { typed: "expansion sin válvula", values: { mixing_valve: false } },
    { typed: "expansion no hay valvula mezcladora, cerrado", values: { mixing_valve: false, closed: true } },
    { typed: "expansion cerrado=sí", values: { closed: true } },
    { typed: "expansion sistema cerrado = no", values: { closed: false } },
    { typed: "room no louvre, door", values: { louvre: false, door: true } },
    { typed: "room louvered door", values: { louvre: true } },
  ])("$typed", ({ typed, values }) => {
    expect(read(typed)).toMatchObject({ values, problems: [] });
  });
});

describe("options whose word means something else too", () => {
  test.each([
    { typed: "expansion 80 gal tank", values: { tank: gal(80) } },
    { typed: "expansion none", values: {} },
    { typed: "expansion control=tank", values: { control: "tank" } },
    { typed: "expansion control: none", values: { control: "none" } },
    { typed: "expansion control none", values: { control: "none" } },
    { typed: "expansion growth control tank, tank 80 gal", values: { control: "tank", tank: gal(80) } },
    { typed: "expansion tank fitted, 80 gal", values: { control: "tank", tank: gal(80) } },
    { typed: "expansion drips", values: { control: "valve" } },
  ])("$typed", ({ typed, values }) => {
    const seen = read(typed);
    expect(seen.values).toEqual(values);
    expect(seen.problems).toEqual([]);
  });
});

describe("names and days", () => {
  test.each([
    { typed: "size model=HX-50 tank=80gal", values: { model: "HX-50", tank: gal(80) } },
    { typed: "size model=HX 50 setpoint=130F", values: { model: "HX 50", setpoint: F(130) } },
    { typed: 'size model="HX 50, tall" setpoint=130F', values: { model: "HX 50, tall", setpoint: F(130) } },
    { typed: "size model=“HX 50” 4 people", values: { model: "HX 50", people: 4 } },
    { typed: "size model='HX 50' 4 people", values: { model: "HX 50", people: 4 } },
    { typed: "size model HX 50, 4 people", values: { model: "HX 50", people: 4 } },
    { typed: "size model HX 50 people 4", values: { model: "HX 50", people: 4 } },
    { typed: "size 4 people model HX 50 130F", values: { model: "HX 50", people: 4, setpoint: F(130) } },
    { typed: "size place=Cold Spring model=it's-a-50", values: { place: "Cold Spring", model: "it's-a-50" } },
    { typed: "tamaño modelo=HX 50 personas=4", values: { model: "HX 50", people: 4 } },
    { typed: "away from 2026-12-01 until 12/15/2026", values: { start: "2026-12-01", end: "2026-12-15" } },
    { typed: "away start=2026-12-01 until=2026-12-15", values: { start: "2026-12-01", end: "2026-12-15" } },
    { typed: "away Dec 1, 2026, back 15 dec 2026", values: { start: "2026-12-01", end: "2026-12-15" } },
    {
      typed: "ausencia desde 1 dic 2026 hasta 15 de diciembre de 2026",
      values: { start: "2026-12-01", end: "2026-12-15" },
    },
    { typed: "away 2026-12-01 hold 14 days", values: { start: "2026-12-01", hold: toBase(14, "day") } },
  ])("$typed", ({ typed, values }) => {
    expect(read(typed)).toMatchObject({ values, problems: [] });
    expect(Object.keys(read(typed).values).sort()).toEqual(Object.keys(values).sort());
  });
});

describe("numbers without a unit", () => {
  test("say what they were read as", () => {
    const { readings } = read("mix 135 to 120 with 50F");
    expect(readings).toEqual([
      { fact: "wanted", typed: "120", readAs: "F" },
      { fact: "storage", typed: "135", readAs: "F" },
    ]);
  });
  test("take the unit of a reader of SI", () => {
    expect(read("mix 57 to 49 cold 10", { language: "en", units: "si" })).toMatchObject({
      values: { storage: 57, wanted: 49, cold: 10 },
      readings: [{ readAs: "C" }, { readAs: "C" }, { readAs: "C" }],
    });
  });
  test("keep what was typed", () => {
    expect(parseRequest("expansion tank = 80 gal", fixtureLibrary, EN).facts["tank"]).toEqual({
      value: gal(80),
      from: "asked",
      typed: "80 gal",
    });
  });
  test("0.8 as a share that starts at 10 % can only be 80 %", () => {
    expect(read("mix drawable=0.8").values).toEqual({ drawable: 0.8 });
  });
});

describe("what is ambiguous is asked, never guessed", () => {
  const ambiguous = (typed: string, candidates: readonly string[]) => ({ kind: "ambiguous", typed, candidates });
  test.each([
    { typed: "expansion 60F 70F", problems: [ambiguous("60F", ["cold"]), ambiguous("70F", ["cold"])] },
    { typed: "expansion 90F", problems: [ambiguous("90F", ["setpoint", "cold"])] },
    { typed: "expansion 80 gal tank 90", problems: [ambiguous("90", ["setpoint", "cold", "line_pressure"])] },
    { typed: "circuit 4500W 208V 30 A", problems: [ambiguous("30 A", ["breaker"])] },
    { typed: "circuit 4500W 30 a 208V", problems: [ambiguous("30 a", ["breaker"])] },
    {
      typed: "expansion 60 psi 150 psi",
      problems: [
        ambiguous("60 psi", ["line_pressure", "relief_setting"]),
        ambiguous("150 psi", ["line_pressure", "relief_setting"]),
      ],
    },
    { typed: "wait 60 ft 1 in pex", problems: [ambiguous("60 ft 1 in", ["length", "size"])] },
    { typed: "circuit not copper", problems: [ambiguous("not copper", ["metal"])] },
    { typed: "expansion 30 V", problems: [ambiguous("30 V", [])] },
    { typed: "expansion 120/240 V", problems: [ambiguous("120/240 V", [])] },
    { typed: "expansion 2x4500W", problems: [ambiguous("2x4500W", [])] },
  ])("$typed", ({ typed, problems }) => {
    const seen = read(typed);
    expect(seen.problems).toEqual(problems);
    for (const candidate of problems.flatMap(({ candidates }) => candidates))
      expect(seen.values).not.toHaveProperty(candidate);
  });

  test("a word between two values that fit it equally names neither: 90F cold 95F", () => {
    const seen = read("expansion 90F cold 95F");
    expect(seen.values).toEqual({});
    expect(seen.problems.map(({ kind }) => kind)).toEqual(["ambiguous", "ambiguous"]);
  });
  test("the range decides where only one value can be meant: 50F cold 140F", () => {
    expect(read("expansion 50F cold 140F")).toMatchObject({ values: { cold: F(50), setpoint: F(140) }, problems: [] });
  });
  test("the side on which words stand elsewhere decides: 80 gal tank 90F cold 95F", () => {
    expect(read("expansion 80 gal tank 90F cold 95F")).toMatchObject({
      values: { tank: gal(80), cold: F(90), setpoint: F(95) },
      problems: [],
    });
  });
  test("a comma parts a word from the next value: 50F cold, 90F", () => {
    expect(read("expansion 50F cold, 90F")).toMatchObject({ values: { cold: F(50), setpoint: F(90) }, problems: [] });
  });
  test("150 psi alone is not the relief setting once the line is told", () => {
    expect(read("expansion line 60 psi, 150 psi")).toMatchObject({
      values: { line_pressure: psi(60) },
      problems: [{ kind: "ambiguous", typed: "150 psi", candidates: ["relief_setting"] }],
    });
  });
  test("a capital A before another number is the unit: breaker 30 A 208V", () => {
    expect(read("circuit breaker 30 A 208V").values).toEqual({ breaker: 30, supply: 208 });
  });
  test("a little word gives way to a full one: to 140F, wanted 105F", () => {
    expect(read("mix to 140F, wanted 105F, cold 45F")).toMatchObject({
      values: { storage: F(140), wanted: F(105), cold: F(45) },
      problems: [],
    });
  });
  test("150 psi relief is the relief setting", () => {
    expect(read("expansion 60 psi, relief 150 psi").values).toEqual({
      line_pressure: psi(60),
      relief_setting: psi(150),
    });
  });
});

describe("what is wrong is named", () => {
  const bad = (fact: string, typed: string, because: string) => ({ kind: "bad-value", fact, typed, because });
  test.each([
    { typed: "expansion tank=big", problem: bad("tank", "big", "not-a-number") },
    { typed: "expansion tank=120/240V", problem: bad("tank", "120/240V", "not-a-number") },
    { typed: "expansion tank=60psi", problem: bad("tank", "60psi", "wrong-unit") },
    { typed: "expansion tank=80galx", problem: bad("tank", "80galx", "left-over") },
    { typed: "expansion closed=maybe", problem: bad("closed", "maybe", "unknown-option") },
    { typed: "circuit metal=tin", problem: bad("metal", "tin", "unknown-option") },
    { typed: "circuit wire=9", problem: bad("wire", "9", "unknown-option") },
    { typed: "circuit supply 30 gal", problem: bad("supply", "30 gal", "wrong-unit") },
    { typed: "expansion tank=7x10x10ft cold=7x10x10ft", problem: bad("cold", "7x10x10ft", "wrong-unit") },
    { typed: "wait length=7x10 ft", problem: bad("length", "7x10 ft", "wrong-unit") },
    { typed: "away start=tomorrow", problem: bad("start", "tomorrow", "not-a-day") },
    { typed: "away start=2026-02-30", problem: bad("start", "2026-02-30", "not-a-day") },
    { typed: "away hold=30", problem: bad("hold", "30", "wrong-unit") },
    { typed: "expansion hot 140F hot 150F", problem: { kind: "twice", fact: "setpoint" } },
    { typed: "expansion tank=80gal tank=50gal", problem: { kind: "twice", fact: "tank" } },
    { typed: "expansion 80 gal, 50 gal", problem: { kind: "twice", fact: "tank" } },
    { typed: "circuit copper aluminum", problem: { kind: "twice", fact: "metal" } },
  ])("$typed", ({ typed, problem }) => {
    const seen = read(typed);
    expect(seen.problems).toContainEqual(problem);
    expect(seen.values).not.toHaveProperty(problem.fact);
  });

  test("the same value twice is no problem", () => {
    expect(read("expansion tank=80gal, 80 gal tank")).toMatchObject({ values: { tank: gal(80) }, problems: [] });
  });
  test("1.250 L is 1250 L for readers of the comma where a tank of 1.25 L is out of range", () => {
    expect(read("expansion tanque=1.250 L", ES)).toMatchObject({ values: { tank: 1250 }, problems: [] });
  });
  test("4.500 W stays open for readers of the comma where both are in range", () => {
    const problem = bad("element", "4.500 W", "two-readings");
    for (const typed of ["circuito 4.500 W", "circuito elemento=4.500 W"])
      expect(read(typed, ES)).toEqual({ topic: "circuit", values: {}, problems: [problem], readings: [] });
  });
});

describe("unknown words", () => {
  const unknown = (word: string, nearest: readonly string[]) => ({ kind: "unknown-word", word, nearest });
  test.each([
    { typed: "expansion 80 gal tnak", problem: unknown("tnak", ["tank"]) },
    { typed: "expansion 80 galons tank", problem: unknown("galons", ["gallons", "galon", "galones"]) },
    { typed: "expansion tank=80 galons", problem: unknown("galons", ["gallons", "galon", "galones"]) },
    { typed: "expansion presure 60 psi", problem: unknown("presure", ["pressure"]) },
    { typed: "expansion colour=blue", problem: unknown("colour", []) },
    { typed: "expansion presion=60psi tanke=80gal", problem: unknown("tanke", ["tank"]) },
    { typed: "wait 60 ft pecs", problem: unknown("pecs", []) },
    { typed: "circuit 4500W with a mixing valve", problem: unknown("mixing valve", []) },
    { typed: "expansion zorp 80 gal", problem: unknown("zorp", []) },
  ])("$typed", ({ typed, problem }) => {
    expect(read(typed).problems).toContainEqual(problem);
  });

  test("a bare number before an unknown word waits for the word", () => {
    const seen = read("expansion tank 80 galons");
    expect(seen.values).toEqual({});
    expect(seen.problems).toMatchObject([{ word: "galons" }]);
  });
  test("what stands behind an unknown key is no value of another fact", () => {
    expect(read("expansion colour=60psi").values).toEqual({});
  });
  test("a hundred unknown words give a handful of problems", () => {
    const words = Array.from(
      { length: 100 },
      (_, index) => `zorp${"abcdefghij"[index % 10]}${"klmnopqrst"[Math.floor(index / 10)]}`,
    );
    expect(read(`expansion ${words.join(" ")}`).problems).toHaveLength(5);
  });
});

describe("the topic", () => {
  test.each([
    { typed: "expnsion 80 gal", word: "expnsion", nearest: ["expansion"] },
    { typed: "mxi 135 to 120", word: "mxi", nearest: ["mix"] },
    { typed: "circiut 4500W", word: "circiut", nearest: ["circuit", "circuito"] },
    { typed: "80 gal expantion", word: "expantion", nearest: ["expansion"] },
    { typed: "zorp 80 gal", word: "zorp", nearest: [] },
    { typed: "element 4500W", word: "element", nearest: ["circuit"] },
    { typed: "elemnet 4500W", word: "elemnet", nearest: ["circuit"] },
  ])("$typed is not known", ({ typed, word, nearest }) => {
    expect(read(typed)).toEqual({
      topic: undefined,
      values: {},
      problems: [{ kind: "unknown-word", word, nearest }],
      readings: [],
    });
  });
  test("values alone name no topic", () => {
    expect(read("80 gal 60 psi")).toEqual({ topic: undefined, values: {}, problems: [], readings: [] });
  });
  test.each(["", " ", "\u200d", "?"])("nothing is read from '%s'", (typed) => {
    expect(read(typed)).toEqual({ topic: undefined, values: {}, problems: [], readings: [] });
  });
  test("a known topic takes a follow-up", () => {
    expect(read("hot 150", { ...EN, topic: "mix" })).toMatchObject({ topic: "mix", values: { storage: F(150) } });
  });
  test("a known topic may be named again", () => {
    expect(read("mix hot 150", { ...EN, topic: "mix" })).toMatchObject({ topic: "mix", values: { storage: F(150) } });
  });
  test("another topic's word at the beginning changes the topic", () => {
    expect(read("mix 140 to 110", { ...EN, topic: "expansion" })).toMatchObject({
      topic: "mix",
      values: { storage: F(140) },
    });
  });
  test("another topic's word further on does not", () => {
    expect(read("hot 150, wait", { ...EN, topic: "mix" })).toMatchObject({ topic: "mix", values: { storage: F(150) } });
  });
  test("a word of the known topic wins over another topic's name: room 700 ft3 in 'room'", () => {
    expect(read("size 3/4", { ...EN, topic: "wait" })).toMatchObject({ topic: "wait", values: { size: "3/4" } });
  });
  test("an id that is no topic is passed over", () => {
    expect(read("mix 135", { ...EN, topic: "gone" })).toMatchObject({ topic: "mix" });
  });
  test("words that objects inherit are no topics and no facts", () => {
    expect(read("constructor toString=1 __proto__").topic).toBeUndefined();
    expect(read("mix constructor=1 __proto__ hasOwnProperty").values).toEqual({});
  });
});

test.each(
  (["en", "es"] as const).flatMap((language) =>
    [...fixtureLibrary.texts[language].topics].flatMap(([topic, { examples }]) =>
      examples.map((example) => ({ language, topic, example })),
    ),
  ),
)("the example '$example' is about $topic and has no problem", ({ language, topic, example }) => {
  expect(read(example, { language, units: "us" })).toMatchObject({ topic, problems: [] });
});
