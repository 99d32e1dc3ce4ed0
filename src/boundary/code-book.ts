import { z } from "zod";
import type { AnyCaution } from "../cautions/caution.ts";
import { type AdoptedCode, type Amendment, type Code, type CodeArea, LIMITS } from "../cautions/code.ts";
import type { LocalText, Severity } from "../declaration/answer.ts";
import { type BookFault, type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";
import { judgeAmendments } from "./code-amendments.ts";
import { cited, LIMIT_IDS, type LimitTable, limitTable, optional } from "./code-limits.ts";
import { resolveLimits } from "./resolve-limits.ts";
import { sheetQuantity } from "./sheet-fields.ts";

/** What a code book is read against. */
export interface CodeContext {
  /** Limits of the model codes that come with Oldhand, for those that the company leaves out. */
  readonly shipped: LimitTable;
  /** Ids of the places of the books, the company's own first. */
  readonly places: readonly [string, ...string[]];
  /** The cautions that may be amended; left out where the same book was judged by somebody else already. */
  readonly cautions?: readonly AnyCaution[];
}
/** The code at each place of the books. */
export interface CodeBook {
  readonly isInvented: boolean;
  readonly code: Code;
  readonly codes: Readonly<Record<string, Code>>;
}

/** Taken where a company has not said what was adopted. */
const MODEL_CODES: Readonly<Record<CodeArea, AdoptedCode>> = {
  plumbing: { family: "IPC", edition: "2021" },
  electrical: { family: "NEC", edition: "2023" },
  mechanical: { family: "IMC", edition: "2021" },
};

const adopted = file({ family: words("IPC"), edition: words('"2021"') });
const anywhere = file({ plumbing: adopted, electrical: adopted, mechanical: adopted });
const localText = z
  .union([words("why, in a sentence"), file({ en: words("a sentence"), es: words("una frase") })], {
    error: say("write one text, or en: and es:"),
  })
  .transform((text): LocalText => (typeof text === "string" ? { en: text, es: text } : text));
const limit = file(Object.fromEntries(LIMIT_IDS.map((id) => [id, sheetQuantity(LIMITS[id]).exactOptional()])));
const amendment = file({
  ...cited,
  caution: words("line_pressure_high"),
  action: oneOf(["tighten", "replace", "silence"]),
  severity: oneOf(["stop", "must", "should", "note"]).exactOptional(),
  limit: limit.exactOptional(),
  asks: localText.exactOptional(),
  because: localText,
  place: z.string({ error: "write the id of a place of places.yaml" }).exactOptional(),
});
export type WrittenAmendment = z.infer<typeof amendment>;

const codeFile = file({
  invented: z.boolean({ error: say("write true when adoption and amendments are invented, else false") }),
  adopted: anywhere,
  places: z.array(file({ place: words("ostrowick"), adopted: anywhere.partial() })).exactOptional(),
  limits: limitTable.exactOptional(),
  amendments: z.array(amendment).exactOptional(),
});
type WrittenCode = z.infer<typeof codeFile>;

/** Reads the limits of the model codes that come with Oldhand. */
export function readShippedLimits(contents: unknown): BookRead<LimitTable> {
  return read(codeFile, contents, ({ limits = {} }) => limits);
}

/** Reads what stands in code.yaml: what was adopted where, the numbers that codes set, and local amendments. */
export function readCode(contents: unknown, context: CodeContext): BookRead<CodeBook> {
  const parsed = read(codeFile, contents, (written) => written);
  if (!parsed.ok) return parsed;
  const { value: written } = parsed;
  const codes = codesOf(written, context);
  const faults = [
    ...unknownPlaces(written, context),
    ...judgeAmendments(written.amendments ?? [], context.cautions, (place) => codes[place ?? context.places[0]]),
  ];
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, value: { isInvented: written.invented, ...withOwn(codes, context) } };
}

/** The code of a company that has not said what was adopted: the model codes, without amendments. */
export function assumeCode(context: CodeContext): CodeBook {
  const written = { invented: true, adopted: MODEL_CODES };
  const codes = Object.entries(codesOf(written, context)).map(([place, code]): [string, Code] => [
    place,
    { ...code, isAssumed: true },
  ]);
  return { isInvented: true, ...withOwn(Object.fromEntries(codes), context) };
}

function withOwn(codes: Readonly<Record<string, Code>>, { places }: CodeContext): Pick<CodeBook, "code" | "codes"> {
  const code = codes[places[0]];
  if (code === undefined) throw new Error("the company's own place has a code like every other");
  return { code, codes };
}

function codesOf(written: WrittenCode, { shipped, places }: CodeContext): Readonly<Record<string, Code>> {
  const table = { ...shipped, ...written.limits };
  const code = (place: string): Code => {
    const own = written.places?.find((one) => one.place === place)?.adopted;
    const { plumbing, electrical, mechanical } = written.adopted;
    const adoptedHere = {
      plumbing: own?.plumbing ?? plumbing,
      electrical: own?.electrical ?? electrical,
      mechanical: own?.mechanical ?? mechanical,
    };
    return {
      adopted: adoptedHere,
      limits: resolveLimits(table, adoptedHere, place),
      amendments: amendmentsAt(written.amendments ?? [], place),
    };
  };
  return Object.fromEntries(places.map((place) => [place, code(place)]));
}

/** What is amended at a place; its own word on a caution goes before one that holds everywhere. */
function amendmentsAt(all: readonly WrittenAmendment[], place: string): readonly Amendment[] {
  const here = all.filter((one) => one.place === place);
  const rest = all.filter(({ place: at, caution }) => at === undefined && !here.some((one) => one.caution === caution));
  return [...here, ...rest].map(shapeAmendment);
}

function shapeAmendment(written: WrittenAmendment): Amendment {
  const { caution, action, severity, limit: numbers, asks, because, document, basis, checked_on } = written;
  const [id] = LIMIT_IDS.filter((one) => numbers?.[one] !== undefined);
  const value = id && numbers?.[id];
  return {
    caution,
    action,
    because,
    cites: {
      document,
      basis,
      checkedOn: checked_on,
      ...optional({ edition: written.edition, section: written.section }),
    },
    ...(severity !== undefined && { severity: severity satisfies Severity }),
    ...(id !== undefined && value !== undefined && { limit: { id, value } }),
    ...(asks !== undefined && { asks }),
  };
}

function unknownPlaces({ places = [], amendments = [], limits = {} }: WrittenCode, context: CodeContext): BookFault[] {
  const named = [
    ...places.map(({ place }, row) => ({ place, path: ["places", row, "place"] })),
    ...amendments.map(({ place }, row) => ({ place, path: ["amendments", row, "place"] })),
    ...LIMIT_IDS.flatMap((id) =>
      (limits[id]?.values ?? []).map(({ place }, row) => ({ place, path: ["limits", id, "values", row, "place"] })),
    ),
  ];
  const known = context.places.join(", ");
  return named.flatMap(({ place, path }) =>
    place === undefined || context.places.includes(place)
      ? []
      : [{ path, reason: `${place} is no place of places.yaml; write one of ${known}` }],
  );
}
