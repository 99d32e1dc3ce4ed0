import type { Books } from "../../books/books.ts";
import type { OutOfRange } from "../../declaration/answer.ts";
import { findByName } from "../../equipment/find-model.ts";
import { isInitialsOrNickname } from "../customer.ts";
import { type JobAnswer, type JobFacts, type JobFinding, notice, step } from "./job-facts.ts";

/** A new job, under the number that the desk lends. */
export function beginJob({ customer = "", town, day }: JobFacts, books: Books): JobAnswer | OutOfRange<JobFinding> {
  if (!isInitialsOrNickname(customer))
    return { kind: "out-of-range", fact: "customer", value: customer, reason: { code: "customer_too_much", data: {} } };
  const [own] = books.places;
  const wanted = town ?? own?.name ?? books.company.town;
  const there = findByName(books.places, wanted);
  if (!there.ok) {
    const reason: JobFinding = { code: "unknown_place", data: { typed: wanted, nearest: there.nearest.join(", ") } };
    return { kind: "out-of-range", fact: "town", value: wanted, reason };
  }
  const number = books.nextJob;
  if (number === undefined) return notice({ code: "no_record", data: {} });
  return notice(
    { code: "opened", data: { job: number, customer, place: there.entry.name } },
    {
      verdict: "good",
      findings: [{ code: "facts_travel", data: {} }],
      next: [step("step_survey", "survey"), step("step_plan", `job number=${number} task=plan`)],
      acts: [{ kind: "begin", job: number, customer, place: there.entry.name, ...(day !== undefined && { day }) }],
    },
  );
}

/** No job is talked about any more; nothing where none was. */
export function leaveJob({ openJob }: Books): JobAnswer | undefined {
  if (openJob === undefined) return undefined;
  return notice(
    { code: "left", data: { job: openJob.number } },
    { acts: [{ kind: "leave" }], next: [step("step_all", "jobs")] },
  );
}
