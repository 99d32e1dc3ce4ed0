import { z } from "zod";
import { JOB_STATUSES, type Job, type JobChange } from "../jobs/job.ts";
import { quantityKind } from "./quantity-kind.ts";
import { parseStored, type Stored } from "./stored-json.ts";

const text = z.string();
const ms = z.number();
const said = { by: text, at_ms: ms };
const factValue = z.union([z.number(), text, z.boolean()]);
const quantity = z.strictObject({ kind: quantityKind, value: z.number() });
const status = z.enum(JOB_STATUSES);
const reading = {
  id: text,
  quantity,
  expected: quantity.exactOptional(),
  isAccepted: z.boolean(),
  because: text.exactOptional(),
};
const item = { id: text, what: text, owner: text, due: text };
const file = { hash: text, name: text, type: text, size_B: z.number() };
const counts = z.record(text, z.number());
const remarks = z.array(z.strictObject({ text, ...said }));

/** One schema a kind of change: a new kind does not compile until it has one. */
const CHANGES = {
  opened: z.strictObject({
    kind: z.literal("opened"),
    customer: text,
    place: text,
    day: text.exactOptional(),
  }),
  planned: z.strictObject({ kind: z.literal("planned"), day: text, people: z.array(text) }),
  unit: z.strictObject({ kind: z.literal("unit"), model: text }),
  permit: z.strictObject({ kind: z.literal("permit"), permit: text }),
  status: z.strictObject({ kind: z.literal("status"), status, because: text.exactOptional() }),
  facts: z.strictObject({ kind: z.literal("facts"), topic: text, facts: z.record(text, factValue) }),
  reading: z.strictObject({ kind: z.literal("reading"), reading: z.strictObject(reading) }),
  item_opened: z.strictObject({ kind: z.literal("item_opened"), item: z.strictObject(item) }),
  item_closed: z.strictObject({ kind: z.literal("item_closed"), item: text }),
  file: z.strictObject({ kind: z.literal("file"), file: z.strictObject(file) }),
  parts: z.strictObject({ kind: z.literal("parts"), parts: counts }),
  note: z.strictObject({ kind: z.literal("note"), text }),
  trail: z.strictObject({ kind: z.literal("trail"), text }),
  withdrawn: z.strictObject({ kind: z.literal("withdrawn"), because: text.exactOptional() }),
} satisfies { readonly [K in JobChange["kind"]]: z.ZodType<Extract<JobChange, { kind: K }>> };

type AnyChange = (typeof CHANGES)[keyof typeof CHANGES];

/** What happened to a job, as it is stored. */
export const storedChange = z.discriminatedUnion("kind", Object.values(CHANGES) as [AnyChange, ...AnyChange[]]);

/** A job as it stands, as it is stored. */
export const storedJob = z.strictObject({
  number: text,
  customer: text,
  place: text,
  status,
  day: text.exactOptional(),
  model: text.exactOptional(),
  people: z.array(text),
  permit: text.exactOptional(),
  facts: z.record(text, z.strictObject({ value: factValue, topic: text, ...said })),
  readings: z.record(text, z.strictObject({ ...reading, ...said })),
  items: z.array(z.strictObject({ ...item, closed: z.strictObject(said).exactOptional() })),
  files: z.array(z.strictObject({ ...file, ...said })),
  parts: counts,
  notes: remarks,
  trail: remarks,
  openedAt_ms: ms,
  startedAt_ms: ms.exactOptional(),
  closedAt_ms: ms.exactOptional(),
  version: z.number().int().min(1),
});

/** Reads back what happened to a job. */
export function parseJobChange(json: string): Stored<JobChange> {
  return parseStored(storedChange, json);
}

/** Reads back a job as it stood when it was last changed. */
export function parseJob(json: string): Stored<Job> {
  return parseStored(storedJob, json);
}
