import type { Books } from "../books/books.ts";
import type { OutOfRange } from "../declaration/answer.ts";
import { declareTopic } from "../declaration/topic.ts";
import type { Job } from "../jobs/job.ts";
import { amendJob, withdrawEntry } from "../jobs/talk/amend-job.ts";
import { beginJob, leaveJob } from "../jobs/talk/begin-job.ts";
import { callBack, cancelJob, changeJob, reopenJob } from "../jobs/talk/change-job.ts";
import { addItem, closeItem } from "../jobs/talk/items.ts";
import {
  JOB_FACTS,
  JOB_FINDINGS,
  JOB_RESULTS,
  type JobAnswer,
  type JobFacts,
  type JobFinding,
  notice,
  step,
} from "../jobs/talk/job-facts.ts";
import { nextQuestion } from "../jobs/talk/job-guide.ts";
import { listJobs, unknownJob } from "../jobs/talk/list-jobs.ts";
import { openJob, showHistory, showJob } from "../jobs/talk/show-job.ts";

export const job = declareTopic({
  id: "job",
  work: "short",
  uses: "job",
  asksAnew: true,
  facts: JOB_FACTS,
  results: JOB_RESULTS,
  findings: JOB_FINDINGS,
  tables: {
    jobs: ["job", "customer", "place", "day", "status"],
    more_jobs: ["job", "customer", "place", "day", "status"],
    items: ["place", "what", "owner", "due"],
    all_items: ["job", "what", "owner", "due"],
    more_items: ["job", "what", "owner", "due"],
  },
  asides: {
    results: ["items_open"],
    tables: ["more_jobs", "more_items"],
  },
  guide: { next: nextQuestion, hears: () => false },
  // What is told here is about the record, not about the house.
  enters: () => [],
  compute: (facts, books) => {
    if (facts.task === "new") return beginJob(facts, books);
    if (facts.task === "leave") return leaveJob(books) ?? listJobs({}, books);
    const { openJob: found } = books;
    if (facts.number !== undefined && found?.number !== facts.number.trim()) return unknownJob(facts.number, books);
    const asked = found === undefined ? undefined : actOn(found, facts, books);
    if (asked !== undefined) return asked;
    if (isAboutOne(facts) && found === undefined)
      return { ...listJobs({}, books), headline: { code: "which_job", data: {} } };
    if (found !== undefined && facts.number !== undefined) return openJob(found, books);
    const isList = facts.list === true || [facts.which, facts.day, facts.whose].some((told) => told !== undefined);
    return isList || found === undefined ? listJobs(facts, books) : showJob(found, books);
  },
});

type Asked = JobAnswer | OutOfRange<JobFinding> | undefined;

/** What is wanted of one job; nothing where it is only to be shown. */
function actOn(found: Job, facts: JobFacts, books: Books): Asked {
  const { task } = facts;
  if (facts.amend !== undefined || task === "amend") return amendJob(found, facts, books);
  if (facts.withdraw !== undefined || task === "withdraw") return withdrawEntry(found, facts.withdraw, books);
  if (facts.item_done !== undefined || task === "item_done") return closeItem(found, facts.item_done, books);
  if (facts.item !== undefined || task === "item") return addItem(found, facts, books);
  if (facts.call_back !== undefined || task === "call_back") return callBack(found, facts.call_back, books);
  if (facts.cancel !== undefined || task === "cancel") return cancelJob(found, facts.cancel, books);
  if (task === "reopen") return reopenJob(found, books);
  if (task === "history") return showHistory(found, books);
  if (task === "close") return sayDone(found);
  return changes(facts) ? changeJob(found, facts, books) : undefined;
}

/** A day alone asks for the jobs of that day; with a number or people it is a plan. */
function changes({ task, number, day, crew, planned_unit, permit_number, note }: JobFacts): boolean {
  const isPlan = task === "plan" || crew !== undefined || (number !== undefined && day !== undefined);
  return isPlan || [planned_unit, permit_number, note].some((told) => told !== undefined);
}

/** True where one job is meant, so that it must be known which. */
function isAboutOne(facts: JobFacts): boolean {
  const { amend, withdraw, item, item_done, call_back, cancel, task } = facts;
  const isTold = [amend, withdraw, item, item_done, call_back, cancel].some((told) => told !== undefined);
  return isTold || (task !== undefined && task !== "show") || changes(facts);
}

function sayDone({ number }: Job): JobAnswer {
  return notice({ code: "close_with_done", data: { job: number } }, { next: [step("step_done", "done")] });
}
