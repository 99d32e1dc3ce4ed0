import fc from "fast-check";
import { JOB_STATUSES, type JobChange, type JobEvent } from "../../src/jobs/job.ts";

/** A job that is opened, with these changes after it. */
export function eventsOf(...changes: readonly (JobChange | readonly [JobChange, amends: number])[]): JobEvent[] {
  const opened: JobChange = { kind: "opened", customer: "T. M.", place: "Testbench" };
  return [opened, ...changes].map((said, index): JobEvent => {
    const [change, amends] = "kind" in said ? [said] : said;
    const number = index + 1;
    const who = { by: `Person ${number}`, person: `p${number}`, at_ms: 1000 * number, door: "slack" as const };
    return { number, job: "1001", change, ...(amends !== undefined && { amends }), ...who };
  });
}

const word = fc.constantFrom("a", "b", "c", "d");
const quantity = fc.record({ kind: fc.constant("temperature" as const), value: fc.integer({ min: 0, max: 90 }) });
const item = fc.record({ id: word, what: word, owner: word, due: fc.constant("2026-11-25") });
const readingOf = fc.record({ id: word, quantity, isAccepted: fc.boolean() });

/** Any change but an opening or a taking back. */
export const anyChange: fc.Arbitrary<JobChange> = fc.oneof(
  fc.record({ kind: fc.constant("planned" as const), day: fc.constant("2026-12-01"), people: fc.array(word) }),
  fc.record({ kind: fc.constant("unit" as const), model: word }),
  fc.record({ kind: fc.constant("permit" as const), permit: word }),
  fc.record({ kind: fc.constant("status" as const), status: fc.constantFrom(...JOB_STATUSES) }),
  fc.record({ kind: fc.constant("facts" as const), topic: word, facts: fc.dictionary(word, fc.integer()) }),
  fc.record({ kind: fc.constant("reading" as const), reading: readingOf }),
  fc.record({ kind: fc.constant("item_opened" as const), item }),
  fc.record({ kind: fc.constant("item_closed" as const), item: word }),
  fc.record({
    kind: fc.constant("file" as const),
    file: fc.record({ hash: word, name: word, type: word, size_B: fc.nat() }),
  }),
  fc.record({ kind: fc.constant("parts" as const), parts: fc.dictionary(word, fc.integer({ min: 1, max: 5 })) }),
  fc.record({ kind: fc.constant("note" as const), text: word }),
  fc.record({ kind: fc.constant("trail" as const), text: word }),
);

/** The events of a job in which nothing is amended. */
export const plainEvents: fc.Arbitrary<JobEvent[]> = fc
  .array(anyChange, { maxLength: 15 })
  .map((changes) => eventsOf(...changes));

/** The events of a job of which some put earlier ones right, with anything that stands for them. */
export const amendedEvents: fc.Arbitrary<JobEvent[]> = fc
  .array(fc.tuple(anyChange, fc.option(fc.nat(), { nil: undefined })), { maxLength: 15 })
  .map((said) =>
    eventsOf(
      ...said.map(([change, aim], index): JobChange | readonly [JobChange, number] =>
        // Events are counted from 1 and the first opens the job.
        aim === undefined || index === 0 ? change : [change, 2 + (aim % index)],
      ),
    ),
  );
