import { toBase } from "../units/convert.ts";
import type { FactSpecs } from "./facts.ts";
import type { Source } from "./source.ts";

/** Behind a default that rests on the habit of the trade alone; the help of the fact says why. */
export const OUR_HABIT: Source = { basis: "common_practice", document: "Oldhand" };

/**
 * Facts that several topics share, so that an id means the same thing in all of them and may travel with a job.
 * Their words stand in `messages/<language>/common-facts.ts`.
 */
export const commonFacts = {
  /** Water that the heater holds. */
  tank: {
    type: "quantity",
    quantity: "volume",
    min: toBase(2, "gal"),
    max: toBase(500, "gal"),
    usual: [toBase(40, "gal"), toBase(50, "gal"), toBase(65, "gal"), toBase(80, "gal")],
  },
  /** Temperature that the tank is kept at. */
  setpoint: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(40, "F"),
    max: toBase(210, "F"),
    usual: [toBase(120, "F"), toBase(130, "F"), toBase(140, "F")],
  },
  /** Temperature of the water that comes in from the street or well. */
  cold: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(32, "F"),
    max: toBase(120, "F"),
    usual: [toBase(40, "F"), toBase(50, "F"), toBase(60, "F"), toBase(70, "F")],
    byNameOnly: true,
    default: {
      value: toBase(50, "F"),
      source: OUR_HABIT,
    },
  },
  /** Pressure of the cold water with everything shut, at the heater. */
  line_pressure: {
    type: "quantity",
    quantity: "pressure",
    min: toBase(10, "psi"),
    max: toBase(200, "psi"),
    usual: [toBase(40, "psi"), toBase(60, "psi"), toBase(80, "psi")],
  },
  /** Pressure at which the relief valve of the heater opens. */
  relief_setting: {
    type: "quantity",
    quantity: "pressure",
    min: toBase(30, "psi"),
    max: toBase(300, "psi"),
    byNameOnly: true,
    default: {
      value: toBase(150, "psi"),
      source: OUR_HABIT,
    },
  },
  /** True: a check valve, regulator or backflow preventer keeps the water from going back to the street. */
  closed: {
    type: "flag",
    ask: true,
    default: {
      value: true,
      source: OUR_HABIT,
    },
  },
  /** True: a mixing valve between the tank and the taps. */
  mixing_valve: { type: "flag", optional: true, ask: true },
  /** Who lives there. */
  people: { type: "quantity", quantity: "count", min: 1, max: 12, whole: true, usual: [2, 3, 4, 5] },
  /** Stands in for the people who live there where nobody counted them. */
  bedrooms: {
    type: "quantity",
    quantity: "count",
    min: 1,
    max: 12,
    whole: true,
    usual: [2, 3, 4],
    byNameOnly: true,
    optional: true,
  },
  /** Rooms with a shower or tub: how many may shower at once. */
  bathrooms: {
    type: "quantity",
    quantity: "count",
    min: 1,
    max: 8,
    whole: true,
    usual: [1, 2, 3],
    byNameOnly: true,
    default: { value: 2, source: OUR_HABIT },
  },
  /** A model of the company's catalogue. */
  model: { type: "name", of: "model" },
  /** Temperature that people want at showers, tubs and sinks. */
  wanted: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(95, "F"),
    max: toBase(120, "F"),
    usual: [toBase(105, "F"), toBase(110, "F")],
    byNameOnly: true,
    default: { value: toBase(105, "F"), source: OUR_HABIT },
  },
  /** A place of the company's books; its own where nobody says otherwise. */
  place: { type: "name", of: "place", optional: true },
  /** Air that the unit stands in, dry bulb; what the place says for the month where nobody says otherwise. */
  air: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(0, "F"),
    max: toBase(120, "F"),
    usual: [toBase(50, "F"), toBase(60, "F"), toBase(70, "F")],
    byNameOnly: true,
    optional: true,
  },
  /** Month of the year, 1 = January. */
  month: {
    type: "choice",
    options: ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10", "11", "12"],
    // "away 10" are days: a bare number is no month.
    byNameOnly: true,
    optional: true,
  },
  /** How the unit heats; a policy of `equipment/policies.ts`. */
  mode: {
    type: "choice",
    options: ["heat_pump_only", "heat_pump_first", "both_together", "elements_only"],
    optional: true,
  },
  /** Voltage at the unit; what the unit is made for where nobody says otherwise. */
  supply: {
    type: "quantity",
    quantity: "voltage",
    min: 100,
    max: 260,
    usual: [240, 208, 120],
    optional: true,
  },
  /** Whether electricity costs the same at all hours; the first price plan of the books where nobody says otherwise. */
  rate: { type: "choice", options: ["flat", "time_of_use"], optional: true },
} as const satisfies FactSpecs;
