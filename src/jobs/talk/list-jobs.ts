import type { Books } from "../../books/books.ts";
import { addDays } from "../../crew/days.ts";
import { q } from "../../declaration/answer.ts";
import { findPerson, nameOfPerson } from "../find-people.ts";
import type { Job, OpenItem } from "../job.ts";
import { LIVE } from "../job-rules.ts";
import { itemCells, unfinishedItems } from "./items.ts";
import { count, type JobAnswer, type JobFacts, type JobFinding, type JobStep, notice, step } from "./job-facts.ts";

/** Jobs that are offered as buttons, the nearest in time first. */
const MOST_OFFERED = 6;
/** Jobs without a day come last. */
const NO_DAY = "9999";
/** Rows that a phone shows at once; the rest is folded. */
const MOST_ROWS = 8;

/** Which jobs somebody asks for. */
type Wanted = { readonly [K in "which" | "day" | "whose"]?: JobFacts[K] | undefined };

/** The jobs ahead, or those that a word, a day or a person asks for. */
export function listJobs({ which, day, whose }: Wanted, books: Books): JobAnswer {
  if (which === "items") return listItems(whose, books);
  const ahead = books.jobs.filter(({ status }) => LIVE.includes(status)).toSorted(byDay);
  const wanted = day ?? dayOf(which, books);
  if (wanted !== undefined) {
    const theirs = ofPerson(ahead, whose, books).filter((job) => job.day === wanted);
    return tell(theirs, { code: "listed_day", data: { jobs: q("count", theirs.length), day: wanted } });
  }
  const person = whose ?? (which === "mine" ? books.asker?.id : undefined);
  if (person !== undefined) {
    const theirs = ofPerson(ahead, person, books);
    const data = { jobs: q("count", theirs.length), person: personNamed(person, books) };
    return tell(theirs, { code: "listed_person", data });
  }
  if (which === undefined) return listAhead(ahead, books);
  const chosen = ahead.filter((job) => (which === "called_back" ? job.status === which : isLate(job, books)));
  return tell(chosen, { code: "listed", data: { jobs: q("count", chosen.length) } });
}

/** All that lie ahead, when nobody asked for any in particular. */
function listAhead(ahead: readonly Job[], { talkedJob }: Books): JobAnswer {
  const code = talkedJob === undefined ? "none_open" : "ahead";
  const shown = tell(ahead, { code, data: { jobs: q("count", ahead.length) } });
  return {
    ...shown,
    findings: [{ code: "say_number", data: {} }],
    next: [...(shown.next ?? []).filter(({ request }) => request !== "jobs"), step("step_new", "job new")],
  };
}

/** A job that nobody has under this number. */
export function unknownJob(typed: string, books: Books): JobAnswer {
  const ahead = books.jobs.filter(({ status }) => LIVE.includes(status)).toSorted(byDay);
  return { ...listAhead(ahead, books), verdict: "no", headline: { code: "unknown_job", data: { typed } } };
}

function tell(jobs: readonly Job[], headline: JobFinding): JobAnswer {
  const rows = jobs.map(toRow);
  return notice(headline, {
    findings: jobs.length === 0 ? [{ code: "none_such", data: {} }] : [],
    tables: [
      { id: "jobs", rows: rows.slice(0, MOST_ROWS) },
      { id: "more_jobs", rows: rows.slice(MOST_ROWS) },
    ].filter((table) => table.rows.length > 0),
    next: [...jobs.slice(0, MOST_OFFERED).map(openOne), step("step_all", "jobs")],
  });
}

function toRow({ number, customer, place, day, status }: Job) {
  return [number, customer, place, day ?? "–", { code: `status_${status}` as const, data: {} }];
}

/** What is left open on all jobs, the longest overdue first. */
function listItems(whose: string | undefined, books: Books): JobAnswer {
  const person = whose === undefined ? undefined : findPerson(whose, books);
  const all = books.jobs
    .flatMap((job) => unfinishedItems(job).map((item) => ({ job, item })))
    .filter(({ item }) => person === undefined || (person.ok && item.owner === person.entry.id))
    .toSorted((a, b) => a.item.due.localeCompare(b.item.due));
  const rows = all.map(({ job, item }) => [job.number, ...itemCells(item, books)]);
  const numbers = [...new Set(all.map(({ job }) => job.number))];
  return notice(
    {
      code: "listed_items",
      data: { items: q("count", all.length), late: q("count", all.filter((one) => isOverdue(one.item, books)).length) },
    },
    {
      results: [count("items_open", all.length)],
      tables: [
        { id: "all_items", rows: rows.slice(0, MOST_ROWS) },
        { id: "more_items", rows: rows.slice(MOST_ROWS) },
      ].filter((table) => table.rows.length > 0),
      next: [...numbers.slice(0, MOST_OFFERED).map((number) => openOne({ number })), step("step_all", "jobs")],
    },
  );
}

function isOverdue({ due }: OpenItem, { today = "" }: Books): boolean {
  return due < today;
}

/** Planned for a day that has passed, and not begun; or with something open that is overdue. */
function isLate(job: Job, books: Books): boolean {
  const { today = "" } = books;
  const isMissed = (job.status === "planned" || job.status === "surveyed") && job.day !== undefined && job.day < today;
  return isMissed || unfinishedItems(job).some((item) => isOverdue(item, books));
}

function dayOf(which: Wanted["which"], { today }: Books): string | undefined {
  if (today === undefined || (which !== "today" && which !== "tomorrow")) return undefined;
  return which === "today" ? today : addDays(today, 1);
}

function ofPerson(jobs: readonly Job[], typed: string | undefined, books: Books): readonly Job[] {
  if (typed === undefined) return jobs;
  const found = findPerson(typed, books);
  return found.ok ? jobs.filter(({ people }) => people.includes(found.entry.id)) : [];
}

function personNamed(typed: string, books: Books): string {
  const found = findPerson(typed, books);
  return found.ok ? nameOfPerson(found.entry.id, books) : typed;
}

function openOne({ number }: Pick<Job, "number">): JobStep {
  return { say: { code: "step_open", data: { job: number } }, request: `job number=${number}` };
}

function byDay(a: Job, b: Job): number {
  return (a.day ?? NO_DAY).localeCompare(b.day ?? NO_DAY) || a.number.localeCompare(b.number);
}
