import type { Books } from "../../books/books.ts";
import { readyJob } from "../../crew/ready.ts";
import { type FindingOf, type FindingSpecs, q } from "../../declaration/answer.ts";
import type { Job, OpenItem } from "../job.ts";
import { LIVE } from "../job-rules.ts";

/** What is left to do about a job before or on its day. */
export const LEFT_WORDS = {
  left_survey: {},
  left_permit: {},
  left_kit: { parts: "count" },
  left_other: { lacks: "count" },
  left_day_passed: { day: "word" },
  left_under_way: {},
  left_call_back: {},
  left_nothing: {},
} as const satisfies FindingSpecs;
export type LeftWord = FindingOf<typeof LEFT_WORDS>;

/** A job of somebody's with what is left, the most pressing first. */
export interface MyJob {
  readonly job: Job;
  readonly left: readonly LeftWord[];
}
/** An item that somebody said they would see to. */
export interface MyItem {
  readonly job: Job;
  readonly item: OpenItem;
}
export interface MyDay {
  /** Those of today, those under way, and those whose day has passed. */
  readonly now: readonly MyJob[];
  /** Those of later days, the next first. */
  readonly next: readonly MyJob[];
  readonly items: readonly MyItem[];
}

/** What somebody has to do today and next. */
export function myDay(person: string, today: string, books: Books): MyDay {
  const mine = books.jobs
    .filter(({ people, status, day }) => people.includes(person) && isAhead(status) && day !== undefined)
    .sort((a, b) => (a.day ?? "").localeCompare(b.day ?? "") || a.number.localeCompare(b.number));
  const isNow = ({ day = "", status }: Job) => day <= today || status === "under_way";
  const withLeft = (job: Job): MyJob => ({ job, left: whatIsLeft(job, today, books) });
  return {
    now: mine.filter(isNow).map(withLeft),
    next: mine.filter((job) => !isNow(job)).map(withLeft),
    items: openItems(books.jobs).filter(({ item }) => item.owner === person),
  };
}

/** Items that are still to be seen to, the most urgent first. */
export function openItems(jobs: readonly Job[]): readonly MyItem[] {
  return jobs
    .filter(({ status }) => LIVE.includes(status))
    .flatMap((job) => job.items.filter(({ closed }) => closed === undefined).map((item) => ({ job, item })))
    .sort((a, b) => a.item.due.localeCompare(b.item.due));
}

/** Work that is still to be done; what is left of a closed job are its items. */
export function isAhead(status: Job["status"]): boolean {
  return LIVE.includes(status) && status !== "open_items";
}

function whatIsLeft(job: Job, today: string, books: Books): readonly LeftWord[] {
  const { lacks } = readyJob(job, job.day === undefined || job.day < today ? today : job.day, books);
  const count = (is: string) => lacks.filter(({ want }) => want.is === is).length;
  const parts = count("part");
  const others = lacks.length - parts - count("survey") - count("permit");
  const isBegun = job.status === "under_way";
  const left: readonly (LeftWord | false)[] = [
    job.status === "called_back" && { code: "left_call_back", data: {} },
    !isBegun && job.day !== undefined && job.day < today && { code: "left_day_passed", data: { day: job.day } },
    isBegun && { code: "left_under_way", data: {} },
    count("survey") > 0 && { code: "left_survey", data: {} },
    count("permit") > 0 && { code: "left_permit", data: {} },
    !isBegun && parts > 0 && { code: "left_kit", data: { parts: q("count", parts) } },
    !isBegun && others > 0 && { code: "left_other", data: { lacks: q("count", others) } },
  ];
  const said = left.filter((one) => one !== false);
  return said.length > 0 ? said : [{ code: "left_nothing", data: {} }];
}
