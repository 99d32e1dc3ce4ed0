import type { Books, Company } from "../books/books.ts";
import type { Place } from "../books/places.ts";
import type { ElectricityPlan } from "../books/prices.ts";
import { type FindingOf, type FindingSpecs, type OutOfRange, q } from "../declaration/answer.ts";
import type { Assumption } from "../declaration/facts.ts";
import type { Source } from "../declaration/source.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { type Found, findByName, findModel } from "../equipment/find-model.ts";
import type { PolicyId } from "../equipment/policies.ts";
import { findPlan, type Rate, rateOf } from "./price-year.ts";

/** Modes that people run a unit in, in the order in which one is taken where nobody says. */
export const RUN_MODES = ["heat_pump_first", "heat_pump_only", "both_together", "elements_only"] as const;
export type RunMode = Extract<PolicyId, (typeof RUN_MODES)[number]>;

/** What was told of a unit of the catalogue and where it stands. */
export interface UnitFacts {
  readonly model: string;
  readonly setpoint_C: number;
  readonly place: string | undefined;
  readonly mode: RunMode | undefined;
  readonly supply_V: number | undefined;
  readonly rate: Rate | undefined;
}
/** The same with everything filled in, and what was taken by whose word. */
export interface UnitCase {
  readonly model: CatalogueModel;
  readonly place: Place;
  readonly mode: RunMode;
  readonly setpoint_C: number;
  readonly supply_V: number;
  readonly plan: ElectricityPlan;
  readonly assumed: Readonly<Record<string, Assumption>>;
}

/** Why facts about a unit cannot be worked with. */
export const UNIT_REFUSALS = {
  unknown_model: { typed: "word", nearest: "word" },
  unknown_place: { typed: "word", nearest: "word" },
  setpoint_outside_unit: { model: "word", setpoint: "temperature", lowest: "temperature", highest: "temperature" },
  mode_only_heat_pump: { model: "word" },
  mode_only_elements: { model: "word" },
  mode_not_offered: { model: "word" },
  supply_unfit: { model: "word", supply: "voltage", made_for: "word" },
  rate_not_in_books: { company: "word" },
} as const satisfies FindingSpecs;
export type UnitRefusal = OutOfRange<FindingOf<typeof UNIT_REFUSALS>>;
type Outcome = { readonly ok: true; readonly known: UnitCase } | { readonly ok: false; readonly refused: UnitRefusal };

/** Supplies differ from their names by this much and are still meant: 230 for 240, 115 for 120 (judgement). */
const SUPPLY_TOLERANCE = 0.06;
/** Room for rounding between units. */
const HAIR_K = 1e-6;

/** Finds unit, place, mode, supply and price plan in the books, or says why not. */
export function planUnit(facts: UnitFacts, books: Books): Outcome {
  const model = findModel(books.catalogue, facts.model);
  if (!model.ok) return refuse("model", facts.model, unknown("unknown_model", facts.model, model));
  const place = findPlace(facts.place, books);
  if (!place.ok) return refuse("place", facts.place ?? "", unknown("unknown_place", facts.place ?? "", place));
  const refused = refuseUnit(facts, model.entry);
  if (refused) return refused;
  const plan = findPlan(books.prices, facts.rate);
  const company = books.company.name;
  if (plan === undefined) return refuse("rate", facts.rate ?? "", { code: "rate_not_in_books", data: { company } });
  return { ok: true, known: fillIn(facts, model.entry, place.entry, plan, books.company) };
}

function findPlace(typed: string | undefined, { places }: Books): Found<Place> {
  const [own] = places;
  if (typed === undefined && own !== undefined) return { ok: true, entry: own };
  return findByName(places, typed ?? "");
}

function refuseUnit(facts: UnitFacts, model: CatalogueModel): Outcome | undefined {
  const { setpoint_C: setpoint, policies } = model.heater.controls;
  const [lowest_C, highest_C] = setpoint;
  if (!(facts.setpoint_C >= lowest_C - HAIR_K && facts.setpoint_C <= highest_C + HAIR_K)) {
    const asked = q("temperature", facts.setpoint_C);
    const range = { lowest: q("temperature", lowest_C), highest: q("temperature", highest_C) };
    const data = { model: model.name, setpoint: asked, ...range };
    return refuse("setpoint", asked, { code: "setpoint_outside_unit", data });
  }
  if (facts.mode !== undefined && !policies.includes(facts.mode))
    return refuse("mode", facts.mode, { code: sayModes(model), data: { model: model.name } });
  const { supply_V } = facts;
  const { supplies_V } = model.circuit;
  if (supply_V === undefined || supplies_V.some((made_V) => isNear(supply_V, made_V))) return undefined;
  const supply = q("voltage", supply_V);
  const made_for = supplies_V.map((made_V) => `${made_V} V`).join(", ");
  return refuse("supply", supply, { code: "supply_unfit", data: { model: model.name, supply, made_for } });
}

function isNear(supply_V: number, made_V: number): boolean {
  return Math.abs(supply_V - made_V) <= SUPPLY_TOLERANCE * made_V;
}

function sayModes({ heater }: CatalogueModel): "mode_only_heat_pump" | "mode_only_elements" | "mode_not_offered" {
  const [only, ...others] = modesOf(heater.controls.policies);
  if (others.length > 0) return "mode_not_offered";
  return only === "heat_pump_only" ? "mode_only_heat_pump" : "mode_only_elements";
}

/** The modes of a unit that people run it in. */
export function modesOf(policies: readonly PolicyId[]): readonly RunMode[] {
  return RUN_MODES.filter((mode) => policies.includes(mode));
}

function fillIn(
  facts: UnitFacts,
  model: CatalogueModel,
  place: Place,
  plan: ElectricityPlan,
  company: Company,
): UnitCase {
  const [usualMode = "elements_only"] = modesOf(model.heater.controls.policies);
  const { mode = usualMode, supply_V = model.circuit.supplies_V[0], setpoint_C } = facts;
  const { source } = model.heater;
  return {
    model,
    place,
    mode,
    setpoint_C: clampToUnit(setpoint_C, model),
    supply_V,
    plan,
    assumed: {
      place: { value: place.name, source: bookSource(company, place.name) },
      mode: { value: mode, source },
      supply: { value: supply_V, source },
      rate: { value: rateOf(plan), source: bookSource(company, plan.name) },
    },
  };
}

/** 143 °F typed may miss the sheet's 143 °F by a rounding. */
function clampToUnit(setpoint_C: number, { heater }: CatalogueModel): number {
  const [lowest_C, highest_C] = heater.controls.setpoint_C;
  return Math.min(highest_C, Math.max(lowest_C, setpoint_C));
}

/** The company's own books as a source. */
export function bookSource(company: Company, section: string): Source {
  const basis = company.isInvented ? "invented" : "published";
  return { basis, document: `${company.name}, books`, section };
}

function unknown(
  code: "unknown_model" | "unknown_place",
  typed: string,
  found: Found<unknown>,
): FindingOf<typeof UNIT_REFUSALS> {
  return { code, data: { typed, nearest: found.ok ? "" : found.nearest.join(", ") } };
}

function refuse(
  fact: string,
  value: OutOfRange["value"],
  reason: FindingOf<typeof UNIT_REFUSALS>,
): Extract<Outcome, { ok: false }> {
  return { ok: false, refused: { kind: "out-of-range", fact, value, reason } };
}
