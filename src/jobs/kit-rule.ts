import type { FindingSpecs } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import type { KIT_TOLD, KitSite } from "./kit-told-facts.ts";

/** Why a rule brings what it brings; the catalogues word each. One reason a rule, under the rule's id. */
export const KIT_REASONS = {
  heater: {},
  connections: {},
  shut_off: {},
  relief_valve: {},
  relief_discharge: {},
  drain_pan: {},
  pan_drain: {},
  expansion_tank: {},
  pressure_regulator: {},
  tempering: {},
  condensate_line: {},
  condensate_pump: {},
  air_openings: {},
  air_ducts: {},
  quiet_feet: {},
  seismic_straps: {},
  new_circuit: {},
  gas_cap: {},
  open_flue: {},
  pipe_insulation: {},
  short_anode: {},
  circulation: {},
  outdoor_frost: {},
  surge_protection: {},
  spare_filter: {},
  heat_traps: {},
  sealing: {},
} as const satisfies FindingSpecs;
export type KitReason = keyof typeof KIT_REASONS;

/** So much of a part: pieces, or metres of what is cut to length. */
export interface KitPart {
  readonly part: string;
  readonly amount: number;
}
export interface KitCase {
  readonly name: string;
  readonly site: KitSite;
  /** All that the rule brings there, where the case says so. */
  readonly brings?: readonly KitPart[];
}

/** One rule: what a survey makes necessary to bring, how much of it, and why. */
export interface KitRule {
  readonly id: KitReason;
  /** Facts that decide it; where none of them is known, the kit says that this is open. */
  readonly asks: readonly (keyof typeof KIT_TOLD)[];
  /** What to bring, or nothing where these facts do not call for it. */
  readonly parts: (site: KitSite) => readonly KitPart[] | undefined;
  readonly source: Source;
  /** True: it is ordered for the job and rides on no truck's shelf. */
  readonly isOrdered?: true;
  readonly cases: {
    readonly fires: readonly [KitCase, ...KitCase[]];
    /** None only where every job needs it. */
    readonly silent: readonly KitCase[];
  };
}
/** Cut pieces do not add up to the run: so much more is brought. Common practice of the house. */
const CUTTING = 1.1;

/** What to bring for a run that was measured [m]. */
export function withCutting_m(run_m: number): number {
  return run_m * CUTTING;
}

/** A part that is counted. */
export function some(part: string, amount = 1): KitPart {
  return { part, amount };
}

/** What is brought of something cut to length where nobody measured the run [m]: one stick; common practice. */
export const STICK_m = toBase(10, "ft");

/** Behind amounts and conditions that rest on the habit of the trade alone. */
export const TRADE: Source = { basis: "common_practice", document: "Oldhand", section: "kit list" };
