import type { Books } from "../../books/books.ts";
import { partAmount, partWord, personName } from "../../crew/crew-words.ts";
import type { Lapse } from "../../crew/validity.ts";
import { dayAt } from "../../crew/zone-time.ts";
import { type AnswerTable, q, type TableCell } from "../../declaration/answer.ts";
import { nameStep } from "../startup-step-names.ts";
import type { CalledBack, Digest, LeftOpen } from "./collect-digest.ts";
import type { DigestCell } from "./digest-words.ts";
import type { Story } from "./story.ts";
import type { Figure } from "./who-sees.ts";

type Cell = TableCell<DigestCell>;
type Table = AnswerTable<DigestCell>;
/** A job in the table of a figure, with what it has to do with the figure. */
interface Told {
  readonly story: Story;
  readonly why: Cell;
}

/** How many parts are named as used most. */
const MOST_PARTS = 8;

/** What the first look at a digest shows as tables, by what may be seen. */
export function tabulateDigest(digest: Digest, sees: readonly Figure[], books: Books): readonly Table[] {
  const items = sees.includes("open_items") ? digest.items : [];
  const callBacks = sees.includes("callbacks") ? digest.callBacks : [];
  const tables: readonly Table[] = [
    { id: "items", rows: items.map((one) => itemRow(one, books)) },
    { id: "callbacks", rows: callBacks.map((one) => callBackRow(one, books)) },
    { id: "by_model", rows: callBacks.length === 0 ? [] : rowsByModel(digest, books) },
    { id: "by_cause", rows: rowsByCause(callBacks, books) },
    { id: "measured", rows: sees.includes("readings") ? rowsMeasured(digest) : [] },
    { id: "parts", rows: sees.includes("parts") ? rowsOfParts(digest, books) : [] },
    { id: "lapses_soon", rows: sees.includes("lapses") ? lapseRows(digest.lapses, books) : [] },
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

/** The jobs behind one figure, each once a line. */
export function tabulateJobs(digest: Digest, figure: Figure, books: Books): Table {
  if (figure === "lapses") return { id: "lapses", rows: lapseRows(digest.lapses, books) };
  const rows = tellJobs(digest, figure, books).map(({ story: { job }, why }): readonly Cell[] => [
    job.number,
    job.customer,
    job.place,
    job.day ?? { code: "no_day", data: {} },
    unitName(job.model, books),
    why,
  ]);
  return { id: "jobs", rows };
}

/** The jobs of a figure in its order, each once. */
export function jobsOf(digest: Digest, figure: Figure, books: Books): readonly string[] {
  return [...new Set(tellJobs(digest, figure, books).map(({ story }) => story.job.number))];
}

function tellJobs(digest: Digest, figure: Figure, books: Books): readonly Told[] {
  const { timeZone } = books.company;
  switch (figure) {
    case "finished":
      return digest.finished.map(({ story, closing }) => ({ story, why: sayClosing(closing, timeZone) }));
    case "opened":
      return digest.opened.map((story) => ({
        story,
        why: { code: "opened_on", data: { on: dayAt(timeZone, story.job.openedAt_ms) } },
      }));
    case "cancelled":
      return digest.cancelled.map((story) => ({ story, why: "" }));
    case "open_items":
    case "overdue":
      return digest.items
        .filter(({ isOverdue }) => figure === "open_items" || isOverdue)
        .map((one) => ({ story: one.story, why: [sayItem(one, books), sayDue(one)] }));
    case "callbacks":
      return digest.callBacks.map((one) => ({ story: one.story, why: sayCallBack(one, timeZone) }));
    case "first_visit":
      return digest.firstClosed.map(({ story, closing }) => ({
        story,
        why: [sayClosing(closing, timeZone), { code: "visits", data: { visits: q("count", closing.visits) } }],
      }));
    case "readings":
      return digest.steps.flatMap(({ step, stories }) => stories.map((story) => ({ story, why: nameStep(step) })));
    case "on_site":
      return digest.onSite.map(({ story, time_s }) => ({ story, why: q("time", time_s) }));
    case "parts":
      return digest.parts.flatMap(({ part, stories }) =>
        stories.map((story) => ({ story, why: partWord(part, books) })),
      );
    case "lapses":
      return [];
  }
}

/** What runs out, the soonest first: whose, what, its last day, and the horizon that it falls in. */
export function lapseRows(lapses: readonly Lapse[], books: Books): readonly (readonly Cell[])[] {
  return lapses.map(({ person, what, on, within }) => [
    personName(person, books),
    nameLapse(what, books),
    on,
    { code: "within", data: { horizon: q("count", within) } },
  ]);
}

function nameLapse(what: Lapse["what"], books: Books): DigestCell {
  if (what.is === "credential") return { code: what.kind, data: {} };
  if (what.is === "training") return { code: "training", data: { subject: what.subject } };
  const { en, es } = books.crew.parts.find(({ id }) => id === what.tool)?.name ?? { en: what.tool, es: what.tool };
  return { code: "calibration_of", data: { en, es, id: what.id } };
}

/** The name of a unit, its id where the catalogue no longer has it. */
export function unitName(model: string | undefined, { catalogue }: Books): string | DigestCell {
  if (model === undefined) return { code: "no_unit", data: {} };
  return catalogue.find(({ id }) => id === model)?.name ?? model;
}

/** A cause by its id, as people call it. */
export function causeName(cause: string | undefined, { causeNames }: Books): DigestCell {
  if (cause === undefined) return { code: "no_cause_yet", data: {} };
  const plain = cause.replaceAll("_", " ");
  const { en, es } = causeNames?.[cause] ?? { en: plain, es: plain };
  return { code: "cause", data: { en, es } };
}

function sayClosing({ at_ms, isComplete }: { at_ms: number; isComplete: boolean }, timeZone: string): DigestCell {
  return { code: isComplete ? "closed_complete" : "closed_with_items", data: { on: dayAt(timeZone, at_ms) } };
}

function sayItem({ item }: LeftOpen, books: Books): DigestCell {
  return { code: "item", data: { what: item.what, owner: personName(item.owner, books) } };
}

function sayDue({ item, isOverdue }: LeftOpen): DigestCell {
  return { code: isOverdue ? "overdue_since" : "due_on", data: { due: item.due } };
}

function sayCallBack({ callBack: { at_ms, because } }: CalledBack, timeZone: string): DigestCell {
  const on = dayAt(timeZone, at_ms);
  return because === undefined
    ? { code: "came_back_silent", data: { on } }
    : { code: "came_back", data: { on, because } };
}

function itemRow(one: LeftOpen, books: Books): readonly Cell[] {
  return [one.story.job.number, nameStep(one.item.what), personName(one.item.owner, books), sayDue(one)];
}

function callBackRow(one: CalledBack, books: Books): readonly Cell[] {
  const { job } = one.story;
  const why = sayCallBack(one, books.company.timeZone);
  return [job.number, job.place, unitName(job.model, books), why, causeName(one.callBack.cause, books)];
}

/** Call-backs of the period by model, beside how many of that model were finished lately and came back. */
function rowsByModel({ callBacks, recent }: Digest, books: Books): readonly (readonly Cell[])[] {
  const models = [...new Set(callBacks.map(({ story }) => story.job.model))];
  return models.map((model) => {
    const ofModel = ({ job }: Story) => job.model === model;
    return [
      unitName(model, books),
      q("count", callBacks.filter(({ story }) => ofModel(story)).length),
      q("count", recent.finished.filter(ofModel).length),
      q("count", recent.cameBack.filter(ofModel).length),
    ];
  });
}

function rowsByCause(callBacks: readonly CalledBack[], books: Books): readonly (readonly Cell[])[] {
  const causes = [...new Set(callBacks.map(({ callBack }) => callBack.cause))];
  return causes.map((cause) => [
    causeName(cause, books),
    q("count", callBacks.filter(({ callBack }) => callBack.cause === cause).length),
  ]);
}

function rowsMeasured({ steps }: Digest): readonly (readonly Cell[])[] {
  const few: DigestCell = { code: "too_few", data: {} };
  return steps.map(({ step, taken, compared, middle, farthest, notAccepted }) => [
    nameStep(step),
    q("count", taken),
    q("count", compared),
    middle ?? few,
    farthest ?? few,
    q("count", notAccepted),
  ]);
}

function rowsOfParts({ parts }: Digest, books: Books): readonly (readonly Cell[])[] {
  return parts
    .slice(0, MOST_PARTS)
    .map(({ part, amount, stories }) => [
      partWord(part, books),
      partAmount(part, amount, books),
      q("count", stories.length),
    ]);
}
