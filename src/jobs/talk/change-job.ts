import type { Books } from "../../books/books.ts";
import type { OutOfRange } from "../../declaration/answer.ts";
import { findModel } from "../../equipment/find-model.ts";
import { findPeople, nameOfPerson } from "../find-people.ts";
import type { Job, JobChange } from "../job.ts";
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
import { faultRequest } from "./show-job.ts";

type Changed =
  | { readonly ok: true; readonly changes: readonly JobChange[] }
  | { readonly ok: false; readonly refused: OutOfRange<JobFinding> };

/** Plan, unit, permit and note: whatever of these was said, written down at once. */
export function changeJob(job: Job, facts: JobFacts, books: Books): JobAnswer | OutOfRange<JobFinding> {
  const plan = planOf(job, facts, books);
  const unit = unitOf(facts, books);
  if (!plan.ok) return plan.refused;
  if (!unit.ok) return unit.refused;
  const { permit_number, note } = facts;
  const changes: readonly JobChange[] = [
    ...plan.changes,
    ...unit.changes,
    ...(permit_number === undefined ? [] : [{ kind: "permit" as const, permit: permit_number }]),
    ...(note === undefined ? [] : [{ kind: "note" as const, text: note }]),
  ];
  if (changes.length === 0) return notice({ code: "plan_needs", data: { job: job.number } }, { verdict: "caution" });
  return notice(headlineOf(job, changes, books), {
    verdict: "good",
    findings: sayElsewhere(job, books),
    acts: actsOn(job, books, changes),
    next: [openStep(job), step("step_history", requestFor(job, "history"))],
  });
}

function headlineOf(job: Job, changes: readonly JobChange[], books: Books): JobFinding {
  const [first, ...more] = changes;
  const data = { job: job.number };
  if (first === undefined || more.length > 0) return { code: "changed", data };
  if (first.kind === "note") return { code: "noted", data };
  if (first.kind !== "planned") return { code: "changed", data };
  const people = first.people.map((id) => nameOfPerson(id, books)).join(", ");
  return { code: "planned", data: { ...data, day: first.day, people: people === "" ? "–" : people } };
}

/** A plan has a day and people; what was not said stays as it is. */
function planOf(job: Job, { day, crew }: JobFacts, books: Books): Changed {
  if (day === undefined && crew === undefined) return { ok: true, changes: [] };
  const wanted = day ?? job.day;
  const { today = "" } = books;
  if (day !== undefined && day < today) return refuse("day", day, { code: "day_passed", data: { due: day } });
  const found = crew === undefined ? undefined : findPeople(crew, books);
  if (found?.ok === false) {
    const data = { typed: found.typed, nearest: found.nearest.join(", ") };
    return refuse("crew", crew ?? "", { code: "unknown_person", data });
  }
  const people = found?.ids ?? job.people;
  return { ok: true, changes: wanted === undefined ? [] : [{ kind: "planned", day: wanted, people }] };
}

function unitOf({ planned_unit: typed }: JobFacts, { catalogue }: Books): Changed {
  if (typed === undefined) return { ok: true, changes: [] };
  const found = findModel(catalogue, typed);
  if (found.ok) return { ok: true, changes: [{ kind: "unit", model: found.entry.id }] };
  const data = { typed, nearest: found.nearest.join(", ") };
  return refuse("planned_unit", typed, { code: "unknown_unit", data });
}

function refuse(fact: string, value: string, reason: JobFinding): Changed {
  return { ok: false, refused: { kind: "out-of-range", fact, value, reason } };
}

/** The job is called off, with why. */
export function cancelJob(job: Job, because: string | undefined, books: Books): JobAnswer {
  return moved(job, { kind: "status", status: "cancelled", ...(because !== undefined && { because }) }, books, {
    headline: { code: "cancelled", data: { job: job.number } },
    next: [step("step_reopen", requestFor(job, "task=reopen")), openStep(job)],
  });
}

/** Back to planned, from wherever the rules let it. */
export function reopenJob(job: Job, books: Books): JobAnswer {
  const status = job.status === "complete" || job.status === "open_items" ? "under_way" : "planned";
  return moved(job, { kind: "status", status }, books, {
    headline: { code: "reopened", data: { job: job.number } },
    next: [openStep(job)],
  });
}

/** The customer called again: the fault walk begins with what they said. */
export function callBack(job: Job, because: string | undefined, books: Books): JobAnswer {
  const isTalked = books.talkedJob === undefined || books.talkedJob === job.number;
  const said = because ?? "";
  return moved(job, { kind: "status", status: "called_back", ...(because !== undefined && { because }) }, books, {
    headline: { code: "called_back", data: { job: job.number, because: said } },
    // The fault is kept with the job that is talked about, so another one is opened first.
    next: [...(isTalked && said !== "" ? [step("step_fault", faultRequest(said))] : []), openStep(job)],
  });
}

function moved(job: Job, change: JobChange, books: Books, more: Pick<JobAnswer, "headline" | "next">): JobAnswer {
  return notice(more.headline, {
    findings: sayElsewhere(job, books),
    acts: actsOn(job, books, [change]),
    ...(more.next && { next: more.next }),
  });
}
