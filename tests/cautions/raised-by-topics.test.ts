import { describe, expect, test } from "vitest";
import type { FactValue } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { toBase } from "../../src/units/convert.ts";
import { library } from "../support/ask-library.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const F = (value: number) => toBase(value, "F");
const psi = (value: number) => toBase(value, "psi");
const HOUSE = { tank: 300, setpoint: F(125), line_pressure: psi(60) };
const LINE = { pipe: "copper_l", size: "3/4", length: 15, flow: 0.1 };
const WIRE = { element: 4500, supply: 240 };
const MIX = { setpoint: F(140), wanted: F(120) };

/** What the topic raises beyond what its plain facts raise. */
function raised(topic: string, facts: Readonly<Record<string, FactValue>>): readonly string[] {
  const declared = library.topics.get(topic);
  if (declared === undefined) throw new Error(`no topic ${topic}`);
  const known = Object.fromEntries(Object.entries(facts).map(([id, value]) => [id, { value, from: "asked" as const }]));
  return runTopic(declared, known, fixtureBooks, library.cautions, () => undefined).cautions.map(({ id }) => id);
}

const CASES: readonly (readonly [
  string,
  string,
  Readonly<Record<string, FactValue>>,
  Readonly<Record<string, FactValue>>,
])[] = [
  ["hot_storage_without_mixing_valve", "mix", MIX, { mixing_valve: false }],
  ["tap_above_limit", "mix", MIX, { wanted: F(125) }],
  ["storage_above_tap_limit", "mix", { ...MIX, mixing_valve: true }, { mixing_valve: false, setpoint: F(130) }],
  ["storage_in_growth_range", "expansion", HOUSE, { setpoint: F(105) }],
  ["storage_below_hygiene_advice", "expansion", HOUSE, { setpoint: F(120) }],
  ["closed_without_expansion_control", "expansion", HOUSE, { control: "none" }],
  ["relief_as_expansion_control", "expansion", HOUSE, { control: "relief_valve" }],
  ["line_pressure_high", "expansion", HOUSE, { line_pressure: psi(90) }],
  ["relief_setting_high", "expansion", HOUSE, { relief_setting: psi(175) }],
  ["supply_below_element_rating", "circuit", WIRE, { supply: 208 }],
  ["supply_above_element_rating", "circuit", WIRE, { rated_volts: 208 }],
  ["breaker_below_continuous_load", "circuit", WIRE, { breaker: 20 }],
  ["breaker_above_limit", "circuit", WIRE, { breaker: 40 }],
  ["wire_below_continuous_load", "circuit", WIRE, { wire: "12" }],
  ["voltage_drop_high", "circuit", WIRE, { run: toBase(200, "ft") }],
  ["aluminium_conductor", "circuit", WIRE, { wire_metal: "aluminium" }],
  ["hot_velocity_high", "wait", LINE, { flow: toBase(9, "gpm") }],
  ["cold_velocity_high", "wait", LINE, { flow: toBase(14, "gpm"), water: "cold" }],
  ["hot_water_waits_in_pipe", "wait", { ...LINE, length: 3 }, { length: 15 }],
];

describe.each(CASES)("%s", (id, topic, plain, change) => {
  test(`is raised by ${topic} for ${JSON.stringify(change)}`, () =>
    expect(raised(topic, { ...plain, ...change })).toContain(id));
  test(`is not raised by ${topic} for plain facts`, () => expect(raised(topic, plain)).not.toContain(id));
});

test("a refused request raises nothing: 150 °F wanted from 140 °F", () => {
  expect(raised("mix", { ...MIX, wanted: F(150), mixing_valve: false })).toEqual([]);
});

test("the worst comes first: scalding from the tank before the tap over its limit", () => {
  expect(raised("mix", { ...MIX, wanted: F(130), mixing_valve: false })).toEqual([
    "hot_storage_without_mixing_valve",
    "tap_above_limit",
  ]);
});
