import type { Books } from "../../books/books.ts";
import type { Job, JobChange } from "../job.ts";
import { effectsOf, rootOf } from "../project-job.ts";
import {
  actsOn,
  type JobAnswer,
  type JobFacts,
  type JobFinding,
  notice,
  openStep,
  requestFor,
  sayElsewhere,
  step,
} from "./job-facts.ts";
import { rightChange } from "./right-change.ts";
import { showHistory } from "./show-job.ts";

/** An entry's number, and what is said of it. */
export interface EntryTold {
  readonly entry: number;
  readonly rest: string;
}

/** "4 29 in wide" is about entry 4; without a number at the beginning it is about none. */
export function readEntry(typed: string | undefined): EntryTold | undefined {
  const [, number, rest = ""] =
    /^(?:#|no?\.?\s|entry\s|entrada\s|anotaci[oó]n\s)?\s*(\d{1,4})\b[\s:,.=-]*(.*)$/is.exec(typed?.trim() ?? "") ?? [];
  return number === undefined ? undefined : { entry: Number(number), rest: unquote(rest) };
}

function unquote(text: string): string {
  return text
    .trim()
    .replace(/^["'“«](.*)["'”»]$/s, "$1")
    .trim();
}

/** Puts an earlier entry right by another of its kind; what stood there stays in the history. */
export function amendJob(job: Job, { amend, right }: JobFacts, books: Books): JobAnswer {
  const told = readEntry(amend);
  if (told === undefined) return whichEntry(job, books);
  const { entry } = told;
  const before = standing(books, entry);
  if (before === undefined) return noEntry(job, entry, books);
  const typed = told.rest === "" ? (right ?? "") : told.rest;
  const found = rightChange(job, before, typed, books);
  if ("refused" in found) return cannot(job, String(entry), typed, found.refused);
  if (JSON.stringify(found.change) === JSON.stringify(before))
    return notice({ code: "same_as_before", data: { entry: String(entry) } }, { next: afterwards(job) });
  return written(job, books, entry, found.change, { code: "amended", data: { entry: String(entry), job: job.number } });
}

/** Takes an earlier entry back, with why where somebody says it. */
export function withdrawEntry(job: Job, typed: string | undefined, books: Books): JobAnswer {
  const told = readEntry(typed);
  if (told === undefined) return whichEntry(job, books);
  const { entry } = told;
  const before = standing(books, entry);
  if (before === undefined) return noEntry(job, entry, books);
  if (before.kind === "withdrawn")
    return notice({ code: "same_as_before", data: { entry: String(entry) } }, { next: afterwards(job) });
  const because = told.rest.replace(/^(because|porque|since|ya que|por)\s+/i, "").trim();
  const change: JobChange = { kind: "withdrawn", ...(because !== "" && { because }) };
  return written(job, books, entry, change, { code: "withdrawn", data: { entry: String(entry), job: job.number } });
}

function written(job: Job, books: Books, entry: number, change: JobChange, headline: JobFinding): JobAnswer {
  const [first, ...rest] = actsOn(job, books, [change]);
  return notice(headline, {
    verdict: "good",
    findings: sayElsewhere(job, books),
    acts: first?.kind === "change" ? [{ ...first, amends: entry }, ...rest] : rest,
    next: afterwards(job),
  });
}

/** What an entry says now, after whatever put it right. */
function standing({ openHistory = [] }: Books, entry: number): JobChange | undefined {
  const root = rootOf(openHistory, entry);
  return effectsOf(openHistory).find(({ number }) => number === root)?.change;
}

function whichEntry(job: Job, books: Books): JobAnswer {
  return { ...showHistory(job, books), headline: { code: "which_entry", data: { job: job.number } } };
}

function noEntry(job: Job, entry: number, books: Books): JobAnswer {
  const headline: JobFinding = { code: "unknown_entry", data: { entry: String(entry) } };
  return { ...showHistory(job, books), verdict: "no", headline };
}

type Why = "not_readable" | "only_withdrawn" | "say_which_fact";

function cannot(job: Job, entry: string, typed: string, why: Why): JobAnswer {
  return notice(sayWhy(entry, typed, why), { verdict: "no", next: afterwards(job) });
}

function sayWhy(entry: string, typed: string, why: Why): JobFinding {
  if (why === "only_withdrawn") return { code: "only_withdrawn", data: { entry } };
  if (why === "say_which_fact") return { code: "say_which_fact", data: {} };
  return { code: "not_readable", data: { typed: typed === "" ? "–" : typed, entry } };
}

function afterwards(job: Job) {
  return [step("step_history", requestFor(job, "history")), openStep(job)];
}
