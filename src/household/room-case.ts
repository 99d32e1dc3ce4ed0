import type { Books } from "../books/books.ts";
import type { Place } from "../books/places.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { Assumption } from "../declaration/facts.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName } from "../equipment/find-model.ts";
import { POLICIES } from "../equipment/policies.ts";
import type { HeatPumpSheet, WaterHeater } from "../equipment/water-heater.ts";
import type { Neighbour, NeighbourId, RoomSpec } from "../physics/room/room-spec.ts";
import type { PlanStep, Site } from "../physics/tank/simulate.ts";
import { toBase } from "../units/convert.ts";
import type { RoomDoor } from "./room-door.ts";
import { exchangeThrough } from "./room-door.ts";
import { airThroughDucts, type DuctedAir, type DuctPlan, roomDucts } from "./room-ducts.ts";
import { MOISTURE_STORE, type RoomKind, SHELLS, SURFACE_W_m2_K, THINGS_J_m3_K } from "./room-shell-table.ts";
import { outdoorAt_C, type RoomWeather, ratioAt, type SeasonName, weatherOf } from "./room-weather.ts";
import { planSize, type SizeFacts } from "./size-case.ts";
import { bookSource, type RunMode } from "./unit-case.ts";

/** What was told of a room, its unit and its household. */
export interface RoomFacts {
  readonly volume_m3: number;
  readonly ceiling_m: number;
  readonly where: RoomKind;
  readonly model: string | undefined;
  readonly tank_L: number | undefined;
  readonly heat_pump_W: number | undefined;
  readonly setpoint_C: number;
  readonly people: number;
  readonly mode: RunMode | undefined;
  readonly place: string | undefined;
  readonly outdoor_C: number | undefined;
  readonly adjoining_C: number | undefined;
  readonly heater_W: number | undefined;
  readonly heater_setting_C: number | undefined;
  readonly gains_W: number | undefined;
  readonly door: RoomDoor["door"];
  readonly undercut_m: number;
  readonly low_grille_m2: number | undefined;
  readonly high_grille_m2: number | undefined;
  readonly duct: DuctPlan["choice"];
  readonly duct_to: DuctPlan["end"] | undefined;
  readonly duct_run_m: number | undefined;
  readonly duct_size_m: number | undefined;
  readonly duct_kind: DuctPlan["make"] | undefined;
}

/** What may be changed about a room to make it serve; a case is one choice of all of it. */
export interface RoomSetUp {
  readonly volume_m3: number;
  readonly door: RoomDoor;
  readonly ducts: DuctPlan;
  readonly mode: RunMode;
}

/** One room with one unit, everything filled in. */
export interface RoomCase {
  readonly where: RoomKind;
  readonly ceiling_m: number;
  readonly set: RoomSetUp;
  readonly unit: WaterHeater;
  readonly heatPump: HeatPumpSheet;
  readonly model: CatalogueModel | undefined;
  readonly place: Place | undefined;
  readonly people: number;
  readonly setpoint_C: number;
  readonly supply_V: number;
  readonly cold_C: Readonly<Record<SeasonName, number>>;
  readonly weather: Readonly<Record<SeasonName, RoomWeather>>;
  readonly heater: { readonly setting_C: number; readonly most_W: number } | undefined;
  readonly gains_W: number;
  readonly assumed: Readonly<Record<string, Assumption>>;
}

/** Seconds between two looks at the room: small rooms have little air to wait with. */
const INTERVALS: readonly (readonly [below_m3: number, every_s: number])[] = [
  [toBase(90, "ft3"), 60],
  [toBase(300, "ft3"), 120],
];
const LONG_s = 300;
const START_C = 18;
const START_HUMIDITY = 0.45;
const SUMMER_MONTH = "7";
const HOUR_s = 3600;
/** Taken where nobody says otherwise; common practice. */
const USUAL_TANK_L = toBase(50, "gal");
const USUAL_DUCT = {
  end: "outdoors",
  run_m: toBase(10, "ft"),
  diameter_m: toBase(8, "in"),
  make: "galvanized",
} as const;
const USUAL_HEATER_C = toBase(55, "F");

/** The household's side of the facts, as `size` takes them, so that unit, mode, water and refusals are the same. */
export function asSizeFacts(facts: RoomFacts, month?: string): SizeFacts {
  const { people, model, tank_L = USUAL_TANK_L, heat_pump_W, setpoint_C, place, mode } = facts;
  const nothing = { bedrooms: undefined, element_W: undefined, cold_C: undefined, supply_V: undefined };
  const uses = { shower: 0, shave: 0, hand_dishes: 0, dishwasher: 0, clothes_washer: 0 };
  const unit = { people, model, tank_L, heat_pump_W, setpoint_C, place, mode };
  const rest = { bathrooms: 2, wanted_C: toBase(105, "F"), air_C: undefined, mixing_valve: undefined, days: 1 };
  return { ...nothing, ...uses, ...unit, ...rest, month };
}

/** Fills in everything that was not told; nothing for a unit without a heat pump, which needs no air. */
export function planRoom(facts: RoomFacts, books: Books): RoomCase | undefined {
  const winter = planSize(asSizeFacts(facts), books);
  const { unit } = winter;
  if (unit.heatPump === undefined) return undefined;
  const place = findPlace(facts.place, books);
  const { isAdjoiningHeated } = SHELLS[facts.where];
  const told = { outdoor_C: facts.outdoor_C, adjoining_C: facts.adjoining_C };
  const weather = {
    winter: weatherOf(place, "winter", told, isAdjoiningHeated),
    summer: weatherOf(place, "summer", told, isAdjoiningHeated),
  };
  return {
    where: facts.where,
    ceiling_m: facts.ceiling_m,
    set: setUpOf(facts, winter.mode),
    unit,
    heatPump: unit.heatPump,
    model: winter.model,
    place,
    people: facts.people,
    setpoint_C: winter.run.plan[0].setpoint_C,
    supply_V: winter.supply_V,
    cold_C: { winter: winter.cold_C, summer: planSize(asSizeFacts(facts, SUMMER_MONTH), books).cold_C },
    weather,
    heater: heaterOf(facts),
    gains_W: facts.gains_W ?? 0,
    assumed: assumptionsOf(facts, books, place, weather.winter, winter.mode, unit),
  };
}

function setUpOf(facts: RoomFacts, mode: RunMode): RoomSetUp {
  return {
    volume_m3: facts.volume_m3,
    door: {
      door: facts.door,
      undercut_m: facts.undercut_m,
      lowGrille_m2: facts.low_grille_m2 ?? 0,
      highGrille_m2: facts.high_grille_m2 ?? 0,
    },
    ducts: {
      choice: facts.duct,
      end: facts.duct_to ?? USUAL_DUCT.end,
      run_m: facts.duct_run_m ?? USUAL_DUCT.run_m,
      diameter_m: facts.duct_size_m ?? USUAL_DUCT.diameter_m,
      make: facts.duct_kind ?? USUAL_DUCT.make,
    },
    mode,
  };
}

function heaterOf({ heater_W = 0, heater_setting_C = USUAL_HEATER_C }: RoomFacts): RoomCase["heater"] {
  return heater_W > 0 ? { setting_C: heater_setting_C, most_W: heater_W } : undefined;
}

function findPlace(name: string | undefined, { places }: Books): Place | undefined {
  if (name === undefined) return places[0];
  const found = findByName(places, name);
  return found.ok ? found.entry : undefined;
}

function assumptionsOf(
  { model, where, duct, heater_W = 0 }: RoomFacts,
  { company }: Books,
  place: Place | undefined,
  { outdoor_C, adjoining_C }: RoomWeather,
  mode: RunMode,
  unit: WaterHeater,
): RoomCase["assumed"] {
  const book = place === undefined ? OUR_HABIT : bookSource(company, place.name);
  const { isAdjoiningHeated, mayOpen } = SHELLS[where];
  return {
    mode: { value: mode, source: unit.source },
    outdoor: { value: outdoor_C, source: book },
    ...(place && { place: { value: place.name, source: book } }),
    ...(mayOpen && { adjoining: { value: adjoining_C, source: isAdjoiningHeated ? OUR_HABIT : book } }),
    ...(model === undefined && {
      tank: { value: USUAL_TANK_L, source: OUR_HABIT },
      heat_pump: { value: unit.heatPump?.ratedHeat_W ?? 0, source: unit.source },
    }),
    ...(duct !== "none" && {
      duct_to: { value: USUAL_DUCT.end, source: OUR_HABIT },
      duct_run: { value: USUAL_DUCT.run_m, source: OUR_HABIT },
      duct_size: { value: USUAL_DUCT.diameter_m, source: OUR_HABIT },
      duct_kind: { value: USUAL_DUCT.make, source: OUR_HABIT },
    }),
    ...(heater_W > 0 && { heater_setting: { value: USUAL_HEATER_C, source: OUR_HABIT } }),
  };
}

/** Areas of a room of this volume with a square floor [m2]. */
export function areasOf(
  volume_m3: number,
  ceiling_m: number,
): { readonly walls_m2: number; readonly floor_m2: number } {
  const floor_m2 = volume_m3 / ceiling_m;
  return { walls_m2: 4 * Math.sqrt(floor_m2) * ceiling_m, floor_m2 };
}

/** The room of a case on a winter or summer day, ready for `openRoom`, and the airflow its ducts leave. */
export function describeRoom(
  known: RoomCase,
  season: SeasonName,
): { readonly spec: RoomSpec; readonly air: DuctedAir } {
  const { set, where, ceiling_m, gains_W, heater } = known;
  const weather = known.weather[season];
  const shell = SHELLS[where];
  const { walls_m2, floor_m2 } = areasOf(set.volume_m3, ceiling_m);
  const surfaces_m2 = walls_m2 + 2 * floor_m2;
  const air = airThroughDucts(known.heatPump, set.ducts);
  const ducts = roomDucts(set.ducts, air.airflow_m3_s, shell.mayOpen ? "adjoining" : "outdoors");
  const flow_m3_s = shell.mayOpen ? exchangeThrough(set.door, weather.adjoining_C) : undefined;
  const spec: RoomSpec = {
    every_s: INTERVALS.find(([below_m3]) => set.volume_m3 < below_m3)?.[1] ?? LONG_s,
    volume_m3: set.volume_m3,
    surfaces_W_K: surfaces_m2 * SURFACE_W_m2_K,
    quickMass_J_K: surfaces_m2 * shell.quick_J_m2_K + set.volume_m3 * THINGS_J_m3_K,
    moistureStore: MOISTURE_STORE,
    neighbours: neighboursOf(known, weather, walls_m2, floor_m2),
    gains_W,
    start: { air_C: START_C, humidityRatio: ratioAt(START_C, START_HUMIDITY) },
    ...(flow_m3_s && { openings: { to: "adjoining", flow_m3_s } }),
    ...(ducts && { ducts }),
    ...(heater && season === "winter" && { heater }),
  };
  return { spec, air };
}

function neighboursOf(
  { where, set }: RoomCase,
  weather: RoomWeather,
  walls_m2: number,
  floor_m2: number,
): readonly Neighbour[] {
  const { walls, ceiling, floor, leaks_per_h } = SHELLS[where];
  return (["adjoining", "house", "outdoors", "ground"] as const).map((id): Neighbour => {
    const side = walls[id];
    const walls_W_K =
      (side ? side.share * walls_m2 * side.u_W_m2_K : 0) +
      (ceiling[0] === id ? floor_m2 * ceiling[1] : 0) +
      (floor[0] === id ? floor_m2 * floor[1] : 0);
    return { id, walls_W_K, leak_m3_s: ((leaks_per_h[id] ?? 0) * set.volume_m3) / HOUR_s, ...airOf(id, weather) };
  });
}

function airOf(id: NeighbourId, weather: RoomWeather): Pick<Neighbour, "at_C" | "humidityRatio"> {
  const steady = (t_C: number, humidity: number) => {
    const ratio = ratioAt(t_C, humidity);
    return { at_C: () => t_C, humidityRatio: () => ratio };
  };
  switch (id) {
    case "adjoining":
      return steady(weather.adjoining_C, weather.adjoiningHumidity);
    case "house":
      return steady(weather.house_C, weather.houseHumidity);
    case "ground":
      return steady(weather.ground_C, 0);
    case "outdoors": {
      // The water in outdoor air hardly changes over a day; only its temperature does.
      const ratio = ratioAt(weather.outdoor_C, weather.outdoorHumidity);
      return { at_C: (time_s) => outdoorAt_C(weather, time_s), humidityRatio: () => ratio };
    }
  }
}

/** Supply, cold water and plan of a case in a season; the air is the caller's. */
export function tankSide(known: RoomCase, season: SeasonName): Omit<Site, "air"> & { readonly plan: [PlanStep] } {
  const { supply_V, cold_C, set, setpoint_C } = known;
  return { supply_V, inlet_C: cold_C[season], plan: [{ from_s: 0, policy: POLICIES[set.mode], setpoint_C }] };
}
