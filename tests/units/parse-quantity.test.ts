import { describe, expect, test } from "vitest";
import { toBaseOf } from "../../src/units/convert.ts";
import { parseQuantity, type QuantityOptions, type QuantityProblem } from "../../src/units/parse-quantity.ts";
import { QUANTITY_KINDS, type QuantityKind } from "../../src/units/quantity-kinds.ts";
import { describeUnit, UNIT_IDS, type UnitId } from "../../src/units/unit-table.ts";

const US: QuantityOptions = { units: "us", decimal: "point" };
const SI: QuantityOptions = { units: "si", decimal: "point" };
const ES: QuantityOptions = { units: "us", decimal: "comma" };

interface Case {
  readonly typed: string;
  readonly kind: QuantityKind;
  readonly is: number;
  readonly unit: UnitId;
}

describe("what crews type", () => {
  const cases: readonly Case[] = [
    ...["80 gal", "80gal", "80-gal", "80 gallons", "80 Gallon", "80 GAL.", "80 galones", "80 galón", "80 gals"].map(
      (typed): Case => ({ typed, kind: "volume", is: 80, unit: "gal" }),
    ),
    ...["300 L", "300l", "300 litros", "300 liters", "300 lts."].map(
      (typed): Case => ({ typed, kind: "volume", is: 300, unit: "L" }),
    ),
    ...["135F", "135 F", "135f", "135°F", "135 °F", "135ºF", "135 ° F", "135 deg F", "135 degF", "135 degrees F"].map(
      (typed): Case => ({ typed, kind: "temperature", is: 135, unit: "F" }),
    ),
    ...["135 degrees Fahrenheit", "135 fahrenheit", "135 grados F", "135 grados fahrenheit", "135℉"].map(
      (typed): Case => ({ typed, kind: "temperature", is: 135, unit: "F" }),
    ),
    ...["57 C", "57C", "57c", "57°C", "57 ºC", "57 deg. C", "57 celsius", "57 grados centígrados", "57℃"].map(
      (typed): Case => ({ typed, kind: "temperature", is: 57, unit: "C" }),
    ),
    ...["60 psi", "60psi", "60 PSI", "60 psig", "60 lb/in²", "60 libras", "60 lbs", "60#", "60 pounds"].map(
      (typed): Case => ({ typed, kind: "pressure", is: 60, unit: "psi" }),
    ),
    { typed: "414 kPa", kind: "pressure", is: 414, unit: "kPa" },
    { typed: "4.1 bar", kind: "pressure", is: 4.1, unit: "bar" },
    { typed: "10 ft of head", kind: "pressure", is: 10, unit: "ft_wc" },
    ...["4500W", "4500 w", "4500 watts", "4,500 W", "4500-watt", "4500 vatios"].map(
      (typed): Case => ({ typed, kind: "power", is: 4500, unit: "W" }),
    ),
    { typed: "4.5 kW", kind: "power", is: 4.5, unit: "kW" },
    ...["40000 Btu/h", "40,000 BTUH", "40,000 btu/hr", "40000 Btu", "40,000 BTUs", "40000 btu por hora"].map(
      (typed): Case => ({ typed, kind: "heat_rate", is: 40_000, unit: "Btu_h" }),
    ),
    ...["40 kBtu/h", "40 MBH", "40k btu/h", "40k BTU"].map(
      (typed): Case => ({ typed, kind: "heat_rate", is: 40, unit: "kBtu_h" }),
    ),
    ...["240V", "240 v", "240 volts", "240 VAC", "240 voltios"].map(
      (typed): Case => ({ typed, kind: "voltage", is: 240, unit: "V" }),
    ),
    ...["30A", "30 a", "30 amps", "30-amp", "30 amperios", "30 Amp."].map(
      (typed): Case => ({ typed, kind: "current", is: 30, unit: "A" }),
    ),
    ...["12.9 ohm", "12.9 ohms", "12.9Ω", "12.9 \u2126", "12.9 ohmios", "12,9 ohmios"].map(
      (typed): Case => ({ typed, kind: "resistance", is: 12.9, unit: "ohm" }),
    ),
    ...["60 ft", "60ft", "60'", "60’", "60 feet", "60 foot", "60-foot", "60 pies", "60 lin ft", "60 LF"].map(
      (typed): Case => ({ typed, kind: "length", is: 60, unit: "ft" }),
    ),
    ...["18 m", "18m", "18 metros", "18 meters", "18 mts"].map(
      (typed): Case => ({ typed, kind: "length", is: 18, unit: "m" }),
    ),
    ...[
      "3/4 in",
      '3/4"',
      "3/4”",
      "3/4 inch",
      "3/4-inch",
      "3/4 pulgada",
      "¾ in",
      "¾”",
      "3/4''",
      "0.75 in",
      ".75 in.",
    ].map((typed): Case => ({ typed, kind: "dimension", is: 0.75, unit: "in" })),
    ...['1-1/2"', "1 1/2 in", "1½ in", "1-1/2 pulgadas", "1.5 inches", "1,5 pulg"].map(
      (typed): Case => ({ typed, kind: "dimension", is: 1.5, unit: "in" }),
    ),
    { typed: "22 mm", kind: "dimension", is: 22, unit: "mm" },
    { typed: "2.2 cm", kind: "dimension", is: 2.2, unit: "cm" },
    ...[
      "700 ft³",
      "700 ft3",
      "700ft3",
      "700 cu ft",
      "700 cuft",
      "700 cu. ft.",
      "700 cubic feet",
      "700 pies cúbicos",
    ].map((typed): Case => ({ typed, kind: "room_volume", is: 700, unit: "ft3" })),
    ...["20 m³", "20 m3", "20 m^3", "20 cubic meters", "20 metros cúbicos"].map(
      (typed): Case => ({ typed, kind: "room_volume", is: 20, unit: "m3" }),
    ),
    ...["120 sq ft", "120 ft²", "120 ft2", "120 sqft", "120 square feet", "120 pies cuadrados", "120 sq. ft."].map(
      (typed): Case => ({ typed, kind: "area", is: 120, unit: "ft2" }),
    ),
    ...["240 sq in", "240 in²", "240 in2", "240 square inches", "240 pulgadas cuadradas"].map(
      (typed): Case => ({ typed, kind: "opening_area", is: 240, unit: "in2" }),
    ),
    { typed: "1500 cm²", kind: "opening_area", is: 1500, unit: "cm2" },
    ...["2 gpm", "2gpm", "2 GPM", "2 gal/min", "2 gallons per minute", "2 galones por minuto"].map(
      (typed): Case => ({ typed, kind: "water_flow", is: 2, unit: "gpm" }),
    ),
    ...["7.5 L/min", "7.5 lpm", "7.5 litros por minuto", "7,5 l/min"].map(
      (typed): Case => ({ typed, kind: "water_flow", is: 7.5, unit: "L_min" }),
    ),
    ...["21 gph", "21 gal/h", "21 gal/hr", "21 gallons per hour", "21 galones por hora"].map(
      (typed): Case => ({ typed, kind: "recovery", is: 21, unit: "gph" }),
    ),
    { typed: "80 L/h", kind: "recovery", is: 80, unit: "L_h" },
    ...["350 cfm", "350 CFM", "350 ft³/min", "350 cubic feet per minute", "350 pcm"].map(
      (typed): Case => ({ typed, kind: "airflow", is: 350, unit: "cfm" }),
    ),
    { typed: "600 m³/h", kind: "airflow", is: 600, unit: "m3_h" },
    { typed: "165 L/s", kind: "airflow", is: 165, unit: "L_s" },
    ...["45 s", "45s", "45 sec", "45 seconds", "45 segundos", "45 seg."].map(
      (typed): Case => ({ typed, kind: "time", is: 45, unit: "s" }),
    ),
    ...["3 min", "3 minutes", "3 minutos", "3 m"].map((typed): Case => ({ typed, kind: "time", is: 3, unit: "min" })),
    ...["2 h", "2 hr", "2 hrs", "2 hours", "2 horas"].map((typed): Case => ({ typed, kind: "time", is: 2, unit: "h" })),
    ...["14 days", "14 d", "14 días", "14 dias"].map((typed): Case => ({ typed, kind: "time", is: 14, unit: "day" })),
    ...["5 ft/s", "5 fps", "5 feet per second", "5 pies por segundo"].map(
      (typed): Case => ({ typed, kind: "velocity", is: 5, unit: "ft_s" }),
    ),
    { typed: "1.5 m/s", kind: "velocity", is: 1.5, unit: "m_s" },
    { typed: "680 lb", kind: "mass", is: 680, unit: "lb" },
    { typed: "680 lbs.", kind: "mass", is: 680, unit: "lb" },
    { typed: "308 kg", kind: "mass", is: 308, unit: "kg" },
    ...[
      "0.3 in wc",
      "0.3 in. w.c.",
      "0.3 in w.g.",
      '0.3" wc',
      "0.3”wc",
      "0.3 inches of water",
      "0.3 pulgadas de agua",
    ].map((typed): Case => ({ typed, kind: "air_pressure", is: 0.3, unit: "in_wc" })),
    { typed: "75 Pa", kind: "air_pressure", is: 75, unit: "Pa" },
    ...["3 ACH", "3ach50", "3 ACH50", "3 air changes per hour", "3 renovaciones por hora"].map(
      (typed): Case => ({ typed, kind: "air_change", is: 3, unit: "per_h" }),
    ),
    { typed: "1500 cfm50", kind: "airflow", is: 1500, unit: "cfm" },
    ...["70%", "70 %", "70 percent", "70 por ciento", "70 pct"].map(
      (typed): Case => ({ typed, kind: "share", is: 70, unit: "percent" }),
    ),
    ...["$1,200", "$ 1200", "1200 dollars", "1200 dólares", "US$1200", "1200 USD"].map(
      (typed): Case => ({ typed, kind: "money", is: 1200, unit: "usd" }),
    ),
    ...["$0.14/kWh", "0.14 $/kWh", "$0.14 per kWh", "$.14/kwh", "$0.14 por kWh", "0.14 dollars per kWh"].map(
      (typed): Case => ({ typed, kind: "energy_price", is: 0.14, unit: "usd_kWh" }),
    ),
    ...["14 ¢/kWh", "14¢/kWh", "14 cents/kWh", "14 c/kWh", "14 centavos por kWh"].map(
      (typed): Case => ({ typed, kind: "energy_price", is: 14, unit: "cent_kWh" }),
    ),
    { typed: "12 kWh", kind: "energy", is: 12, unit: "kWh" },
    { typed: "1000 Btu", kind: "energy", is: 1000, unit: "Btu" },
    { typed: "45 MJ", kind: "energy", is: 45, unit: "MJ" },
    ...["55 dBA", "55 dB", "55 dB(A)", "55 decibels"].map(
      (typed): Case => ({ typed, kind: "sound", is: 55, unit: "dBA" }),
    ),
    { typed: "983 kg/m³", kind: "density", is: 983, unit: "kg_m3" },
    ...["40 psf", "40 lb/sq ft", "40 lb/ft²"].map(
      (typed): Case => ({ typed, kind: "floor_load", is: 40, unit: "lb_ft2" }),
    ),
    { typed: "61.4 lb/ft³", kind: "density", is: 61.4, unit: "lb_ft3" },
    { typed: "3 W/K", kind: "heat_loss_coefficient", is: 3, unit: "W_K" },
    ...["6 Btu/h·°F", "6 Btu/(h·°F)", "6 btu/hr-f"].map(
      (typed): Case => ({ typed, kind: "heat_loss_coefficient", is: 6, unit: "Btu_h_F" }),
    ),
    ...["10 F", "10 °F", "10 degrees F"].map(
      (typed): Case => ({ typed, kind: "temperature_difference", is: 10, unit: "F_diff" }),
    ),
    ...["6 K", "6 °C", "6 C"].map((typed): Case => ({ typed, kind: "temperature_difference", is: 6, unit: "K" })),
    { typed: "~80 gal", kind: "volume", is: 80, unit: "gal" },
    { typed: "-5 °C", kind: "temperature", is: -5, unit: "C" },
    { typed: "\u200f80\u00a0gal\u200d", kind: "volume", is: 80, unit: "gal" },
  ];
  test.each(cases)("$typed as $kind", ({ typed, kind, is, unit }) => {
    expect(parseQuantity(typed, kind, US)).toEqual({ ok: true, value: toBaseOf(kind, is, unit) });
  });
});

describe("every spelling of the table", () => {
  const spelt = UNIT_IDS.flatMap((id) => {
    const { spellings, kinds, symbol } = describeUnit(id);
    const all = symbol === "" ? spellings : [...spellings, symbol, id];
    return all.map((spelling) => ({ id, spelling, kind: kinds[0] ?? "count" }));
  });
  test.each(spelt)("12 $spelling is $id", ({ id, spelling, kind }) => {
    expect(parseQuantity(`12 ${spelling}`, kind, US)).toEqual({ ok: true, value: toBaseOf(kind, 12, id) });
  });

  test("no two units share a first spelling", () => {
    const uses = UNIT_IDS.flatMap((id) => describeUnit(id).spellings);
    expect(uses.filter((spelling, index) => uses.indexOf(spelling) !== index)).toEqual([]);
  });

  test("every kind has its display units in the table, with the same base", () => {
    const wrong = Object.entries(QUANTITY_KINDS).filter(
      ([, { base, us, si }]) => describeUnit(us).base !== base || describeUnit(si).base !== base,
    );
    expect(wrong).toEqual([]);
  });
});

describe("feet and inches", () => {
  const ways = [
    ...[
      "6'3\"",
      "6’3”",
      "6′3″",
      "6' 3\"",
      "6'-3\"",
      "6' - 3\"",
      "6'3''",
      "6 ft 3 in",
      "6ft 3in",
      "6ft3in",
      "6 ft. 3 in.",
    ],
    ...["6 feet 3 inches", "6 foot 3", "6ft3", "6'3", "6'-3", "6' 3", "6 ft 3", "6-ft 3-in", "6 pies 3 pulgadas"],
    ...[
      "6 pies y 3 pulgadas",
      "6 feet and 3 inches",
      "6 ft, 3 in",
      "6\u00a0ft\u00a03\u00a0in",
      "75 in",
      "6.25 ft",
      "6-1/4 ft",
    ],
  ];
  test.each(ways)("%s is 1.905 m", (typed) => {
    const parsed = parseQuantity(typed, "length", US);
    expect(parsed).toEqual({ ok: true, value: expect.closeTo(1.905, 12) });
  });

  test.each([
    { typed: "6' 3 1/2\"", value: 1.9177 },
    { typed: "6'3-1/2\"", value: 1.9177 },
    { typed: "6' 3½”", value: 1.9177 },
    { typed: "6 ft 3.5 in", value: 1.9177 },
    { typed: "6' 1/2\"", value: 1.8415 },
    { typed: "0' 11\"", value: 0.2794 },
  ])("$typed is $value m", ({ typed, value }) => {
    expect(parseQuantity(typed, "length", US)).toEqual({ ok: true, value: expect.closeTo(value, 12) });
  });

  test.each(["6' 12\"", "6' 15\"", "6.5' 3\"", "6' 3' 2\"", "6' 3 gal"])("%s is no length", (typed) => {
    expect(parseQuantity(typed, "length", US)).toMatchObject({ ok: false, problem: "left-over" });
  });
});

describe("times in parts", () => {
  test.each([
    { typed: "1 min 12 s", value: 72 },
    { typed: "1min12s", value: 72 },
    { typed: "1 h 30 min", value: 5400 },
    { typed: "1h30", value: 5400 },
    { typed: "1 hour and 30 minutes", value: 5400 },
    { typed: "1 hora y 30 minutos", value: 5400 },
    { typed: "2 h 5 m", value: 7500 },
    { typed: "3 days 4 h", value: 273_600 },
    { typed: "3 días 4 h", value: 273_600 },
    { typed: "1.5 h", value: 5400 },
    { typed: "90 min", value: 5400 },
  ])("$typed is $value s", ({ typed, value }) => {
    expect(parseQuantity(typed, "time", US)).toEqual({ ok: true, value });
  });

  test("30 alone may be seconds or minutes, so its unit is missing", () => {
    expect(parseQuantity("30", "time", US)).toEqual({ ok: false, problem: "wrong-unit" });
  });
  test("1 h 75 min is no time", () => {
    expect(parseQuantity("1 h 75 min", "time", US)).toMatchObject({ ok: false, problem: "left-over" });
  });
});

describe("products of sides", () => {
  const ROOM_m3 = 700 * 0.3048 ** 3;
  test.each(["7x10x10 ft", "7' x 10' x 10'", "7 × 10 × 10 ft", "7 ft x 10 x 10", "7*10*10 ft", "7 by 10 by 10 feet"])(
    "%s is a room of 700 ft3",
    (typed) => {
      expect(parseQuantity(typed, "room_volume", US)).toEqual({ ok: true, value: expect.closeTo(ROOM_m3, 10) });
    },
  );
  test.each([
    "7ftx10ftx10ft",
    "7'x10'x10'",
    "7’x10’x10’",
    "7 x 10 x 10 pies",
    "7 por 10 por 10 pies",
    "84 in x 10 ft x 10 ft",
  ])("%s is a room of 700 ft3 too", (typed) => {
    expect(parseQuantity(typed, "room_volume", US)).toEqual({ ok: true, value: expect.closeTo(ROOM_m3, 10) });
  });

  test("a bare product takes the reader's unit of length, and says so", () => {
    expect(parseQuantity("7x10x10", "room_volume", US)).toEqual({
      ok: true,
      value: expect.closeTo(ROOM_m3, 10),
      readAs: "ft",
    });
    expect(parseQuantity("2x3x3", "room_volume", SI)).toEqual({ ok: true, value: 18, readAs: "m" });
  });
  test("feet and inches are multiplied", () => {
    const parsed = parseQuantity("7'6\" x 10'", "area", US);
    expect(parsed).toEqual({ ok: true, value: expect.closeTo(75 * 0.3048 ** 2, 10) });
  });
  test("a grille of 14 x 8 in is an opening", () => {
    const parsed = parseQuantity("14 x 8 in", "opening_area", US);
    expect(parsed).toEqual({ ok: true, value: expect.closeTo(112 * 0.0254 ** 2, 10) });
  });
  test.each([
    { typed: "7x10x10 ft", kind: "length" },
    { typed: "7x10 ft", kind: "length" },
    { typed: "7x10 ft", kind: "room_volume" },
    { typed: "7x10x10 ft", kind: "area" },
    { typed: "2 x 4500W", kind: "power" },
    { typed: "7x10x10 gal", kind: "room_volume" },
  ] as const)("$typed is no $kind", ({ typed, kind }) => {
    expect(parseQuantity(typed, kind, US)).toEqual({ ok: false, problem: "wrong-unit" });
  });
  test("four sides are no room", () => {
    expect(parseQuantity("2x3x4x5 ft", "room_volume", US)).toEqual({ ok: false, problem: "not-a-number" });
  });
});

describe("a number without a unit", () => {
  test.each([
    { typed: "135", kind: "temperature", options: US, value: toBaseOf("temperature", 135, "F"), readAs: "F" },
    { typed: "57", kind: "temperature", options: SI, value: 57, readAs: "C" },
    { typed: "135 degrees", kind: "temperature", options: US, value: toBaseOf("temperature", 135, "F"), readAs: "F" },
    { typed: "57 grados", kind: "temperature", options: SI, value: 57, readAs: "C" },
    { typed: "140°", kind: "temperature", options: US, value: 60, readAs: "F" },
    { typed: "3/4", kind: "dimension", options: US, value: toBaseOf("dimension", 0.75, "in"), readAs: "in" },
    { typed: "3/4", kind: "dimension", options: SI, value: toBaseOf("dimension", 0.75, "in"), readAs: "in" },
    { typed: "22", kind: "dimension", options: SI, value: 0.022, readAs: "mm" },
    { typed: "70", kind: "share", options: US, value: 0.7, readAs: "percent" },
  ] as const)("$typed is read as $readAs", ({ typed, kind, options, value, readAs }) => {
    expect(parseQuantity(typed, kind, options)).toEqual({ ok: true, value, readAs });
  });

  test("a count has no unit to be read as", () => {
    expect(parseQuantity("4", "count", US)).toEqual({ ok: true, value: 4 });
  });
});

describe("figures that can be read two ways", () => {
  test.each([
    { typed: "0.7", kind: "share", options: US },
    { typed: "1", kind: "share", options: US },
    { typed: "1.250 L", kind: "volume", options: ES },
    { typed: "1.250", kind: "pressure", options: ES },
  ] as const)("$typed as $kind stays open", ({ typed, kind, options }) => {
    expect(parseQuantity(typed, kind, options)).toEqual({ ok: false, problem: "two-readings" });
  });

  test.each([
    { name: "0.7 is 70 % where 0.7 % is too little", typed: "0.7", kind: "share", range: [0.1, 1], value: 0.7 },
    {
      name: "1.250 L is 1250 L where 1.25 L is too little",
      typed: "1.250 L",
      kind: "volume",
      range: [50, 2000],
      value: 1250,
    },
    {
      name: "1.250 L is 1.25 L where 1250 L is too much",
      typed: "1.250 L",
      kind: "volume",
      range: [0, 10],
      value: 1.25,
    },
    { name: "1,250 L is 1250 L where both fit", typed: "1,250 L", kind: "volume", range: [0, 2000], value: 1250 },
    {
      name: "1,250 L is 1.25 L where 1250 L is too much",
      typed: "1,250 L",
      kind: "volume",
      range: [0, 10],
      value: 1.25,
    },
  ] as const)("$name", ({ typed, kind, range: [min, max], value }) => {
    expect(parseQuantity(typed, kind, { ...ES, range: { min, max } })).toMatchObject({ ok: true, value });
  });
});

describe("what cannot be read", () => {
  const cases: readonly { typed: string; kind: QuantityKind; problem: QuantityProblem; rest?: string }[] = [
    { typed: "", kind: "volume", problem: "not-a-number" },
    { typed: "big", kind: "volume", problem: "not-a-number" },
    { typed: "gal 80", kind: "volume", problem: "not-a-number" },
    { typed: "120/240V", kind: "voltage", problem: "not-a-number" },
    { typed: "120-140 F", kind: "temperature", problem: "not-a-number" },
    { typed: "80 psi", kind: "volume", problem: "wrong-unit" },
    { typed: "135", kind: "time", problem: "wrong-unit" },
    { typed: "4%", kind: "count", problem: "wrong-unit" },
    { typed: "80 galons", kind: "volume", problem: "left-over", rest: "galons" },
    { typed: "80 gal tank", kind: "volume", problem: "left-over", rest: "tank" },
    { typed: "80 gal 60 psi", kind: "volume", problem: "left-over", rest: "60 psi" },
    { typed: "5 gal/flush", kind: "volume", problem: "left-over", rest: "gal/flush" },
    { typed: "NaN", kind: "volume", problem: "not-a-number" },
    { typed: "Infinity", kind: "volume", problem: "not-a-number" },
    { typed: "1e5", kind: "volume", problem: "left-over", rest: "e5" },
  ];
  test.each(cases)("'$typed' as $kind: $problem", ({ typed, kind, problem, rest }) => {
    expect(parseQuantity(typed, kind, US)).toEqual({ ok: false, problem, ...(rest !== undefined && { rest }) });
  });
});

describe("6ft3", () => {
  test("is six feet three inches as a length", () => {
    expect(parseQuantity("6ft3", "length", US)).toEqual({ ok: true, value: expect.closeTo(1.905, 12) });
  });
  test("is six cubic feet as a room", () => {
    expect(parseQuantity("6ft3", "room_volume", US)).toEqual({ ok: true, value: toBaseOf("room_volume", 6, "ft3") });
  });
  test("is no length once a space parts the unit: 6 ft3", () => {
    expect(parseQuantity("6 ft3", "length", US)).toEqual({ ok: false, problem: "wrong-unit" });
  });
});
