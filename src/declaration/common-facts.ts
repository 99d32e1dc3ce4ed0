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
} as const satisfies FactSpecs;
