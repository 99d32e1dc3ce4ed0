import type { Books } from "../../books/books.ts";
import { addDays } from "../../crew/days.ts";
import { isAtWork, readyJob, readyPerson } from "../../crew/ready.ts";
import type { Verdict } from "../../declaration/answer.ts";
import type { Job } from "../job.ts";
import { isAhead } from "./my-jobs.ts";

/** How ready a day is. */
export interface DayAhead {
  readonly day: string;
  readonly jobs: readonly Job[];
  readonly atWork: number;
  readonly verdict: Extract<Verdict, "good" | "caution" | "no">;
  /** Lacks that stop the work, and those to see to. */
  readonly stops: number;
  readonly cares: number;
}

/** After so many days without anybody at work nothing more is looked for. */
const MOST_DAYS = 14;

/** Today, and the next day on which anybody works or any job is planned. */
export function daysAhead(today: string, books: Books): readonly DayAhead[] {
  const next = Array.from({ length: MOST_DAYS }, (_, index) => dayAhead(addDays(today, index + 1), books));
  const busy = next.find(({ atWork, jobs }) => atWork > 0 || jobs.length > 0);
  return [dayAhead(today, books), ...(busy === undefined ? [] : [busy])];
}

/** Jobs to be done that nobody is down for, or that have no day. */
export function unplannedJobs({ jobs }: Pick<Books, "jobs">): readonly Job[] {
  return jobs.filter(({ status, day, people }) => isAhead(status) && (day === undefined || people.length === 0));
}

/** Jobs whose day has passed although the work never began. */
export function missedJobs({ jobs }: Pick<Books, "jobs">, today: string): readonly Job[] {
  return jobs.filter(
    ({ status, day }) => isAhead(status) && status !== "under_way" && day !== undefined && day < today,
  );
}

function dayAhead(day: string, books: Books): DayAhead {
  const jobs = books.jobs.filter((job) => job.day === day && isAhead(job.status));
  const crew = books.crew.members.filter((member) => isAtWork(member, day, books));
  const all = [
    ...crew.map((member) => readyPerson(member, day, books)),
    ...jobs.map((job) => readyJob(job, day, books)),
  ];
  const lacks = all.flatMap((one) => one.lacks);
  const stops = lacks.filter((lack) => lack.stops).length;
  const some = lacks.length > 0 ? "caution" : "good";
  return {
    day,
    jobs,
    atWork: crew.length,
    verdict: stops > 0 ? "no" : some,
    stops,
    cares: lacks.length - stops,
  };
}
