import { type FindingOf, type FindingSpecs, q } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { Quantity } from "../units/quantity-kinds.ts";

/** What limits a heater on site, in the order in which people meet it: the way in, the spot, the supply, the neighbours. */
export const LIMITS = ["door", "height", "floor", "room", "supply", "breaker", "spaces", "sound"] as const;
export type LimitId = (typeof LIMITS)[number];

/** What was told of the site; what nobody told does not limit. */
export interface SiteLimits {
  /** Narrowest door or passage on the way in. */
  readonly door_m: number | undefined;
  readonly height_m: number | undefined;
  /** Full weight that somebody who may say so allows on that spot. */
  readonly floor_kg: number | undefined;
  /** Volume of the closed room. */
  readonly room_m3: number | undefined;
  readonly supply_V: number | undefined;
  /** Largest breaker that the panel and its feeder have room for. */
  readonly breaker_A: number | undefined;
  /** Free spaces of the panel. */
  readonly spaces: number | undefined;
  /** From the unit to the nearest bedroom. */
  readonly bedroom_m: number | undefined;
  /** Loudest that it may be there. */
  readonly sound_dBA: number | undefined;
}

/** Why a model does not fit, with what it needs and what there is. */
export const LIMIT_REASONS = {
  refused_door: { needed: "dimension", there: "dimension" },
  refused_height: { needed: "dimension", there: "dimension" },
  refused_floor: { needed: "mass", there: "mass" },
  refused_room: { needed: "room_volume", there: "room_volume" },
  refused_supply: { made_for: "word", there: "voltage" },
  refused_breaker: { needed: "current", there: "current" },
  refused_spaces: { needed: "count", there: "count" },
  refused_sound: { needed: "sound", there: "sound", distance: "length" },
} as const satisfies FindingSpecs;
type Reason = FindingOf<typeof LIMIT_REASONS>;

/** A limit that a model does not keep. */
export interface Breach {
  readonly limit: LimitId;
  /** What the limit would have to be. */
  readonly needed: Quantity;
  readonly say: Reason;
}

export const SOUND_FALL: Source = {
  basis: "computed",
  document: "Point source outdoors: 20 log10 of the distance over one metre, walls and echo left out",
};

/** Cold water at its heaviest [kg/L]. */
const WATER_kg_L = 1;
const GRAVITY_m_s2 = 9.80665;
/** The sheet's sound is measured this far away; nearer than this it is taken as loud [m]. */
const SOUND_AT_m = 1;
/** Supplies differ from their names by this much and are still meant: 230 for 240, 115 for 120 (judgement). */
const SUPPLY_TOLERANCE = 0.06;
/** A plug-in unit's own supply, which every panel with 208 or 240 V has as well: common practice [V]. */
const PLUG_V = 120;
/** Poles of a breaker at 120 V, and above it. */
const POLES = { plug: 1, others: 2 } as const;
/** Room for rounding between units and in a button's request [share]. */
const HAIR = 1e-5;

/** Free height that a model needs: itself and what anode rod and air filter need over it [m]. */
export function heightNeeded_m({ body }: CatalogueModel): number {
  return body.height_m + body.clearanceAbove_m;
}

/** Mass of a model full of water [kg]. */
export function fullMass_kg({ body, heater }: CatalogueModel): number {
  return body.emptyMass_kg + heater.tank.volume_L * WATER_kg_L;
}

/** Weight of the full unit over the circle that it stands on [kPa]. */
export function footprintLoad_kPa(model: CatalogueModel): number {
  const area_m2 = (Math.PI / 4) * model.body.width_m ** 2;
  return (fullMass_kg(model) * GRAVITY_m_s2) / area_m2 / 1000;
}

/**
 * Sound of a model at the bedroom.
 * @returns sound pressure [dBA]; nothing for a unit without a compressor
 * @source sheet at one metre, less 20 log10(distance / 1 m)
 * @limits walls and doors take more off, and an echoing room takes less
 */
export function soundAt_dBA({ sound_dBA }: CatalogueModel, { bedroom_m = SOUND_AT_m }: SiteLimits): number | undefined {
  return sound_dBA === undefined
    ? undefined
    : sound_dBA - 20 * Math.log10(Math.max(bedroom_m, SOUND_AT_m) / SOUND_AT_m);
}

/** The supply that a model would run at here [V]; nothing where it is made for none that there is. */
export function supplyOf_V({ circuit }: CatalogueModel, { supply_V }: SiteLimits): number | undefined {
  const { supplies_V } = circuit;
  if (supply_V === undefined) return supplies_V[0];
  const isMeant = (made_V: number, there_V: number) => Math.abs(made_V - there_V) <= SUPPLY_TOLERANCE * made_V;
  if (supplies_V.some((made_V) => isMeant(made_V, supply_V))) return supply_V;
  return supply_V > PLUG_V ? supplies_V.find((made_V) => isMeant(made_V, PLUG_V)) : undefined;
}

/** Every limit of the site that a model does not keep. */
export function findBreaches(model: CatalogueModel, site: SiteLimits): readonly Breach[] {
  return [...spaceBreaches(model, site), ...circuitBreaches(model, site), ...soundBreaches(model, site)];
}

function spaceBreaches(model: CatalogueModel, { door_m, height_m, floor_kg, room_m3 }: SiteLimits): readonly Breach[] {
  const found: Breach[] = [];
  if (isOver(model.body.width_m, door_m)) {
    const [needed, there] = [q("dimension", model.body.width_m), q("dimension", door_m)];
    found.push({ limit: "door", needed, say: { code: "refused_door", data: { needed, there } } });
  }
  if (isOver(heightNeeded_m(model), height_m)) {
    const [needed, there] = [q("dimension", heightNeeded_m(model)), q("dimension", height_m)];
    found.push({ limit: "height", needed, say: { code: "refused_height", data: { needed, there } } });
  }
  if (isOver(fullMass_kg(model), floor_kg)) {
    const [needed, there] = [q("mass", fullMass_kg(model)), q("mass", floor_kg)];
    found.push({ limit: "floor", needed, say: { code: "refused_floor", data: { needed, there } } });
  }
  if (model.smallestRoom_m3 !== undefined && isOver(model.smallestRoom_m3, room_m3)) {
    const [needed, there] = [q("room_volume", model.smallestRoom_m3), q("room_volume", room_m3)];
    found.push({ limit: "room", needed, say: { code: "refused_room", data: { needed, there } } });
  }
  return found;
}

function circuitBreaches(model: CatalogueModel, site: SiteLimits): readonly Breach[] {
  const { supplies_V, breaker_A } = model.circuit;
  const runs_V = supplyOf_V(model, site);
  const found: Breach[] = [];
  if (runs_V === undefined && site.supply_V !== undefined) {
    const made_for = supplies_V.map((made_V) => `${made_V} V`).join(", ");
    const there = q("voltage", site.supply_V);
    const needed = q("voltage", supplies_V[0]);
    found.push({ limit: "supply", needed, say: { code: "refused_supply", data: { made_for, there } } });
  }
  if (isOver(breaker_A, site.breaker_A)) {
    const [needed, there] = [q("current", breaker_A), q("current", site.breaker_A)];
    found.push({ limit: "breaker", needed, say: { code: "refused_breaker", data: { needed, there } } });
  }
  const isPlug = (runs_V ?? supplies_V[0]) < PLUG_V * (1 + SUPPLY_TOLERANCE);
  const poles = isPlug ? POLES.plug : POLES.others;
  if (isOver(poles, site.spaces)) {
    const [needed, there] = [q("count", poles), q("count", site.spaces)];
    found.push({ limit: "spaces", needed, say: { code: "refused_spaces", data: { needed, there } } });
  }
  return found;
}

function soundBreaches(model: CatalogueModel, site: SiteLimits): readonly Breach[] {
  const { sound_dBA, bedroom_m = SOUND_AT_m } = site;
  const heard_dBA = soundAt_dBA(model, site);
  if (heard_dBA === undefined || !isOver(heard_dBA, sound_dBA)) return [];
  const [needed, there] = [q("sound", heard_dBA), q("sound", sound_dBA)];
  const data = { needed, there, distance: q("length", bedroom_m) };
  return [{ limit: "sound", needed, say: { code: "refused_sound", data } }];
}

function isOver(needed: number, there: number | undefined): there is number {
  return there !== undefined && needed > there * (1 + HAIR);
}

/** What was told of a limit; nothing where it was not. */
export function toldOf(limit: LimitId, site: SiteLimits): Quantity | undefined {
  const { door_m, height_m, floor_kg, room_m3, supply_V, breaker_A, spaces, sound_dBA } = site;
  const told = {
    door: { kind: "dimension", value: door_m },
    height: { kind: "dimension", value: height_m },
    floor: { kind: "mass", value: floor_kg },
    room: { kind: "room_volume", value: room_m3 },
    supply: { kind: "voltage", value: supply_V },
    breaker: { kind: "current", value: breaker_A },
    spaces: { kind: "count", value: spaces },
    sound: { kind: "sound", value: sound_dBA },
  } as const;
  const { kind, value } = told[limit];
  return value === undefined ? undefined : { kind, value };
}
