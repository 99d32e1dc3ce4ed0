import type { LocalText, Severity } from "../declaration/answer.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";
import type { Citation } from "./caution.ts";

/**
 * What codes set a number for, with the kind of that number. The numbers themselves stand in the company's books by code
 * family, edition and place; a caution asks for them by these ids and never holds one of its own.
 */
export const LIMITS = {
  /** Water pressure in a building above which a regulator is asked for. */
  line_pressure: "pressure",
  /** Highest setting of the relief valve of a water heater. */
  relief_pressure: "pressure",
  /** Temperature at which a temperature and pressure relief valve must be open. */
  relief_temperature: "temperature",
  /** Highest water temperature at a tub, a shower, a bidet, and a lavatory for the public. */
  tub: "temperature",
  shower: "temperature",
  bidet: "temperature",
  public_lavatory: "temperature",
  /** Highest end of the relief discharge pipe over floor, receptor or ground. */
  relief_discharge_end: "dimension",
  /** Least depth of the pan under a heater, and least size of its drain. */
  pan_depth: "dimension",
  pan_drain: "dimension",
  /** Least fall of a condensate line over its length. */
  condensate_slope: "share",
  /** Least height of the lower earthquake strap over the controls. */
  strap_above_controls: "dimension",
  /** Largest tanks that two and three straps hold. */
  two_strap_tank: "volume",
  three_strap_tank: "volume",
  /** Least side of the level space before the controls. */
  service_space: "dimension",
  /** Least height of what sparks or glows over a garage floor. */
  ignition_height: "dimension",
  /** Least space to work before a panel or disconnect, deep and wide. */
  working_depth: "length",
  working_width: "dimension",
} as const satisfies Readonly<Record<string, QuantityKind>>;
export type LimitId = keyof typeof LIMITS;

/** A number that a code sets, in the base unit of its kind, and who says so. */
export interface Limit {
  readonly value: number;
  /** Which side of the number is asked for, so that it is known which change is the stricter one. */
  readonly bound: Bound;
  /** The document that is followed. */
  readonly cites: Citation;
  /** What other documents say that do not agree with it. */
  readonly others?: readonly { readonly value: number; readonly cites: Citation }[];
}
export const BOUNDS = ["at_most", "at_least"] as const;
export type Bound = (typeof BOUNDS)[number];

export const CODE_AREAS = ["plumbing", "electrical", "mechanical"] as const;
export type CodeArea = (typeof CODE_AREAS)[number];
export interface AdoptedCode {
  /** Model code as the trade calls it, such as IPC, IRC, UPC, NEC. */
  readonly family: string;
  readonly edition: string;
}

/** What a place or a company has changed about a caution, and why. A caution of severity stop is never silenced. */
export interface Amendment {
  readonly caution: string;
  readonly action: "tighten" | "replace" | "silence";
  /** Severer severity that it has here, with "tighten". */
  readonly severity?: Severity;
  /** Stricter number that this caution goes by here, with "tighten". */
  readonly limit?: { readonly id: LimitId; readonly value: number };
  /** Said after, or with "replace" instead of, what the caution asks. */
  readonly asks?: LocalText;
  /** Why, in the company's own words; shown to whoever asks. */
  readonly because: LocalText;
  readonly cites: Citation;
}

/** The code that a company works under: what was adopted, the numbers that it sets here, and what was changed locally. */
export interface Code {
  readonly adopted: Readonly<Record<CodeArea, AdoptedCode>>;
  /** True: the company has not said what was adopted; model codes are taken. */
  readonly isAssumed?: true;
  readonly limits: Readonly<Record<LimitId, Limit>>;
  readonly amendments: readonly Amendment[];
}

/** True when a value asks for more than the limit does. */
export function isStricter(value: number, { value: limit, bound }: Pick<Limit, "value" | "bound">): boolean {
  return bound === "at_most" ? value < limit : value > limit;
}

/** The same code and numbers where another family of plumbing code is adopted, as a case of a caution may ask. */
export function underPlumbingFamily(code: Code, family: string | undefined): Code {
  if (family === undefined) return code;
  return { ...code, adopted: { ...code.adopted, plumbing: { ...code.adopted.plumbing, family } } };
}
