import type { Job, JobChange, JobEvent, JobStatus } from "./job.ts";

/** What an event comes to once the events that put it right are counted in. */
export interface Effect {
  /** Number of the event whose place this takes. */
  readonly number: number;
  readonly change: JobChange;
  /** Who vouches for it: the person who said it last. */
  readonly by: string;
  /** When it happened, which no amendment changes. */
  readonly at_ms: number;
}

/**
 * A job as all its events leave it. An amendment takes the place of what it amends, at that place in the order, so that
 * later events still come later; of several amendments the newest counts. Nothing is computed from a clock.
 * @param events all of one job, oldest first
 * @returns nothing when no event opens the job
 */
export function projectJob(events: readonly JobEvent[]): Job | undefined {
  const last = events.at(-1);
  const job = effectsOf(events).reduce<Job | undefined>((soFar, effect) => applyEffect(soFar, effect, last), undefined);
  return job && last && { ...job, version: last.number };
}

/**
 * A job with one more event that amends nothing: the same as to project all events again.
 * @param event the next of this job
 */
export function addToJob(job: Job | undefined, event: JobEvent): Job | undefined {
  const added = applyEffect(job, event, event);
  return added && { ...added, version: event.number };
}

/** The events with their amendments counted in, in the order of the events that they began with. */
export function effectsOf(events: readonly JobEvent[]): readonly Effect[] {
  const effects = new Map<number, Effect>();
  const roots = new Map<number, number>();
  for (const { number, change, amends, by, at_ms } of events) {
    const root = amends === undefined ? undefined : roots.get(amends);
    const amended = root === undefined ? undefined : effects.get(root);
    roots.set(number, root ?? number);
    if (amended === undefined) effects.set(number, { number, change, by, at_ms });
    else if (mayStandFor(change, amended.change)) effects.set(amended.number, { ...amended, change, by });
  }
  return [...effects.values()];
}

/** Number of the entry that an entry puts right in the end; its own where it puts none right. */
export function rootOf(events: readonly Pick<JobEvent, "number" | "amends">[], number: number): number {
  const amends = events.find((one) => one.number === number)?.amends;
  return amends === undefined || amends >= number ? number : rootOf(events, amends);
}

/** A job without an opening is none, so only an opening stands for an opening; taking back may be taken back again. */
export function mayStandFor(change: JobChange, amended: JobChange): boolean {
  const isOpening = change.kind === "opened";
  return isOpening === (amended.kind === "opened");
}

function applyEffect(job: Job | undefined, effect: Effect, event: JobEvent | undefined): Job | undefined {
  const { change } = effect;
  if (job !== undefined) return apply(job, effect);
  if (change.kind !== "opened") return undefined;
  const { customer, place, day } = change;
  return {
    number: event?.job ?? "",
    customer,
    place,
    status: "planned",
    ...(day !== undefined && { day }),
    people: [],
    facts: {},
    readings: {},
    items: [],
    files: [],
    parts: {},
    notes: [],
    trail: [],
    openedAt_ms: effect.at_ms,
    version: effect.number,
  };
}

function apply(job: Job, { change, by, at_ms }: Effect): Job {
  const said = { by, at_ms };
  switch (change.kind) {
    case "planned":
      return { ...job, day: change.day, people: change.people };
    case "unit":
      return { ...job, model: change.model };
    case "permit":
      return { ...job, permit: change.permit };
    case "status":
      return moveTo(job, change.status, at_ms);
    case "facts": {
      const { topic, facts } = change;
      const learnt = Object.entries(facts).map(([id, value]) => [id, { value, topic, ...said }] as const);
      return { ...job, facts: { ...job.facts, ...Object.fromEntries(learnt) } };
    }
    case "reading":
      return { ...job, readings: { ...job.readings, [change.reading.id]: { ...change.reading, ...said } } };
    case "item_opened":
      return { ...job, items: [...job.items.filter(({ id }) => id !== change.item.id), change.item] };
    case "item_closed":
      return { ...job, items: job.items.map((item) => (item.id === change.item ? { ...item, closed: said } : item)) };
    case "file":
      return { ...job, files: [...job.files, { ...change.file, ...said }] };
    case "parts":
      return { ...job, parts: addParts(job.parts, change.parts) };
    case "note":
      return { ...job, notes: [...job.notes, { text: change.text, ...said }] };
    case "trail":
      return { ...job, trail: [...job.trail, { text: change.text, ...said }] };
    // A job is opened once, and what was taken back does nothing.
    case "opened":
    case "withdrawn":
      return job;
  }
}

function moveTo(job: Job, status: JobStatus, at_ms: number): Job {
  const { closedAt_ms, ...rest } = job;
  const isClosed = status === "open_items" || status === "complete";
  return {
    ...rest,
    status,
    ...(status === "under_way" && job.startedAt_ms === undefined && { startedAt_ms: at_ms }),
    ...(isClosed && { closedAt_ms: closedAt_ms ?? at_ms }),
  };
}

function addParts(used: Job["parts"], more: Job["parts"]): Job["parts"] {
  const sums = Object.entries(more).map(([part, count]) => [part, (used[part] ?? 0) + count] as const);
  return { ...used, ...Object.fromEntries(sums) };
}
