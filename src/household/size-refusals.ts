import type { Books } from "../books/books.ts";
import { type FindingOf, type FindingSpecs, type OutOfRange, q } from "../declaration/answer.ts";
import { type Found, findByName, findModel } from "../equipment/find-model.ts";
import { LEAST_SOURCE_W } from "../equipment/generic-unit.ts";
import type { findUnit, SizeCase, SizeFacts } from "./size-case.ts";
import { modesOf } from "./unit-case.ts";

/** Why a household's facts cannot be worked with. */
export const SIZE_REFUSALS = {
  unknown_model: { typed: "word", nearest: "word" },
  no_catalogue: { typed: "word" },
  unknown_place: { typed: "word", nearest: "word" },
  no_source: {},
  setpoint_outside_unit: { setpoint: "temperature", lowest: "temperature", highest: "temperature" },
  mode_only_heat_pump: {},
  mode_only_elements: {},
  mode_not_offered: {},
  supply_unfit: { supply: "voltage", made_for: "word" },
  wanted_above_storage: { wanted: "temperature", setpoint: "temperature" },
  cold_above_wanted: { cold: "temperature", wanted: "temperature" },
} as const satisfies FindingSpecs;
type Reason = FindingOf<typeof SIZE_REFUSALS>;
type Refusal = OutOfRange<Reason>;
type Unit = ReturnType<typeof findUnit>;

/** Supplies differ from their names by this much and are still meant: 230 for 240, 115 for 120 (judgement). */
const SUPPLY_TOLERANCE = 0.06;
/** Room for rounding between units. */
const HAIR_K = 1e-6;

/** Names that the books do not know, and a unit that nothing heats; what comes first, because the rest builds on it. */
export function refuseNames(facts: SizeFacts, books: Books): Refusal | undefined {
  const { model, place } = facts;
  if (model !== undefined && books.catalogue.length === 0)
    return refuse("model", model, { code: "no_catalogue", data: { typed: model } });
  const found = model === undefined ? undefined : findModel(books.catalogue, model);
  if (model !== undefined && found?.ok === false)
    return refuse("model", model, { code: "unknown_model", data: { typed: model, nearest: nearestOf(found) } });
  const there = place === undefined ? undefined : findByName(books.places, place);
  if (place !== undefined && there?.ok === false)
    return refuse("place", place, { code: "unknown_place", data: { typed: place, nearest: nearestOf(there) } });
  return model === undefined ? refuseSources(facts) : undefined;
}

function nearestOf(found: Found<unknown>): string {
  return found.ok ? "" : found.nearest.join(", ");
}

function refuseSources({ element_W, heat_pump_W }: SizeFacts): Refusal | undefined {
  if (element_W === 0 && heat_pump_W === 0)
    return refuse("heat_pump", q("heat_rate", 0), { code: "no_source", data: {} });
  if (isTooSmall(element_W)) return tooSmall("element", q("power", element_W));
  return isTooSmall(heat_pump_W) ? tooSmall("heat_pump", q("heat_rate", heat_pump_W)) : undefined;
}

function isTooSmall(power_W: number | undefined): power_W is number {
  return power_W !== undefined && power_W > 0 && power_W < LEAST_SOURCE_W;
}

function tooSmall(fact: string, value: OutOfRange["value"]): Refusal {
  return { kind: "out-of-range", fact, value, min: LEAST_SOURCE_W };
}

/** A setpoint, mode or supply that the unit does not have. */
export function refuseForUnit(facts: SizeFacts, { unit, supplies_V }: Unit): Refusal | undefined {
  const [lowest_C, highest_C] = unit.controls.setpoint_C;
  const setpoint = q("temperature", facts.setpoint_C);
  if (!(facts.setpoint_C >= lowest_C - HAIR_K && facts.setpoint_C <= highest_C + HAIR_K)) {
    const data = { setpoint, lowest: q("temperature", lowest_C), highest: q("temperature", highest_C) };
    const refused = refuse("setpoint", setpoint, { code: "setpoint_outside_unit", data });
    return { ...refused, min: lowest_C, max: highest_C };
  }
  if (facts.mode !== undefined && !unit.controls.policies.includes(facts.mode))
    return refuse("mode", facts.mode, { code: sayModes(unit), data: {} });
  const { supply_V } = facts;
  if (supply_V === undefined || supplies_V.some((made_V) => Math.abs(supply_V - made_V) <= SUPPLY_TOLERANCE * made_V))
    return undefined;
  const supply = q("voltage", supply_V);
  const made_for = supplies_V.map((made_V) => `${made_V} V`).join(", ");
  return refuse("supply", supply, { code: "supply_unfit", data: { supply, made_for } });
}

function sayModes({ controls }: SizeCase["unit"]): "mode_only_heat_pump" | "mode_only_elements" | "mode_not_offered" {
  const [only, ...others] = modesOf(controls.policies);
  if (others.length > 0) return "mode_not_offered";
  return only === "heat_pump_only" ? "mode_only_heat_pump" : "mode_only_elements";
}

/** Temperatures that no mixing can bring about. */
export function refuseTemperatures({ cold_C, run }: SizeCase): Refusal | undefined {
  const setpoint = q("temperature", run.plan[0].setpoint_C);
  const wanted = q("temperature", run.wanted_C);
  const cold = q("temperature", cold_C);
  if (wanted.value > setpoint.value)
    return refuse("wanted", wanted, { code: "wanted_above_storage", data: { wanted, setpoint } });
  if (cold.value < wanted.value) return undefined;
  return refuse("cold", cold, { code: "cold_above_wanted", data: { cold, wanted } });
}

function refuse(fact: string, value: OutOfRange["value"], reason: Reason): Refusal {
  return { kind: "out-of-range", fact, value, reason };
}
