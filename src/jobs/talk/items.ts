import type { Books } from "../../books/books.ts";
import { readDay } from "../../conversation/grammar/read-day.ts";
import type { OutOfRange } from "../../declaration/answer.ts";
import { foldText } from "../../units/fold-text.ts";
import { findPerson, nameOfPerson } from "../find-people.ts";
import type { Job, OpenItem } from "../job.ts";
import { nameStep } from "../startup-step-names.ts";
import {
  actsOn,
  type JobAnswer,
  type JobFacts,
  type JobFinding,
  type JobStep,
  notice,
  requestFor,
  sayElsewhere,
  step,
} from "./job-facts.ts";

/** A thumb finds this many. */
const MOST_BUTTONS = 5;

/** Items that are still to be seen to, the longest overdue first. */
export function unfinishedItems({ items }: Pick<Job, "items">): readonly OpenItem[] {
  return items.filter(({ closed }) => closed === undefined).toSorted((a, b) => a.due.localeCompare(b.due));
}

/** What was typed of an item, with its owner and day taken out where they stand between commas or at the end. */
export interface ItemTold {
  readonly what: string;
  readonly owner?: string;
  readonly due?: string;
}

/** Takes "insulate the hot pipe, wren by 2026-12-01" apart; words that are neither day nor person are what is to be done. */
export function readItem(typed: string, books: Books): ItemTold {
  const { rest, day } = takeDay(typed);
  const [, before, last] = /^(.*)[,;]\s*(?:owner|for|para|responsable)?[\s:]*([^,;]+)$/i.exec(rest) ?? [];
  const who = last === undefined ? undefined : findPerson(last, books);
  const owner = who?.ok ? who.entry.id : undefined;
  const what = owner === undefined ? rest : (before ?? rest);
  return { what: what.trim(), ...(owner !== undefined && { owner }), ...(day !== undefined && { due: day }) };
}

/** Takes the first day out of a text, with the little word before it. */
export function takeDay(typed: string): { readonly rest: string; readonly day?: string } {
  const folded = foldText(typed);
  for (let at = 0; at < folded.length; at++) {
    if (at > 0 && !" ,;".includes(folded.charAt(at - 1))) continue;
    const match = readDay(folded, at);
    if (match === undefined) continue;
    const before = typed.slice(0, at).replace(/[\s,;]*(\b(by|until|due|on|para|antes|hasta|el|del|de)\s+)*$/i, "");
    const after = typed.slice(match.end).replace(/^[\s,;]+/, "");
    return { rest: [before, after].filter((part) => part.trim() !== "").join(", "), day: match.day };
  }
  return { rest: typed.trim() };
}

/** Adds an open item; its owner and day were asked for where they were not said. */
export function addItem(job: Job, facts: JobFacts, books: Books): JobAnswer | OutOfRange<JobFinding> {
  const told = readItem(facts.item ?? "", books);
  const typedOwner = told.owner ?? facts.owner;
  const due = told.due ?? facts.due;
  const { today = "" } = books;
  if (due !== undefined && due < today)
    return { kind: "out-of-range", fact: "due", value: due, reason: { code: "day_passed", data: { due } } };
  const who = typedOwner === undefined ? undefined : findPerson(typedOwner, books);
  if (typedOwner !== undefined && who?.ok === false) {
    const data = { typed: typedOwner, nearest: who.nearest.join(", ") };
    return { kind: "out-of-range", fact: "owner", value: typedOwner, reason: { code: "unknown_person", data } };
  }
  if (told.what === "" || who?.ok !== true || due === undefined)
    return notice({ code: "item_needs", data: {} }, { verdict: "caution" });
  const id = freeId(told.what, job);
  const change = { kind: "item_opened" as const, item: { id, what: told.what, owner: who.entry.id, due } };
  return notice(
    { code: "item_added", data: { job: job.number, what: told.what } },
    {
      verdict: "good",
      findings: sayElsewhere(job, books),
      acts: actsOn(job, books, [change]),
      next: [itemsStep(job), step("step_history", requestFor(job, "history"))],
    },
  );
}

/** A short id in words of its own, that no item of the job has. */
function freeId(what: string, { items }: Job): string {
  const words = foldText(what)
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");
  const base = words.split("-").slice(0, 4).join("-") || "item";
  const taken = (id: string) => items.some((item) => item.id === id);
  if (!taken(base)) return base;
  let next = 2;
  while (taken(`${base}-${next}`)) next++;
  return `${base}-${next}`;
}

/** Closes the item that is named by its number in the list, its id or its words; without one, offers what is open. */
export function closeItem(job: Job, typed: string | undefined, books: Books): JobAnswer {
  const open = unfinishedItems(job);
  if (open.length === 0)
    return notice(
      { code: "no_items", data: { job: job.number } },
      { next: [step("step_history", requestFor(job, "history"))] },
    );
  const found = typed === undefined ? undefined : findItem(typed, open);
  if (found === undefined)
    return notice(typed === undefined ? { code: "which_item", data: {} } : { code: "unknown_item", data: { typed } }, {
      verdict: typed === undefined ? "info" : "no",
      tables: [tabulateItems(open, books)],
      next: closeSteps(job, open),
    });
  const left = open.filter((item) => item !== found);
  return notice(
    { code: "item_closed", data: { job: job.number } },
    {
      verdict: "good",
      findings: [
        ...(typeof nameStep(found.id) === "string" ? [] : [{ code: "item_is_step" as const, data: {} }]),
        ...(left.length === 0 ? [{ code: "none_left" as const, data: {} }] : []),
        ...sayElsewhere(job, books),
      ],
      ...(left.length > 0 && { tables: [tabulateItems(left, books)] }),
      acts: actsOn(job, books, [{ kind: "item_closed", item: found.id }]),
      next: left.length > 0 ? closeSteps(job, left) : [step("step_done", "done")],
    },
  );
}

function findItem(typed: string, open: readonly OpenItem[]): OpenItem | undefined {
  const wanted = plain(typed);
  const place = /^#?(\d{1,2})$/.exec(typed.trim());
  if (place !== null) return open[Number(place[1]) - 1];
  const exact = open.find(({ id, what }) => plain(id) === wanted || plain(what) === wanted);
  if (exact !== undefined) return exact;
  const near = open.filter(({ id, what }) => plain(what).includes(wanted) || plain(id).includes(wanted));
  return wanted.length > 2 && near.length === 1 ? near[0] : undefined;
}

function plain(text: string): string {
  return foldText(text).replace(/[^a-z0-9]/g, "");
}

/** The open items by their numbers, which close them too. */
export function tabulateItems(items: readonly OpenItem[], books: Books) {
  return { id: "items", rows: items.map((item, at) => [String(at + 1), ...itemCells(item, books)]) };
}

/** What is to be done, by whom and by when; one that is late says so. */
export function itemCells({ what, owner, due }: OpenItem, books: Books): readonly (JobFinding | string)[] {
  const { today = "" } = books;
  return [nameStep(what), nameOfPerson(owner, books), due < today ? { code: "late", data: { due } } : due];
}

function closeSteps(job: Job, open: readonly OpenItem[]): readonly JobStep[] {
  return open.slice(0, MOST_BUTTONS).map(({ id }, at) => ({
    say: { code: "step_close_item", data: { item: String(at + 1) } },
    request: requestFor(job, `item_done=${id}`),
  }));
}

function itemsStep(job: Job): JobStep {
  return step("step_items", requestFor(job, "task=item_done"));
}
