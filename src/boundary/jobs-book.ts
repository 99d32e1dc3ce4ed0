import { z } from "zod";
import { isInitialsOrNickname } from "../jobs/customer.ts";
import { JOB_STATUSES, type Job, type JobChange, type JobEvent } from "../jobs/job.ts";
import { refuseEntry } from "../jobs/job-rules.ts";
import { projectJob } from "../jobs/project-job.ts";
import { sayJobRefusal } from "../messages/say-job.ts";
import { DOORS, type Role } from "../ports/store.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import { type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";
import { quantityKind } from "./quantity-kind.ts";
import { sheetQuantity } from "./sheet-fields.ts";

/** What job books are read against: the names and roles of those who wrote. */
export interface JobsContext {
  readonly people: readonly { readonly id: string; readonly name: string; readonly role: Role }[];
}
export interface JobsBook {
  readonly isInvented: boolean;
  readonly jobs: readonly Job[];
  readonly events: readonly JobEvent[];
}

const MEASURED = "write a kind and a number with its unit, such as { temperature: 122 F }";
/** A quantity with its kind before it: `{ temperature: 122 F }`. */
const measured = z
  .record(z.string(), z.union([z.string(), z.number()]), { error: say(MEASURED) })
  .transform((written, context): Quantity => {
    const [[name, value] = ["", ""], ...more] = Object.entries(written);
    const kind = quantityKind.safeParse(name);
    const parsed = kind.success && more.length === 0 ? sheetQuantity(kind.data).safeParse(value) : undefined;
    if (kind.success && parsed?.success) return { kind: kind.data, value: parsed.data };
    context.addIssue({ code: "custom", message: parsed?.error?.issues[0]?.message ?? MEASURED });
    return z.NEVER;
  });
const told = z.union([z.boolean(), z.string(), measured], { error: say(`write a word, true, false, or: ${MEASURED}`) });
const day = z
  .string({ error: say("write a day, such as 2026-11-25") })
  .regex(/^\d{4}-\d{2}-\d{2}$/, "write a day, such as 2026-11-25");
const yesNo = z.boolean({ error: say("write true or false") });
const count = z.number({ error: say("write a number") }).positive("write a number above 0");
const number = z
  .string({ error: say('write a number in quotes, such as "1001"') })
  .regex(/^[A-Za-z0-9-]{1,12}$/, 'write digits, letters and hyphens, such as "1001"');
const customer = words("T. M.").refine(
  isInitialsOrNickname,
  "write initials or a nickname only, such as T. M.: two short words at most, and no numbers",
);
const said = {
  at: z.string({ error: say("write a moment, such as 2026-11-25T09:30-06:00") }).transform((written, context) => {
    const at_ms = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(Z|[+-]\d{2}:\d{2})$/.test(written) ? Date.parse(written) : Number.NaN;
    if (Number.isFinite(at_ms)) return at_ms;
    context.addIssue({ code: "custom", message: "write a moment, such as 2026-11-25T09:30-06:00" });
    return z.NEVER;
  }),
  by: words("marisol"),
  door: oneOf(DOORS),
  amends: z
    .number({ error: say("write the number of the entry, counted from 1") })
    .int()
    .min(1)
    .exactOptional(),
};
const person = words("marisol");

/** One entry of a job; what it holds depends on its kind. */
const entry = z.discriminatedUnion(
  "kind",
  [
    file({ ...said, kind: z.literal("opened"), customer, place: words("Ostrowick"), day: day.exactOptional() }),
    file({ ...said, kind: z.literal("planned"), day, people: z.array(person).min(1, "name at least one person") }),
    file({ ...said, kind: z.literal("unit"), model: words("hollin-50") }),
    file({ ...said, kind: z.literal("permit"), permit: words("P-12") }),
    file({ ...said, kind: z.literal("status"), status: oneOf(JOB_STATUSES), because: words("why").exactOptional() }),
    file({ ...said, kind: z.literal("facts"), topic: words("room"), facts: z.record(z.string(), told) }),
    file({
      ...said,
      kind: z.literal("reading"),
      id: words("outlet_temperature"),
      measured,
      expected: measured.exactOptional(),
      accepted: yesNo,
      because: words("why it stands").exactOptional(),
    }),
    file({
      ...said,
      kind: z.literal("item_opened"),
      id: words("pan"),
      what: words("fit the pan"),
      owner: person,
      due: day,
    }),
    file({ ...said, kind: z.literal("item_closed"), item: words("pan") }),
    file({ ...said, kind: z.literal("parts"), parts: z.record(z.string(), count) }),
    file({ ...said, kind: z.literal("note"), text: words("what is worth knowing") }),
    file({ ...said, kind: z.literal("trail"), text: words("what was checked and found") }),
    file({ ...said, kind: z.literal("withdrawn"), because: words("why").exactOptional() }),
  ],
  { error: say("write what kind of entry it is, such as kind: note") },
);
type Entry = z.infer<typeof entry>;

const jobsFile = file({
  invented: z.boolean({ error: say("write true when everything in this file is invented, else false") }),
  jobs: z.array(
    file({
      number,
      entries: z.array(entry, { error: say("write a list of entries") }).min(1, "the first opens the job"),
    }),
    { error: say("write a list of jobs, each starting with a dash") },
  ),
});

/** Reads what stands in jobs.yaml: jobs that were there before Oldhand kept them. Every entry must keep the rules. */
export function readJobs(contents: unknown, context: JobsContext): BookRead<JobsBook> {
  const checked = jobsFile.superRefine((book, refine) => {
    for (const [index, job] of book.jobs.entries()) {
      if (book.jobs.findIndex((other) => other.number === job.number) < index)
        refine.addIssue({ code: "custom", path: ["jobs", index, "number"], message: `${job.number} is taken above` });
      for (const fault of faultsOf(job, context))
        refine.addIssue({ code: "custom", path: ["jobs", index, "entries", fault.entry], message: fault.reason });
    }
  });
  return read(checked, contents, ({ invented, jobs }) => {
    const each = jobs.map((job) => eventsOf(job, context));
    return { isInvented: invented, jobs: each.flatMap((events) => projectJob(events) ?? []), events: each.flat() };
  });
}

type BookJob = z.infer<typeof jobsFile>["jobs"][number];

function eventsOf({ number: job, entries }: BookJob, { people }: JobsContext): readonly JobEvent[] {
  return entries.map((one, index) => ({
    number: index + 1,
    job,
    change: changeOf(one),
    ...(one.amends !== undefined && { amends: one.amends }),
    by: people.find(({ id }) => id === one.by)?.name ?? one.by,
    person: one.by,
    at_ms: one.at,
    door: one.door,
  }));
}

function changeOf(one: Entry): JobChange {
  const { at: _, by: __, door: ___, amends: ____, ...change } = one;
  switch (change.kind) {
    case "facts": {
      const values = Object.entries(change.facts).map(([id, value]) => [id, plain(value)] as const);
      return { ...change, facts: Object.fromEntries(values) };
    }
    case "reading": {
      const { kind, id, measured: quantity, expected, accepted: isAccepted, because } = change;
      return {
        kind,
        reading: { id, quantity, isAccepted, ...(expected && { expected }), ...(because !== undefined && { because }) },
      };
    }
    case "item_opened": {
      const { kind, ...item } = change;
      return { kind, item };
    }
    default:
      return change;
  }
}

function plain(value: z.infer<typeof told>): string | number | boolean {
  return typeof value === "object" ? value.value : value;
}

/** Times that run backwards, and rules that are not kept; whoever has left the company was once allowed to write. */
function faultsOf(job: BookJob, context: JobsContext): readonly { readonly entry: number; readonly reason: string }[] {
  const events = eventsOf(job, context);
  return events.flatMap((event, index) => {
    const before = events.slice(0, index);
    if (event.at_ms < (before.at(-1)?.at_ms ?? 0))
      return [{ entry: index, reason: "is earlier than the entry before it" }];
    const role = context.people.find(({ id }) => id === event.person)?.role ?? "owner";
    const refused = refuseEntry(projectJob(before), before, event, { id: event.person, role });
    return refused === undefined ? [] : [{ entry: index, reason: sayJobRefusal("en", refused) }];
  });
}

/** A name in an entry of a job that nobody and nothing in the books has. */
export interface Stranger {
  readonly job: string;
  readonly entry: number;
  readonly reason: string;
}

/**
 * Names that nobody has. It matters while the entries are to begin a record; later people leave and models go out of
 * the catalogue, and the jobs stay as they were.
 * @param people ids in people.yaml
 * @param models ids in the catalogue
 * @param parts ids in the book of parts; left out where parts are not looked at
 */
export function findStrangers(
  events: readonly JobEvent[],
  people: readonly string[],
  models: readonly string[],
  parts?: ReadonlySet<string>,
): readonly Stranger[] {
  return events.flatMap(({ job, number: at, person: by, change }) => {
    const named = [by, ...namesIn(change)].filter((name) => !people.includes(name));
    const unknown = change.kind === "unit" && !models.includes(change.model) ? [change.model] : [];
    return [
      ...named.map((name) => ({ job, entry: at, reason: `${name} is nobody in people.yaml` })),
      ...unknown.map((name) => ({ job, entry: at, reason: `${name} is no model of the catalogue` })),
      ...partsIn(change)
        .filter((part) => parts?.has(part) === false)
        .map((part) => ({ job, entry: at, reason: `${part} is no part of parts.yaml` })),
    ];
  });
}

function partsIn(change: JobChange): readonly string[] {
  return change.kind === "parts" ? Object.keys(change.parts) : [];
}

/** Reads jobs.yaml as one that is to begin a record: every name must be known; parts where the company has their book. */
export function readNewJobs(
  contents: unknown,
  people: JobsContext["people"],
  models: readonly string[],
  parts?: ReadonlySet<string>,
): BookRead<JobsBook> {
  const book = readJobs(contents, { people });
  if (!book.ok) return book;
  const ids = people.map(({ id }) => id);
  const numbers = [...new Set(book.value.events.map(({ job }) => job))];
  const faults = findStrangers(book.value.events, ids, models, parts).map(({ job, entry: at, reason }) => ({
    path: ["jobs", numbers.indexOf(job), "entries", at - 1],
    reason,
  }));
  return faults.length === 0 ? book : { ok: false, faults };
}

function namesIn(change: JobChange): readonly string[] {
  if (change.kind === "planned") return change.people;
  return change.kind === "item_opened" ? [change.item.owner] : [];
}
