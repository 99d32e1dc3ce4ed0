import { z } from "zod";
import { type CodePointer, type DisplayCodeEntry, foldCode } from "../books/display-codes.ts";
import { type FaultKnowledge, LEVELS, type Level } from "../faults/knowledge.ts";
import { type BookFault, type BookRead, file, read, say, words } from "./book-schema.ts";

const POINTER = /^([a-z][a-z0-9_]*)(?:\.([a-z][a-z0-9_]*))?(?:\s+([a-z_]+))?$/;
const LEVEL_NAMES = Object.keys(LEVELS) as Level[];
const SOME_POINTERS = "write causes, symptoms or outcomes, such as [tank_sensor very_likely, sensor_resistance.open]";
/** A code speaks for what it names as somebody who has seen it often would: likely, where no level is written. */
const USUAL_LEVEL: Level = "likely";

/** One code as it stands in display-codes.yaml, or in one line of a CSV file. */
export const displayCodeEntry = file({
  model: words("hollin-50"),
  code: words("A1"),
  meaning: words("The air filter is blocked"),
  points_to: z.array(z.string({ error: say(SOME_POINTERS) }), { error: say(SOME_POINTERS) }).exactOptional(),
});
const displayCodesFile = file({
  invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
  codes: z
    .array(displayCodeEntry, { error: say("write a list of codes, each starting with a dash") })
    .min(1, "name at least one code"),
});
type Entry = z.infer<typeof displayCodeEntry>;

/** What a book of codes is read against; what is left out is not judged. */
export interface DisplayCodeContext {
  /** Models of the company's catalogue. */
  readonly models?: readonly string[];
  readonly faults?: FaultKnowledge;
}
/** A company's book of display codes. */
export interface DisplayCodeBook {
  readonly isInvented: boolean;
  readonly displayCodes: readonly DisplayCodeEntry[];
}

/** Reads what stands in display-codes.yaml. */
export function readDisplayCodes(contents: unknown, context: DisplayCodeContext = {}): BookRead<DisplayCodeBook> {
  const book = read(displayCodesFile, contents, (written) => written);
  if (!book.ok) return book;
  const { invented, codes } = book.value;
  const faults = codes.flatMap((entry, index) => faultsOf(entry, index, codes, context));
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, value: { isInvented: invented, displayCodes: codes.map(shapeEntry) } };
}

function faultsOf(
  entry: Entry,
  index: number,
  all: readonly Entry[],
  context: DisplayCodeContext,
): readonly BookFault[] {
  const { model, code, points_to = [] } = entry;
  const isTwice = all.slice(0, index).some((one) => one.model === model && foldCode(one.code) === foldCode(code));
  return [
    ...(context.models === undefined || context.models.includes(model)
      ? []
      : [{ path: ["codes", index, "model"], reason: `${model} is no model of the catalogue` }]),
    ...(isTwice ? [{ path: ["codes", index, "code"], reason: `${code} of ${model} stands above already` }] : []),
    ...points_to.flatMap((written, place) => {
      const reason = faultOfPointer(written, context.faults);
      return reason === undefined ? [] : [{ path: ["codes", index, "points_to", place], reason }];
    }),
  ];
}

function faultOfPointer(written: string, faults: FaultKnowledge | undefined): string | undefined {
  const [, id = "", outcome, level] = POINTER.exec(written.trim()) ?? [];
  if (id === "") return `"${written}": ${SOME_POINTERS}`;
  if (level !== undefined && !isLevel(level)) return `"${level}": write one of ${LEVEL_NAMES.join(", ")}`;
  if (faults === undefined) return undefined;
  if (outcome === undefined)
    return [...faults.causes, ...faults.symptoms].some((one) => one.id === id)
      ? undefined
      : `${id} is no cause and no symptom; an outcome is written check.outcome`;
  const check = faults.checks.find((one) => one.id === id);
  if (check === undefined) return `${id} is no check`;
  const outcomes = check.outcomes.map((one) => one.id);
  return outcomes.includes(outcome) ? undefined : `${id} has the outcomes ${outcomes.join(", ")}`;
}

function shapeEntry({ model, code, meaning, points_to = [] }: Entry): DisplayCodeEntry {
  return { model, code, meaning, pointsTo: points_to.map(shapePointer) };
}

function shapePointer(written: string): CodePointer {
  const [, id = "", outcome, level] = POINTER.exec(written.trim()) ?? [];
  return {
    id,
    ...(outcome !== undefined && { outcome }),
    level: level !== undefined && isLevel(level) ? level : USUAL_LEVEL,
  };
}

function isLevel(name: string): name is Level {
  return Object.hasOwn(LEVELS, name);
}
