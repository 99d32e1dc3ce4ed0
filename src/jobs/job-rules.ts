import type { Role } from "../ports/store.ts";
import { isInitialsOrNickname } from "./customer.ts";
import { JOB_STATUSES, type Job, type JobChange, type JobEntry, type JobEvent, type JobStatus } from "./job.ts";
import { mayStandFor } from "./project-job.ts";

/** Why a change is not made, as data; the sentences stand in `src/messages/{en,es}/jobs.ts`. */
export type JobRefusal =
  | { readonly code: "unknown_job"; readonly job: string }
  | { readonly code: "number_taken"; readonly job: string }
  | { readonly code: "customer_too_much" }
  | { readonly code: "not_in_this_status"; readonly status: JobStatus; readonly asked: JobChange["kind"] }
  | { readonly code: "not_your_role"; readonly roles: readonly Role[] }
  | {
      readonly code: "no_such_step";
      readonly from: JobStatus;
      readonly to: JobStatus;
      readonly next: readonly JobStatus[];
    }
  | { readonly code: "says_why"; readonly to: JobStatus }
  | { readonly code: "items_left"; readonly items: readonly string[] }
  | { readonly code: "no_item_left" }
  | { readonly code: "reading_unexplained"; readonly readings: readonly string[] }
  | { readonly code: "unknown_item"; readonly item: string; readonly open: readonly string[] }
  | { readonly code: "unknown_event"; readonly event: number }
  | { readonly code: "other_kind"; readonly event: number }
  | { readonly code: "not_your_event"; readonly by: string };

/** Who wants a change made. */
export interface JobActor {
  readonly id: string;
  readonly role: Role;
}
interface Rule {
  readonly statuses: readonly JobStatus[];
  readonly roles: readonly Role[];
}

const ALL: readonly Role[] = ["technician", "dispatcher", "manager", "owner"];
const OFFICE: readonly Role[] = ["dispatcher", "manager", "owner"];
const LEADS: readonly Role[] = ["manager", "owner"];
/** Statuses in which somebody still works on the job. */
export const LIVE: readonly JobStatus[] = ["planned", "surveyed", "under_way", "open_items", "called_back"];
const NOT_CANCELLED: readonly JobStatus[] = [...LIVE, "complete"];

/**
 * In which status and by whom a change may be made.
 * @source common practice: the crew writes down what it finds and does, the office plans, papers may come in later
 */
export const RULES: Readonly<Record<Exclude<JobChange["kind"], "opened" | "status" | "withdrawn">, Rule>> = {
  planned: { statuses: LIVE, roles: OFFICE },
  unit: { statuses: LIVE, roles: ALL },
  permit: { statuses: NOT_CANCELLED, roles: ALL },
  facts: { statuses: LIVE, roles: ALL },
  reading: { statuses: LIVE, roles: ALL },
  item_opened: { statuses: LIVE, roles: ALL },
  item_closed: { statuses: LIVE, roles: ALL },
  file: { statuses: NOT_CANCELLED, roles: ALL },
  parts: { statuses: NOT_CANCELLED, roles: ALL },
  note: { statuses: JOB_STATUSES, roles: ALL },
  trail: { statuses: LIVE, roles: ALL },
};

/** From which status to which a job may go, and who may say so. @source common practice */
export const STEPS: Readonly<Record<JobStatus, Partial<Readonly<Record<JobStatus, readonly Role[]>>>>> = {
  planned: { surveyed: ALL, under_way: ALL, cancelled: OFFICE },
  surveyed: { planned: OFFICE, under_way: ALL, cancelled: OFFICE },
  under_way: { open_items: ALL, complete: ALL, planned: OFFICE, surveyed: OFFICE, cancelled: LEADS },
  open_items: { under_way: ALL, complete: ALL, called_back: ALL },
  complete: { called_back: ALL },
  called_back: { under_way: ALL, open_items: ALL, complete: OFFICE },
  cancelled: { planned: OFFICE },
};
/** Steps that nobody understands later without a reason. */
const SAYS_WHY: readonly JobStatus[] = ["cancelled", "called_back"];

/**
 * Whether a change may be made to a job as it stands now.
 * @param job nothing where no job has this number
 * @param events all events of the job, needed for amendments
 * @returns nothing when it may
 */
export function refuseEntry(
  job: Job | undefined,
  events: readonly JobEvent[],
  entry: JobEntry,
  actor: JobActor,
): JobRefusal | undefined {
  const { change } = entry;
  if (change.kind === "opened" && !isInitialsOrNickname(change.customer)) return { code: "customer_too_much" };
  if (change.kind === "opened" && entry.amends === undefined)
    return job === undefined ? undefined : { code: "number_taken", job: entry.job };
  if (job === undefined) return { code: "unknown_job", job: entry.job };
  if (entry.amends !== undefined) return refuseAmendment(events, change, entry.amends, actor);
  if (change.kind === "opened") return undefined;
  if (change.kind === "withdrawn") return { code: "unknown_event", event: 0 };
  if (change.kind === "status") return refuseStep(job, change, actor);
  const { statuses, roles } = RULES[change.kind];
  if (!statuses.includes(job.status)) return { code: "not_in_this_status", status: job.status, asked: change.kind };
  if (!roles.includes(actor.role)) return { code: "not_your_role", roles };
  return change.kind === "item_closed" ? refuseClosing(job, change.item) : undefined;
}

/**
 * Whether an event can be put right so at all, whoever asks: what it amends must be there and of its kind, so that
 * what counts afterwards is as plain as if it had been said at once.
 */
export function refuseStandIn(
  events: readonly JobEvent[],
  change: JobChange,
  amends: number,
): Extract<JobRefusal, { readonly code: "unknown_event" | "other_kind" }> | undefined {
  const root = rootOf(events, amends);
  if (root === undefined) return { code: "unknown_event", event: amends };
  const isSameKind = change.kind === "withdrawn" || change.kind === root.change.kind;
  return isSameKind && mayStandFor(change, root.change) ? undefined : { code: "other_kind", event: amends };
}

/** One puts one's own slips right; those of others and every status are for those who lead. */
function refuseAmendment(
  events: readonly JobEvent[],
  change: JobChange,
  amends: number,
  { id, role }: JobActor,
): JobRefusal | undefined {
  const refused = refuseStandIn(events, change, amends);
  if (refused !== undefined) return refused;
  const root = rootOf(events, amends);
  if (root === undefined || LEADS.includes(role)) return undefined;
  if (root.change.kind === "status") return { code: "not_your_role", roles: LEADS };
  return root.person === id ? undefined : { code: "not_your_event", by: root.by };
}

function rootOf(events: readonly JobEvent[], number: number): JobEvent | undefined {
  const event = events.find((one) => one.number === number);
  if (event?.amends === undefined || event.amends >= event.number) return event;
  return rootOf(events, event.amends) ?? event;
}

function refuseStep(
  job: Job,
  { status: to, because = "" }: Extract<JobChange, { readonly kind: "status" }>,
  { role }: JobActor,
): JobRefusal | undefined {
  const { status: from } = job;
  const roles = STEPS[from][to];
  if (roles === undefined)
    return { code: "no_such_step", from, to, next: JOB_STATUSES.filter((next) => STEPS[from][next]?.includes(role)) };
  if (!roles.includes(role)) return { code: "not_your_role", roles };
  if (SAYS_WHY.includes(to) && because.trim() === "") return { code: "says_why", to };
  const open = openItems(job);
  if (to === "open_items" && open.length === 0) return { code: "no_item_left" };
  if (to !== "complete") return undefined;
  if (open.length > 0) return { code: "items_left", items: open };
  const readings = Object.values(job.readings).filter(({ isAccepted, because: why }) => !isAccepted && !why?.trim());
  return readings.length > 0 ? { code: "reading_unexplained", readings: readings.map(({ id }) => id) } : undefined;
}

function refuseClosing(job: Job, item: string): JobRefusal | undefined {
  const open = job.items.filter(({ closed }) => closed === undefined).map(({ id }) => id);
  return open.includes(item) ? undefined : { code: "unknown_item", item, open };
}

function openItems({ items }: Job): readonly string[] {
  return items.filter(({ closed }) => closed === undefined).map(({ what }) => what);
}
