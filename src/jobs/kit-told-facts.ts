import type { ChoiceFact, FactSpecs, FactsOf, FactValue, FlagFact, QuantityFact } from "../declaration/facts.ts";
import { nameWithUnit } from "../declaration/run-topic.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { SITE_TOLD } from "../household/site-told-facts.ts";
import { toBase } from "../units/convert.ts";

const FLAG = { type: "flag", optional: true, byNameOnly: true } as const satisfies FlagFact;
const RUN = {
  type: "quantity",
  quantity: "length",
  min: 0,
  max: toBase(500, "ft"),
  usual: [5, 10, 20, 40].map((feet) => toBase(feet, "ft")),
  optional: true,
  byNameOnly: true,
} as const satisfies QuantityFact<"length">;

/** What a survey tells about what must be brought. Ids that other walks have too mean the same thing there. */
export const KIT_TOLD = {
  model: SITE_TOLD.model,
  replaces: { ...SITE_TOLD.replaces, ask: true },
  closed: SITE_TOLD.closed,
  line_pressure: { ...SITE_TOLD.line_pressure, ask: true },
  setpoint: { ...SITE_TOLD.setpoint, byNameOnly: true },
  mixing_valve: SITE_TOLD.mixing_valve,
  air_way: { type: "choice", options: ["room", "grilles", "ducts"], optional: true, ask: true } satisfies ChoiceFact,
  circuit_right: { ...FLAG, ask: true },
  condensate: { ...SITE_TOLD.condensate, ask: true },
  leak_harms: SITE_TOLD.leak_harms,
  pan: SITE_TOLD.pan,
  control: SITE_TOLD.control,
  relief: SITE_TOLD.relief,
  occupants: { ...SITE_TOLD.occupants, byNameOnly: true },
  tank: { ...SITE_TOLD.tank, byNameOnly: true },
  room_volume: SITE_TOLD.room_volume,
  floor: SITE_TOLD.floor,
  bedroom_wall: SITE_TOLD.bedroom_wall,
  seismic: SITE_TOLD.seismic,
  shared_flue: SITE_TOLD.shared_flue,
  headroom: SITE_TOLD.headroom,
  loop: SITE_TOLD.loop,
  heat_traps: SITE_TOLD.heat_traps,
  fuel_appliance: { ...SITE_TOLD.fuel_appliance, byNameOnly: true },
  outdoor_lines: SITE_TOLD.outdoor_lines,
  refrigerant_work: SITE_TOLD.refrigerant_work,
  flammable: SITE_TOLD.flammable,
  /** True: a shut-off valve that still works stands in the hot pipe. */
  hot_shut_off: FLAG,
  /** True: the place freezes in winter. */
  freezes: FLAG,
  /** True: lightning or a rough grid has taken boards there. */
  surges: FLAG,
  discharge_length: RUN,
  pan_drain_length: RUN,
  condensate_length: RUN,
  duct_length: RUN,
  circuit_length: RUN,
  hot_length: RUN,
  /** Water that runs before the far tap is hot. */
  wait_volume: {
    type: "quantity",
    quantity: "volume",
    min: 0,
    max: toBase(10, "gal"),
    optional: true,
    byNameOnly: true,
  },
} as const satisfies FactSpecs;

/** What the value of a fact is made of. */
const VALUE_TYPES = { quantity: "number", flag: "boolean", choice: "string", name: "string" } as const;

/** The facts of a survey as rules see them: all may be unknown. */
export type KitTold = Partial<FactsOf<typeof KIT_TOLD>>;
/** A survey with the unit that goes in, where the catalogue knows it. */
export interface KitSite extends KitTold {
  readonly unit?: CatalogueModel;
}

/**
 * The facts that a job has under their shared ids, as rules see them. Ids that no kit rule looks at are left out, and so
 * is a value of another type than its fact's.
 */
export function readKitTold(facts: Readonly<Record<string, FactValue | undefined>>): KitTold {
  return Object.fromEntries(
    Object.entries(KIT_TOLD).flatMap(([id, spec]) => {
      const value = facts[id];
      if (value === undefined) return [];
      const wanted = VALUE_TYPES[spec.type];
      const isOption = spec.type !== "choice" || spec.options.some((option) => option === value);
      return typeof value === wanted && isOption ? [[nameWithUnit(id, spec), value]] : [];
    }),
  );
}
