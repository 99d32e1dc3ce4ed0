import { z } from "zod";
import type { Citation } from "../cautions/caution.ts";
import {
  type AdoptedCode,
  BOUNDS,
  type Bound,
  CODE_AREAS,
  type CodeArea,
  LIMITS,
  type LimitId,
} from "../cautions/code.ts";
import type { QuantityKind } from "../units/quantity-kinds.ts";
import { file, oneOf, say, words } from "./book-schema.ts";
import { sheetQuantity } from "./sheet-fields.ts";

/** One number that one document sets. */
export interface LimitValue {
  readonly bound: Bound;
  readonly value: number;
  readonly cites: Citation;
  /** Model code that sets it, when it is one. */
  readonly code?: AdoptedCode;
  /** Place of the books that sets it itself. */
  readonly place?: string;
}
export interface LimitRow {
  /** The adopted code of this area chooses among the values. */
  readonly area: CodeArea;
  readonly values: readonly [LimitValue, ...LimitValue[]];
}
export type LimitTable = Readonly<Partial<Record<LimitId, LimitRow>>>;

export const LIMIT_IDS = Object.keys(LIMITS) as readonly LimitId[];

const placeId = z.string({ error: "write the id of a place of places.yaml" });
/** Who says so: document, section, how sure we are of it, and the day somebody looked. */
export const cited = {
  document: words("Ostrowick water rules"),
  edition: words('"2021"').exactOptional(),
  section: words('"604.8"').exactOptional(),
  basis: oneOf(["published", "from_memory", "common_practice", "invented"]),
  checked_on: z.iso.date({ error: say("write a day as YYYY-MM-DD") }),
};

function numberOf(kind: QuantityKind) {
  return file({
    ...cited,
    document: cited.document.exactOptional(),
    family: words("IPC").exactOptional(),
    place: placeId.exactOptional(),
    at_most: sheetQuantity(kind).exactOptional(),
    at_least: sheetQuantity(kind).exactOptional(),
  }).transform((written, context): LimitValue => {
    const { family, document = family, edition, section, basis, checked_on: checkedOn, place } = written;
    const bound = BOUNDS.find((one) => written[one] !== undefined);
    const value = bound && written[bound];
    if (bound === undefined || value === undefined || (written.at_most !== undefined && written.at_least !== undefined))
      return refuse(context, "write one of at_most and at_least");
    if (document === undefined)
      return refuse(context, "write the family of a model code, or the document that says so");
    if (family !== undefined && edition === undefined) return refuse(context, "write the edition of the model code");
    const cites = { document, basis, checkedOn, ...optional({ edition, section }) };
    const code = family !== undefined && edition !== undefined ? { family, edition } : undefined;
    return { bound, value, cites, ...(code && { code }), ...(place !== undefined && { place }) };
  });
}

function rowOf(kind: QuantityKind) {
  return file({
    area: oneOf(CODE_AREAS),
    values: z
      .array(numberOf(kind), { error: say("write a list of values, each starting with a dash") })
      .min(1, "write at least one value")
      .refine(
        (values) => new Set(values.map(({ bound }) => bound)).size <= 1,
        "at_most and at_least do not go together",
      ),
  });
}

/** Limits by their id; one that is left out is taken from the model codes that come with Oldhand. */
export const limitTable = file(
  Object.fromEntries(LIMIT_IDS.map((id) => [id, rowOf(LIMITS[id]).exactOptional()])),
).transform((rows) => rows as LimitTable);

function refuse(context: z.RefinementCtx, message: string): never {
  context.addIssue({ code: "custom", message });
  return z.NEVER;
}

/** The fields that have a value, so that an absent one stays absent. */
export function optional<T extends Record<string, string | undefined>>(
  fields: T,
): { readonly [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never;
}
