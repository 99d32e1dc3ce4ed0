import type { HeatSource } from "./water-heater.ts";

/**
 * Modes as data: which source may run, at which sensor and how far below the setpoint it joins, and what never runs
 * together. One interpreter (`physics/tank/control.ts`) reads them all; a new mode is a new value here and no code.
 * The numbers are common practice of such controls where a comment does not say otherwise; no unit is imitated.
 */
export type PolicyId =
  | "heat_pump_only"
  | "heat_pump_first"
  | "both_together"
  | "elements_only"
  | "away_hold"
  | "switched_off";
export type Sensor = "upper" | "lower" | "mean";

/** Lets one source run between two water temperatures. Rules are read in order; the earlier one has right of way. */
export interface SourceRule {
  readonly source: HeatSource;
  readonly sensor: Sensor;
  /** Where it starts: under the setpoint by so much, by the sheet's own dead band, or at a fixed temperature. */
  readonly start: { readonly under_K: number } | { readonly under: "dead_band" } | { readonly at_C: number };
  /** Where it stops, likewise; the setpoint is `under_K: 0`. */
  readonly stop: { readonly under_K: number } | { readonly at_C: number };
  /** How long the start condition must have lasted [s]. */
  readonly after_s: number;
  /** Runs only while the heat pump cannot: none in the unit, or locked out by air or water temperature. */
  readonly onlyWithoutHeatPump: boolean;
}

export interface Policy {
  readonly id: PolicyId;
  readonly rules: readonly SourceRule[];
  /** Sources that this mode keeps apart, beside what the wiring does. */
  readonly oneAtATime: readonly (readonly [HeatSource, HeatSource])[];
}

const AT_SETPOINT = { under_K: 0 } as const;
/** Water this cold is close to freezing somewhere in the pipes; every mode then heats to the second value [C]. */
const FROST_STARTS_C = 5;
const FROST_STOPS_C = 10;

function rule(source: HeatSource, sensor: Sensor, start: SourceRule["start"], more: Partial<SourceRule> = {}) {
  return { source, sensor, start, stop: AT_SETPOINT, after_s: 0, onlyWithoutHeatPump: false, ...more };
}

const HEAT_PUMP_AS_NEEDED = rule("heat_pump", "lower", { under: "dead_band" });
/** The lower element does the heat pump's work while the heat pump cannot. */
const LOWER_STANDS_IN = rule("lower", "lower", { under: "dead_band" }, { onlyWithoutHeatPump: true });
const UPPER_STANDS_IN = rule("upper", "upper", { under: "dead_band" }, { onlyWithoutHeatPump: true });
const FROST_GUARD: readonly SourceRule[] = [
  rule("heat_pump", "lower", { at_C: FROST_STARTS_C }, { stop: { at_C: FROST_STOPS_C } }),
  rule("lower", "lower", { at_C: FROST_STARTS_C }, { stop: { at_C: FROST_STOPS_C }, onlyWithoutHeatPump: true }),
  rule("upper", "upper", { at_C: FROST_STARTS_C }, { stop: { at_C: FROST_STOPS_C } }),
];
/** Two elements on one supply: the upper has right of way, as in every plain two-element tank. */
const ELEMENTS_TAKE_TURNS = [["upper", "lower"]] as const;

export const POLICIES: Readonly<Record<PolicyId, Policy>> = {
  heat_pump_only: {
    id: "heat_pump_only",
    rules: [HEAT_PUMP_AS_NEEDED, ...FROST_GUARD],
    oneAtATime: ELEMENTS_TAKE_TURNS,
  },
  heat_pump_first: {
    id: "heat_pump_first",
    rules: [
      // Back-up joins when the top, which is what people draw, is 12 K (about 22 F) short, and gives way 2 K early.
      rule("upper", "upper", { under_K: 12 }, { stop: { under_K: 2 } }),
      HEAT_PUMP_AS_NEEDED,
      UPPER_STANDS_IN,
      LOWER_STANDS_IN,
      ...FROST_GUARD,
    ],
    oneAtATime: ELEMENTS_TAKE_TURNS,
  },
  both_together: {
    id: "both_together",
    rules: [
      rule("upper", "upper", { under: "dead_band" }),
      HEAT_PUMP_AS_NEEDED,
      // The lower element helps when the bottom has been 15 K short for ten minutes.
      rule("lower", "lower", { under_K: 15 }, { after_s: 600, stop: { under_K: 5 } }),
      LOWER_STANDS_IN,
      ...FROST_GUARD,
    ],
    oneAtATime: ELEMENTS_TAKE_TURNS,
  },
  elements_only: {
    id: "elements_only",
    rules: [
      rule("upper", "upper", { under: "dead_band" }),
      rule("lower", "lower", { under: "dead_band" }),
      ...FROST_GUARD,
    ],
    oneAtATime: ELEMENTS_TAKE_TURNS,
  },
  away_hold: {
    id: "away_hold",
    rules: [
      // Nobody draws, so a wide band saves starts; elements only where the heat pump cannot.
      rule("heat_pump", "lower", { under_K: 8 }),
      rule("lower", "lower", { under_K: 8 }, { onlyWithoutHeatPump: true }),
      ...FROST_GUARD,
    ],
    oneAtATime: ELEMENTS_TAKE_TURNS,
  },
  // The breaker is off: nothing runs, not even against frost. No unit offers it; outages and test procedures use it.
  switched_off: { id: "switched_off", rules: [], oneAtATime: [] },
};
