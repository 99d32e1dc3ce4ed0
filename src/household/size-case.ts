import type { Books } from "../books/books.ts";
import type { Place } from "../books/places.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { Assumption } from "../declaration/facts.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import {
  buildGenericUnit,
  USUAL_ELEMENT_W,
  USUAL_HEAT_PUMP_W,
  USUAL_UNIT,
  usualSupplies_V,
} from "../equipment/generic-unit.ts";
import { POLICIES } from "../equipment/policies.ts";
import type { WaterHeater } from "../equipment/water-heater.ts";
import { steadyAir } from "../physics/tank/room-air.ts";
import { toBase } from "../units/convert.ts";
import type { ColdRiskCase } from "./cold-risk.ts";
import { peopleFor } from "./daily-use.ts";
import { MAINS_TEMPERATURE } from "./mains-temperature.ts";
import { type UseCounts, WORKSHEET_USES, type WorksheetUse } from "./peak-hour-worksheet.ts";
import { coldestSeason, type Season, seasonOf } from "./season.ts";
import { bookSource, RUN_MODES, type RunMode } from "./unit-case.ts";

/** What was told of a household and its heater; what is not told is taken from the unit and the company's places. */
export type SizeFacts = {
  readonly people: number | undefined;
  readonly bedrooms: number | undefined;
  readonly bathrooms: number;
  readonly model: string | undefined;
  readonly tank_L: number | undefined;
  readonly element_W: number | undefined;
  readonly heat_pump_W: number | undefined;
  readonly setpoint_C: number;
  readonly wanted_C: number;
  readonly cold_C: number | undefined;
  readonly place: string | undefined;
  readonly month: string | undefined;
  readonly air_C: number | undefined;
  readonly mode: RunMode | undefined;
  readonly supply_V: number | undefined;
  readonly mixing_valve: boolean | undefined;
  readonly days: number;
} & { readonly [U in WorksheetUse]: number | undefined };

/** One household with one unit at one site, with everything filled in. */
export interface SizeCase {
  readonly people: number;
  readonly unit: WaterHeater;
  readonly model: CatalogueModel | undefined;
  readonly nominal_L: number;
  /** Supplies that the unit is made for [V]. */
  readonly supplies_V: readonly [number, ...number[]];
  readonly supply_V: number;
  readonly mode: RunMode;
  readonly cold_C: number;
  readonly air_C: number;
  readonly humidity: number;
  readonly uses: UseCounts;
  readonly run: ColdRiskCase;
  readonly assumed: Readonly<Record<string, Assumption>>;
}

/** Without a place of the books: middling water, and air as in the rating test. */
const NO_PLACE = { cold_C: toBase(50, "F"), air_C: toBase(67.5, "F"), humidity: 0.5 } as const;
/** Where a mixing valve at the tank is taken to be set, the highest that tubs and showers may get. */
export const VALVE_C = toBase(120, "F");
/** The sample is always the same, so that the same question has the same answer. */
export const SEED = 1;
/** Share of the people who shower in the busiest hour: three of four, as in the worksheet's own example. */
const SHOWERS_EACH = 0.75;

/** The unit that is meant: a model of the catalogue, or one of the usual shape; nothing for an unknown model. */
export function findUnit(
  facts: SizeFacts,
  books: Books,
): Pick<SizeCase, "unit" | "model" | "nominal_L" | "supplies_V"> {
  const found = facts.model === undefined ? undefined : findModel(books.catalogue, facts.model);
  if (found?.ok) {
    const { entry } = found;
    return { unit: entry.heater, model: entry, nominal_L: entry.nominal_L, supplies_V: entry.circuit.supplies_V };
  }
  const { tank_L: nominal_L, element_W = USUAL_ELEMENT_W, heat_pump_W = USUAL_HEAT_PUMP_W } = facts;
  if (nominal_L === undefined || found !== undefined) throw new RangeError("neither a known model nor a tank");
  const unit = buildGenericUnit({ nominal_L, element_W, heatPump_W: heat_pump_W });
  return { unit, model: undefined, nominal_L, supplies_V: usualSupplies_V(element_W) };
}

/** The place that is meant: the one named, else the company's own; nothing without places or for an unknown name. */
function findPlace({ place }: SizeFacts, { places }: Books): Place | undefined {
  if (place === undefined) return places[0];
  const found = findByName(places, place);
  return found.ok ? found.entry : undefined;
}

/** Fills in everything that was not told, and says what was taken and by whose word. */
export function planSize(facts: SizeFacts, books: Books): SizeCase {
  const known = findUnit(facts, books);
  const place = findPlace(facts, books);
  const season = place && (facts.month === undefined ? coldestSeason(place) : seasonOf(place, Number(facts.month)));
  const { cold_C = season?.cold_C ?? NO_PLACE.cold_C, air_C = season?.air_C ?? NO_PLACE.air_C } = facts;
  const humidity = season?.humidity ?? NO_PLACE.humidity;
  const people = facts.people ?? peopleFor(facts.bedrooms ?? 0);
  const mode = facts.mode ?? usualMode(known.unit);
  const supply_V = facts.supply_V ?? known.supplies_V[0];
  const uses = usesOf(facts, people);
  // 143 °F typed may miss the sheet's 143 °F by a rounding.
  const [lowest_C, highest_C] = known.unit.controls.setpoint_C;
  const setpoint_C = Math.min(highest_C, Math.max(lowest_C, facts.setpoint_C));
  return {
    ...known,
    people,
    mode,
    supply_V,
    cold_C,
    air_C,
    humidity,
    uses,
    run: {
      unit: known.unit,
      site: {
        supply_V,
        inlet_C: cold_C,
        air: steadyAir(air_C, humidity),
        ...(facts.mixing_valve === true && { mixingValve_C: Math.min(VALVE_C, setpoint_C) }),
      },
      plan: [{ from_s: 0, policy: POLICIES[mode], setpoint_C }],
      household: { people, bathrooms: facts.bathrooms },
      wanted_C: facts.wanted_C,
      days: facts.days,
      seed: SEED,
    },
    assumed: {
      ...unitAssumptions(facts, known.unit),
      ...placeAssumptions(facts, books, place, season),
      mode: { value: mode, source: known.unit.source },
      supply: { value: supply_V, source: known.unit.source },
      ...Object.fromEntries(WORKSHEET_USES.map((use) => [use, { value: uses[use] ?? 0, source: OUR_HABIT }])),
    },
  };
}

function usualMode({ controls }: WaterHeater): RunMode {
  return RUN_MODES.find((mode) => controls.policies.includes(mode)) ?? "elements_only";
}

/** Busiest hour: most of the people shower, one shaves, one washes dishes by hand. */
function usesOf(facts: SizeFacts, people: number): Readonly<Record<WorksheetUse, number>> {
  return {
    shower: facts.shower ?? Math.max(1, Math.round(SHOWERS_EACH * people)),
    shave: facts.shave ?? 1,
    hand_dishes: facts.hand_dishes ?? 1,
    dishwasher: facts.dishwasher ?? 0,
    clothes_washer: facts.clothes_washer ?? 0,
  };
}

function unitAssumptions({ model }: SizeFacts, { elements, heatPump }: WaterHeater): SizeCase["assumed"] {
  if (model !== undefined) return {};
  return {
    element: { value: elements[0]?.rated_W ?? 0, source: USUAL_UNIT },
    heat_pump: { value: heatPump?.ratedHeat_W ?? 0, source: USUAL_UNIT },
  };
}

function placeAssumptions(
  facts: SizeFacts,
  { company }: Books,
  place: Place | undefined,
  season: Season | undefined,
): SizeCase["assumed"] {
  const isPlaceUsed = facts.cold_C === undefined || facts.air_C === undefined;
  if (place === undefined || season === undefined)
    return {
      cold: { value: NO_PLACE.cold_C, source: OUR_HABIT },
      air: { value: NO_PLACE.air_C, source: OUR_HABIT },
    };
  const book = bookSource(company, place.name);
  return {
    cold: { value: season.cold_C, source: MAINS_TEMPERATURE },
    air: { value: season.air_C, source: book },
    ...(isPlaceUsed && {
      place: { value: place.name, source: book },
      month: { value: String(season.month), source: OUR_HABIT },
    }),
  };
}
