import type { Books } from "../../books/books.ts";
import type { Job } from "../job.ts";
import { LIVE } from "../job-rules.ts";
import { effectsOf } from "../project-job.ts";
import { type JobAnswer, type JobStep, notice, openStep, requestFor, step } from "./job-facts.ts";

/** The record of a job, with what is likely wanted next. */
export function showJob(job: Job, books: Books): JobAnswer {
  const { number, customer, place } = job;
  const complaint = complaintOf(job, books);
  return notice(
    { code: "shown", data: { job: number, customer, place } },
    {
      findings: complaint === undefined ? [] : [{ code: "customer_said", data: { because: complaint } }],
      next: [...likelyNext(job, complaint), ...always(job)],
      job,
    },
  );
}

/** Opens the job: what is told from now on is kept with it. */
export function openJob(job: Job, books: Books): JobAnswer {
  const shown = showJob(job, books);
  const isNew = books.talkedJob !== job.number;
  return {
    ...shown,
    findings: [
      ...shown.findings,
      ...(isNew && LIVE.includes(job.status) ? [{ code: "facts_travel" as const, data: {} }] : []),
    ],
    acts: [{ kind: "open", job: job.number }],
  };
}

export function showHistory(job: Job, books: Books): JobAnswer {
  const events = books.openHistory ?? [];
  const last = events.at(-1);
  return notice(
    { code: "history_of", data: { job: job.number, entries: { kind: "count", value: events.length } } },
    {
      findings: [{ code: "how_to_amend", data: {} }],
      history: events,
      // What is put right next is meant for the job whose history was read.
      acts: [{ kind: "open", job: job.number }],
      next: [
        ...(last === undefined || last.number === 1
          ? []
          : [
              {
                say: { code: "step_amend_last" as const, data: { entry: String(last.number) } },
                request: requestFor(job, `amend=${last.number}`),
              },
            ]),
        openStep(job),
      ],
    },
  );
}

/** Why the customer called again, where that has not been seen to. */
export function complaintOf(job: Job, { openHistory = [] }: Books): string | undefined {
  if (job.status !== "called_back" && job.status !== "under_way") return undefined;
  const last = effectsOf(openHistory).findLast(
    ({ change }) => change.kind === "status" && ["called_back", "complete", "open_items"].includes(change.status),
  );
  return last?.change.kind === "status" && last.change.status === "called_back" ? last.change.because : undefined;
}

/** The fault walk with what the customer said; a request is one line, and its quotes are its own. */
export function faultRequest(complaint: string): string {
  return `fault complaint="${complaint.replace(/["\n]+/g, " ").trim()}"`;
}

function likelyNext(job: Job, complaint: string | undefined): readonly JobStep[] {
  const fault = complaint === undefined ? [] : [step("step_fault", faultRequest(complaint))];
  const isSurveyed = Object.keys(job.facts).length > 0;
  switch (job.status) {
    case "planned":
      return [step("step_survey", "survey"), ...(isSurveyed ? [step("step_startup", "startup")] : [])];
    case "surveyed":
      return [step("step_startup", "startup"), step("step_survey", "survey")];
    case "under_way":
      return [...fault, step("step_startup", "startup"), step("step_done", "done")];
    case "open_items":
      return [
        step("step_items", requestFor(job, "task=item_done")),
        step("step_startup", "startup"),
        step("step_done", "done"),
      ];
    case "called_back":
      return [...fault, step("step_startup", "startup"), step("step_done", "done")];
    case "complete":
      return [step("step_call_back", requestFor(job, "task=call_back"))];
    case "cancelled":
      return [step("step_reopen", requestFor(job, "task=reopen"))];
  }
}

function always(job: Job): readonly JobStep[] {
  return [step("step_history", requestFor(job, "history")), step("step_leave", "job leave")];
}
