import type { Books } from "../books/books.ts";
import { q } from "../declaration/answer.ts";
import type { Job, JobChange, JobReading } from "./job.ts";
import { factOfStep } from "./startup-facts.ts";
import { factsOf, NOT_JUDGED, recallSteps, type StepState, startupSite, stateOf, type Told } from "./startup-state.ts";
import type { StartupStep } from "./startup-step.ts";
import { STARTUP_STEPS } from "./startup-steps-table.ts";

type ReadingChange = Extract<JobChange, { readonly kind: "reading" }>;

/** A step that was read, as it stands in the record: beside what was expected, and whether it is accepted. */
export function readingFrom(step: StartupStep, state: StepState): ReadingChange | undefined {
  if (state.kind !== "read" || step.reading === undefined) return undefined;
  const { accepted, isAccepted, because, value } = state;
  const expected = accepted?.expected ?? accepted?.high;
  const reading: Omit<JobReading, "by" | "at_ms"> = {
    id: step.id,
    quantity: q(step.reading.quantity, value),
    ...(expected !== undefined && { expected: q(step.reading.quantity, expected) }),
    isAccepted: isAccepted ?? true,
    ...(isAccepted === undefined && { because: NOT_JUDGED }),
    ...(isAccepted === false && because !== undefined && { because }),
  };
  return { kind: "reading", reading };
}

/**
 * Another value of a reading, judged anew by what is known of the house.
 * @param value in the base unit of the reading
 * @param because why it stands although it is not accepted
 */
export function judgeReading(
  job: Job,
  books: Books,
  { reading }: ReadingChange,
  value: number,
  because?: string,
): ReadingChange {
  const step = STARTUP_STEPS.find(({ id }) => id === reading.id);
  const { because: _, ...rest } = reading;
  const plain: ReadingChange = {
    kind: "reading",
    reading: { ...rest, quantity: { ...reading.quantity, value }, ...(because !== undefined && { because }) },
  };
  if (step === undefined) return plain;
  const told: Told = { ...factsOf(job), ...recallSteps(job), [factOfStep(step.id)]: value };
  const state = stateOf(step, told, startupSite(told, { ...books, openJob: job }));
  if (state.kind !== "read") return plain;
  const { because: __, ...judged } = state;
  return readingFrom(step, { ...judged, ...(because !== undefined && { because }) }) ?? plain;
}
