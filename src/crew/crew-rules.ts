import type { BookPerson, Books } from "../books/books.ts";
import type { Role } from "../ports/store.ts";
import type { CrewChange, CrewEntry, CrewEvent } from "./crew-event.ts";
import { standingEvents } from "./crew-event.ts";

/** Why a change of the crew is not made, as data; the sentences stand in `src/messages/{en,es}/crew-records.ts`. */
export type CrewRefusal =
  | { readonly code: "crew_role"; readonly roles: readonly Role[] }
  | { readonly code: "crew_unknown_event"; readonly event: number }
  | { readonly code: "only_owner" }
  | { readonly code: "last_owner" };

/** Tells it from why a change to a job is not made. */
export function isCrewRefusal<T extends { readonly code: string }>(refusal: T | CrewRefusal): refusal is CrewRefusal {
  return CODES.some((code) => code === refusal.code);
}
const CODES: readonly CrewRefusal["code"][] = ["crew_role", "crew_unknown_event", "only_owner", "last_owner"];

interface CrewActor {
  readonly id: string;
  readonly role: Role;
}

const ALL: readonly Role[] = ["technician", "dispatcher", "manager", "owner"];
export const OFFICE_ROLES: readonly Role[] = ["dispatcher", "manager", "owner"];
export const LEAD_ROLES: readonly Role[] = ["manager", "owner"];

/**
 * Who may make which change.
 * @source common practice: the office keeps days, hours, trucks, tools and training; whoever answers for the company keeps
 * papers, roles and who belongs to it
 */
export const CREW_ROLES: Readonly<Record<Exclude<CrewChange["kind"], "withdrawn">, readonly Role[]>> = {
  joined: LEAD_ROLES,
  left: LEAD_ROLES,
  role: LEAD_ROLES,
  credential: LEAD_ROLES,
  credential_gone: LEAD_ROLES,
  training: OFFICE_ROLES,
  tool: OFFICE_ROLES,
  tool_gone: OFFICE_ROLES,
  calibrated: OFFICE_ROLES,
  hours: OFFICE_ROLES,
  off: OFFICE_ROLES,
  works: OFFICE_ROLES,
  truck: OFFICE_ROLES,
  stock: OFFICE_ROLES,
  // Said by the house with the parts of a job, which everybody may write down.
  used: ALL,
};

/** Whether somebody may make a change: by their role, or of their own tools. */
export function mayChange(change: Exclude<CrewChange, { readonly kind: "withdrawn" }>, actor: CrewActor): boolean {
  if (change.kind === "calibrated" && change.person === actor.id) return true;
  return CREW_ROLES[change.kind].includes(actor.role);
}

/**
 * Whether a change may be made to the crew as it stands now.
 * @param books with everything that was said before
 * @param events all of the workspace, needed to take one back
 * @returns nothing when it may
 */
export function refuseCrewEntry(
  { people }: Books,
  events: readonly CrewEvent[],
  { change, amends }: CrewEntry,
  actor: CrewActor,
): CrewRefusal | undefined {
  if (change.kind !== "withdrawn") return refuse(people, change, actor);
  const root = standingEvents(events).find(({ number }) => number === amends);
  if (root === undefined || root.change.kind === "withdrawn") return { code: "crew_unknown_event", event: amends ?? 0 };
  return refuse(people, root.change, actor);
}

function refuse(
  people: readonly BookPerson[],
  change: Exclude<CrewChange, { readonly kind: "withdrawn" }>,
  actor: CrewActor,
): CrewRefusal | undefined {
  if (!mayChange(change, actor)) return { code: "crew_role", roles: CREW_ROLES[change.kind] };
  if (change.kind !== "role" && change.kind !== "left") return undefined;
  const isOwner = people.some(({ id, role }) => id === change.person && role === "owner");
  const becomesOwner = change.kind === "role" && change.role === "owner";
  if ((isOwner || becomesOwner) && actor.role !== "owner") return { code: "only_owner" };
  const others = people.filter(({ id, role }) => role === "owner" && id !== change.person);
  return isOwner && !becomesOwner && others.length === 0 ? { code: "last_owner" } : undefined;
}
