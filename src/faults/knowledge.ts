import type { QuantityKind } from "../units/quantity-kinds.ts";

/**
 * What Oldhand knows of faults, as data: what people complain of, what may lie behind it, and what may be checked.
 * Each entry is one file of `src/faults/knowledge/`, with its sentences in both languages; all of it is checked against
 * itself at start-up and frozen.
 */
export interface FaultKnowledge {
  readonly symptoms: readonly Symptom[];
  readonly causes: readonly Cause[];
  readonly checks: readonly Check[];
  /** Checks that see the same physics: later ones of a group say less. */
  readonly groups: readonly (readonly string[])[];
}

/** Knowledge of nothing: what a library without faults holds. */
export const NO_FAULTS: FaultKnowledge = { symptoms: [], causes: [], checks: [], groups: [] };

/** How likely something is, in the words of somebody who has seen many of them. Judgement, as are the numbers for them. */
export const LEVELS = {
  very_likely: 0.85,
  likely: 0.6,
  possible: 0.25,
  unlikely: 0.06,
  impossible: 0.005,
} as const;
export type Level = keyof typeof LEVELS;

export const UNIT_KINDS = ["integrated", "split", "resistance"] as const;
export type UnitKind = (typeof UNIT_KINDS)[number];
/** Less than 60 days, up to six years, older. */
export const AGE_BANDS = ["new", "mid", "old"] as const;
export type AgeBand = (typeof AGE_BANDS)[number];

/** What must be seen to before somebody's hand goes in. */
export const HAZARDS = ["lockout", "live", "scald", "pressure", "refrigerant", "ladder", "gas", "water_off"] as const;
export type Hazard = (typeof HAZARDS)[number];

/** Who may do it. `qualified` is an electrician, or a plumber where local rule lets one. */
export const DOERS = [
  "household",
  "crew",
  "plumber",
  "qualified",
  "electrician",
  "refrigerant",
  "combustion",
  "controls",
  "ducts",
  "water_treatment",
] as const;
export type Doer = (typeof DOERS)[number];

/** Words in both languages; `L` is a language of the house. */
export type InLanguages<T> = Readonly<Record<"en" | "es", T>>;

export interface Symptom {
  readonly id: string;
  /** "stop": the stop line is said first, alone, and must be acknowledged. */
  readonly urgency: "stop" | "urgent" | "same_day" | "normal" | "low";
  readonly words: InLanguages<{
    readonly label: string;
    /** What to ask back when it is all that is known. */
    readonly ask: string;
    /** What people say; matched loosely, typing slips and all. */
    readonly phrases: readonly string[];
    /** The one line that comes before anything else. */
    readonly stop?: string;
  }>;
}

export interface Cause {
  readonly id: string;
  readonly family: string;
  readonly appliesTo: readonly UnitKind[];
  /** Relative weight by age, before anything is known. */
  readonly prior: Readonly<Record<AgeBand, number>>;
  /** "judgement", or the source that the weight rests on. */
  readonly basis: string;
  /** What the likelihoods rest on: "judgement" until closed jobs re-weight them. */
  readonly likelihoods?: string;
  /** How likely this complaint is with this cause; a complaint that is not listed is unlikely. */
  readonly symptoms: Readonly<Record<string, Level>>;
  readonly repairBy: readonly [Doer, ...Doer[]];
  readonly hazards: readonly Hazard[];
  readonly words: InLanguages<{
    readonly label: string;
    /** Why it does what it does. */
    readonly why: string;
    readonly remedy: string;
    readonly parts: readonly string[];
    /** What to prove afterwards. */
    readonly verify: string;
    /** What to tell the household. */
    readonly tell: string;
    readonly stop?: string;
  }>;
}

/** A reading that is compared with what this unit on this site should show. */
export interface Reading {
  readonly quantity: QuantityKind;
  /** Function of `src/faults/expected/` that computes what it should be. */
  readonly expected: string;
  /** Standard error of the usual instrument, as a share of the reading and as a least amount in the base unit. */
  readonly error: { readonly share: number; readonly least: number };
}

export interface Outcome {
  readonly id: string;
  /**
   * For readings: the range that counts as this outcome, as a share of what is expected, or in the base unit where the
   * outcome does not depend on it. An open end is left out. Ranges of one check meet without gap or overlap; an outcome
   * without a range is seen rather than read, and has a button only.
   */
  readonly share?: { readonly from?: number; readonly to?: number };
  readonly range?: { readonly from?: number; readonly to?: number };
  readonly words: InLanguages<string>;
}

export interface Check {
  readonly id: string;
  readonly minutes: number;
  readonly doer: Doer;
  /** Tools by the ids of the company's tool list; none where eyes and hands do. */
  readonly tools: readonly string[];
  readonly hazards: readonly Hazard[];
  readonly appliesTo: readonly UnitKind[];
  readonly reading?: Reading;
  readonly outcomes: readonly [Outcome, Outcome, ...Outcome[]];
  /** How likely each outcome is with a cause that is not listed, and with each that is. */
  readonly usual: Readonly<Record<string, Level>>;
  readonly byCause: Readonly<Record<string, Readonly<Record<string, Level>>>>;
  /** What these likelihoods rest on: "judgement" until closed jobs re-weight them. */
  readonly likelihoods?: string;
  readonly words: InLanguages<{
    readonly label: string;
    readonly how: string;
    /** What counts as right, in words; a reading's number is computed. */
    readonly accept: string;
  }>;
}
