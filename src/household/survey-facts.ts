import { commonFacts } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { KIT_TOLD } from "../jobs/kit-told-facts.ts";
import { toBase } from "../units/convert.ts";
import { DOOR_KINDS } from "./room-door.ts";
import { SITE_TOLD } from "./site-told-facts.ts";

const ASKED = { optional: true, ask: true } as const;

/**
 * What a site visit looks at, in the order of a walk from the door to the heater and to the panel. Ids and ranges are those
 * of the topics that use it later. Everything may be left open; what is left open is said at the end.
 */
export const SURVEY_FACTS = {
  room: SITE_TOLD.room,
  room_volume: {
    type: "quantity",
    quantity: "room_volume",
    min: SITE_TOLD.room_volume.min,
    max: SITE_TOLD.room_volume.max,
    usual: [100, 450, 700, 1500].map((feet) => toBase(feet, "ft3")),
    ...ASKED,
  },
  door: { type: "choice", options: DOOR_KINDS, ...ASKED },
  air_way: KIT_TOLD.air_way,
  passage: { ...SITE_TOLD.passage, usual: [24, 30, 32, 36].map((inches) => toBase(inches, "in")), ...ASKED },
  replaces: { ...SITE_TOLD.replaces, ...ASKED },
  fuel_appliance: SITE_TOLD.fuel_appliance,
  condensate: { ...SITE_TOLD.condensate, ...ASKED },
  leak_harms: { ...SITE_TOLD.leak_harms, ...ASKED },
  pan: { ...SITE_TOLD.pan, ...ASKED },
  line_pressure: { ...SITE_TOLD.line_pressure, ...ASKED },
  closed: SITE_TOLD.closed,
  control: { ...SITE_TOLD.control, ...ASKED },
  mixing_valve: SITE_TOLD.mixing_valve,
  supply: { ...commonFacts.supply, ...ASKED },
  circuit_length: { ...KIT_TOLD.circuit_length, ...ASKED },
  circuit_right: { ...KIT_TOLD.circuit_right, ...ASKED },
  people: { ...commonFacts.people, ...ASKED, byNameOnly: true },
  bathrooms: {
    type: "quantity",
    quantity: "count",
    min: commonFacts.bathrooms.min,
    max: commonFacts.bathrooms.max,
    whole: true,
    usual: commonFacts.bathrooms.usual,
    byNameOnly: true,
    ...ASKED,
  },
  occupants: SITE_TOLD.occupants,
  model: { ...commonFacts.model, ...ASKED },
  setpoint: { ...SITE_TOLD.setpoint, byNameOnly: true },

  place: commonFacts.place,
  headroom: SITE_TOLD.headroom,
  floor: SITE_TOLD.floor,
  bedroom_wall: SITE_TOLD.bedroom_wall,
  seismic: SITE_TOLD.seismic,
  shared_flue: SITE_TOLD.shared_flue,
  relief: SITE_TOLD.relief,
  disconnect: SITE_TOLD.disconnect,
  asbestos: SITE_TOLD.asbestos,
  gas_smell: SITE_TOLD.gas_smell,
} as const satisfies FactSpecs;
export type SurveyFacts = FactsOf<typeof SURVEY_FACTS>;

/** What the answers for the house turn on; without these they must be asked again. */
export const SURVEY_NEEDS = [
  "room",
  "room_volume",
  "door",
  "replaces",
  "condensate",
  "line_pressure",
  "closed",
  "supply",
  "circuit_length",
  "people",
  "bathrooms",
  "model",
  "setpoint",
] as const satisfies readonly (keyof typeof SURVEY_FACTS)[];
