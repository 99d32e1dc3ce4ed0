import { commonFacts } from "../declaration/common-facts.ts";
import type { ChoiceFact, FactSpecs, FactsOf, FlagFact, QuantityFact } from "../declaration/facts.ts";
import { toBase } from "../units/convert.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";

/** Said by name only, and open until it is. */
const FLAG = { type: "flag", optional: true, byNameOnly: true } as const satisfies FlagFact;

function choice<const O extends string>(...options: readonly O[]) {
  return { type: "choice", options, optional: true } as const satisfies ChoiceFact<O>;
}

function quantity<const K extends QuantityKind>(kind: K, min: number, max: number) {
  return {
    type: "quantity",
    quantity: kind,
    min,
    max,
    optional: true,
    byNameOnly: true,
  } as const satisfies QuantityFact<K>;
}

const inches = (most: number) => quantity("dimension", 0, toBase(most, "in"));
const degrees = quantity("temperature", toBase(33, "F"), toBase(210, "F"));
const masses = quantity("mass", toBase(20, "lb"), toBase(5000, "lb"));

/** What a person on site can tell of it. A walk asks for the first few; everything else is told by name or in the form. */
export const SITE_TOLD = {
  room: {
    type: "choice",
    options: ["basement", "garage", "attic", "crawl_space", "closet", "utility_room", "living_space", "outdoors"],
    optional: true,
    ask: true,
  },
  setpoint: { ...commonFacts.setpoint, optional: true, ask: true },
  mixing_valve: commonFacts.mixing_valve,
  closed: { type: "flag", optional: true, ask: true },
  fuel_appliance: { type: "choice", options: ["none", "sealed", "natural_draft"], optional: true, ask: true },
  occupants: { type: "choice", options: ["sturdy", "frail"], optional: true, ask: true },

  place: commonFacts.place,
  model: { ...commonFacts.model, optional: true },
  work: choice("survey", "removal", "piping", "wiring", "refrigerant_circuit", "start_up", "hand_over"),
  replaces: choice("electric", "gas", "heat_pump"),
  permit: FLAG,
  inspected: FLAG,
  owner_shown: FLAG,
  asbestos: FLAG,

  tank: { ...commonFacts.tank, optional: true },
  line_pressure: { ...commonFacts.line_pressure, optional: true },
  relief_setting: quantity("pressure", toBase(30, "psi"), toBase(300, "psi")),
  control: choice("none", "tank", "relief_valve"),
  precharge: quantity("pressure", 0, toBase(200, "psi")),
  relief: choice("fitted", "missing", "plugged"),
  discharge: choice("none", "floor", "drain", "pan", "outdoors"),
  discharge_blocks: FLAG,
  discharge_end: inches(120),

  tap: degrees,
  bidet: degrees,
  public_lavatory: degrees,
  fixtures_limited: FLAG,
  idle: quantity("time", 0, 3600 * 24 * 365),
  dead_leg: FLAG,

  gas_smell: FLAG,
  gas_line: choice("capped", "open"),
  shared_flue: FLAG,

  unit_mass: masses,
  floor: choice("concrete", "wood"),
  floor_allows: masses,
  passage: inches(120),
  lifting_gear: FLAG,
  laid_down: FLAG,
  headroom: inches(120),
  service_space: inches(120),
  filter_reachable: FLAG,
  impact_protected: FLAG,
  ignition_height: inches(120),
  safe_access: FLAG,
  seismic: FLAG,
  straps: { type: "quantity", quantity: "count", min: 0, max: 9, whole: true, optional: true, byNameOnly: true },
  strap_height: inches(60),

  room_volume: quantity("room_volume", 0, toBase(20_000, "ft3")),
  exhaust: choice("room", "duct_bare", "duct_insulated"),
  house_air: FLAG,
  room_low: quantity("temperature", toBase(-20, "F"), toBase(90, "F")),
  bedroom_wall: FLAG,
  leak_harms: FLAG,
  pan: choice("none", "no_drain", "drained"),
  pan_depth: inches(12),
  pan_drain: inches(4),
  condensate: choice("nowhere", "pan", "drain_with_air_gap", "drain_direct", "outdoors", "pump"),
  condensate_slope: quantity("share", 0, 1),
  pump_float: FLAG,
  outdoor_lines: choice("none", "protected", "bare"),

  disconnect: FLAG,
  lockable: FLAG,
  working_depth: quantity("length", 0, toBase(30, "ft")),
  wet_place: choice("dry", "with_ground_fault", "without_ground_fault"),
  locked_out: FLAG,
  fill: choice("full", "empty"),
  bond: quantity("resistance", 0, 1000),

  pipe_insulated: FLAG,
  heat_traps: FLAG,
  joint: choice("alike", "dielectric", "direct"),
  lead_free: FLAG,
  other_water: choice("none", "preventer", "open"),
  shut_off: FLAG,
  drain_valve: FLAG,
  loop: choice("none", "always_on", "timer", "demand"),
  loop_check: FLAG,
  loop_return: degrees,
  hardness: choice("soft", "moderate", "hard", "very_hard"),
  softened: FLAG,
  well: FLAG,
  refrigerant_work: choice("none", "with_card", "without_card"),
  flammable: FLAG,
} as const satisfies FactSpecs;
export type SiteTold = FactsOf<typeof SITE_TOLD>;
