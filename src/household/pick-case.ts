import type { Books } from "../books/books.ts";
import type { Place } from "../books/places.ts";
import type { ElectricityPlan } from "../books/prices.ts";
import { type FindingOf, type FindingSpecs, type OutOfRange, q } from "../declaration/answer.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { Assumption } from "../declaration/facts.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName } from "../equipment/find-model.ts";
import { toBase } from "../units/convert.ts";
import { peopleFor } from "./daily-use.ts";
import { type Breach, findBreaches, type SiteLimits, supplyOf_V } from "./pick-limits.ts";
import { findPlan, type Rate, rateOf } from "./price-year.ts";
import { coldestSeason, type Season, seasonOf } from "./season.ts";
import { VALVE_C } from "./size-case.ts";
import { bookSource, modesOf, type RunMode } from "./unit-case.ts";

/** What was told of a household, its site, and what may be tried there. */
export interface PickFacts extends SiteLimits {
  readonly people: number | undefined;
  readonly bedrooms: number | undefined;
  readonly bathrooms: number;
  readonly wanted_C: number;
  readonly place: string | undefined;
  readonly month: string | undefined;
  readonly rate: Rate | undefined;
  readonly mode: RunMode | undefined;
  readonly setpoint_C: number | undefined;
  /** Hottest that the tank may be kept. */
  readonly hottest_C: number | undefined;
  readonly mixing_valve: boolean | undefined;
  readonly limit: number;
  readonly days: number;
}

/** One way to run a model. */
export interface Setting {
  readonly mode: RunMode;
  readonly setpoint_C: number;
}
/** A model that fits the site, with every way to run it that is tried. */
export interface Candidate {
  readonly model: CatalogueModel;
  readonly supply_V: number;
  readonly settings: readonly Setting[];
}
/** A model that does not fit, with every reason. */
export interface Refused {
  readonly model: CatalogueModel;
  readonly breaches: readonly Breach[];
  readonly others: readonly FindingOf<typeof SETTING_REASONS>[];
}
export interface PickCase {
  readonly facts: PickFacts;
  readonly people: number;
  readonly place: Place;
  /** When the chance of running cold is counted. */
  readonly season: Season;
  readonly plan: ElectricityPlan;
  readonly candidates: readonly Candidate[];
  readonly refused: readonly Refused[];
  readonly assumed: Readonly<Record<string, Assumption>>;
}

/** Why a model is not tried at all, beside the limits of the site. */
export const SETTING_REASONS = {
  refused_mode: {},
  refused_setpoint: { lowest: "temperature", highest: "temperature" },
} as const satisfies FindingSpecs;
/** Why the facts cannot be worked with. */
export const PICK_REFUSALS = {
  unknown_place: { typed: "word", nearest: "word" },
  rate_not_in_books: { company: "word" },
  wanted_above_storage: { wanted: "temperature", setpoint: "temperature" },
  setpoint_above_hottest: { setpoint: "temperature", hottest: "temperature" },
} as const satisfies FindingSpecs;
type Refusal = OutOfRange<FindingOf<typeof PICK_REFUSALS>>;
type Outcome = { readonly ok: true; readonly known: PickCase } | { readonly ok: false; readonly refused: Refusal };

/** Tank temperatures that are tried where nobody names one: at the tap limit, between, and where health advice has it. */
const SETPOINTS_C = [120, 130, 140].map((setpoint_F) => toBase(setpoint_F, "F"));
/** Room for rounding between units [K]. */
const HAIR_K = 1e-6;

/** Finds place, price plan, models and settings in the books, or says why the facts cannot be worked with. */
export function planPick(facts: PickFacts, books: Books): Outcome {
  const [own] = books.places;
  const found =
    facts.place === undefined && own !== undefined
      ? ({ ok: true, entry: own } as const)
      : findByName(books.places, facts.place ?? "");
  if (!found.ok) {
    const typed = facts.place ?? "";
    return refuse("place", typed, { code: "unknown_place", data: { typed, nearest: found.nearest.join(", ") } });
  }
  const refused = refuseTemperatures(facts);
  if (refused) return refused;
  const plan = findPlan(books.prices, facts.rate);
  const company = books.company.name;
  if (plan === undefined) return refuse("rate", facts.rate ?? "", { code: "rate_not_in_books", data: { company } });
  return { ok: true, known: fillIn(facts, found.entry, plan, books) };
}

/** Water that leaves a tank this hot needs a mixing valve before it gets to a tap. */
export function needsValve({ setpoint_C }: Setting): boolean {
  return setpoint_C > VALVE_C + HAIR_K;
}

function refuseTemperatures({ wanted_C, setpoint_C, hottest_C }: PickFacts): Outcome | undefined {
  const wanted = q("temperature", wanted_C);
  if (setpoint_C !== undefined && hottest_C !== undefined && setpoint_C > hottest_C + HAIR_K) {
    const data = { setpoint: q("temperature", setpoint_C), hottest: q("temperature", hottest_C) };
    return refuse("hottest", data.hottest, { code: "setpoint_above_hottest", data });
  }
  const storage_C = setpoint_C ?? hottest_C;
  if (storage_C === undefined || wanted_C <= storage_C) return undefined;
  const data = { wanted, setpoint: q("temperature", storage_C) };
  return refuse("wanted", wanted, { code: "wanted_above_storage", data });
}

function fillIn(facts: PickFacts, place: Place, plan: ElectricityPlan, { catalogue, company }: Books): PickCase {
  const season = facts.month === undefined ? coldestSeason(place) : seasonOf(place, Number(facts.month));
  const tried = catalogue.map((model) => ({ model, ...judge(model, facts) }));
  const book = bookSource(company, place.name);
  return {
    facts,
    people: facts.people ?? peopleFor(facts.bedrooms ?? 0),
    place,
    season,
    plan,
    candidates: tried.flatMap(({ model, settings, supply_V, isRefused }) =>
      isRefused || supply_V === undefined ? [] : [{ model, settings, supply_V }],
    ),
    refused: tried.flatMap(({ model, breaches, others, isRefused }) =>
      isRefused ? [{ model, breaches, others }] : [],
    ),
    assumed: {
      place: { value: place.name, source: book },
      month: { value: String(season.month), source: OUR_HABIT },
      rate: { value: rateOf(plan), source: bookSource(company, plan.name) },
    },
  };
}

function judge(model: CatalogueModel, facts: PickFacts) {
  const breaches = findBreaches(model, facts);
  const settings = settingsOf(model, facts);
  const others = settings.length > 0 ? [] : [sayNoSetting(model, facts)];
  const isRefused = breaches.length + others.length > 0;
  return { breaches, settings, others, isRefused, supply_V: supplyOf_V(model, facts) };
}

/** Every mode of the model at every tank temperature that is tried and that its sheet allows. */
function settingsOf({ heater }: CatalogueModel, facts: PickFacts): readonly Setting[] {
  const [lowest_C, highest_C] = heater.controls.setpoint_C;
  const modes = modesOf(heater.controls.policies).filter((mode) => facts.mode === undefined || mode === facts.mode);
  const setpoints_C = asked_C(facts)
    .filter((setpoint_C) => setpoint_C >= lowest_C - HAIR_K && setpoint_C <= highest_C + HAIR_K)
    .map((setpoint_C) => Math.min(highest_C, Math.max(lowest_C, setpoint_C)));
  return modes.flatMap((mode) => setpoints_C.map((setpoint_C) => ({ mode, setpoint_C })));
}

function asked_C({ setpoint_C, hottest_C = Number.POSITIVE_INFINITY }: PickFacts): readonly number[] {
  if (setpoint_C !== undefined) return [setpoint_C];
  const usual_C = SETPOINTS_C.filter((one_C) => one_C <= hottest_C + HAIR_K);
  return usual_C.length > 0 ? usual_C : [hottest_C];
}

function sayNoSetting({ heater }: CatalogueModel, { mode }: PickFacts): FindingOf<typeof SETTING_REASONS> {
  if (mode !== undefined && !heater.controls.policies.includes(mode)) return { code: "refused_mode", data: {} };
  const [lowest_C, highest_C] = heater.controls.setpoint_C;
  const data = { lowest: q("temperature", lowest_C), highest: q("temperature", highest_C) };
  return { code: "refused_setpoint", data };
}

function refuse(
  fact: string,
  value: OutOfRange["value"],
  reason: FindingOf<typeof PICK_REFUSALS>,
): Extract<Outcome, { ok: false }> {
  return { ok: false, refused: { kind: "out-of-range", fact, value, reason } };
}
