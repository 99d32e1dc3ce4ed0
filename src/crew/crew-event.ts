import type { Door, Role } from "../ports/store.ts";
import type { CredentialKind } from "./credential-kinds-table.ts";
import type { Credential, Shift, Stock, Tool, Training, Weekday } from "./crew.ts";

/**
 * What differs from the books about people, trucks and stock. Events are only ever added; a slip is taken back by a further
 * event that says so, and said anew. Days are YYYY-MM-DD in the company's time zone.
 */
export type CrewChange =
  /** Somebody the workspace knows goes to site from now on. */
  | { readonly kind: "joined"; readonly person: string; readonly name: string }
  /** Somebody goes to site no more, and may do what a technician may. */
  | { readonly kind: "left"; readonly person: string }
  | { readonly kind: "role"; readonly person: string; readonly role: Role }
  /** Takes the place of one of the same kind and issuer. */
  | { readonly kind: "credential"; readonly person: string; readonly credential: Credential }
  | { readonly kind: "credential_gone"; readonly person: string; readonly credential: CredentialKind }
  /** Takes the place of the training in the same subject. */
  | { readonly kind: "training"; readonly person: string; readonly training: Training }
  /** Takes the place of the tool with the same id. */
  | { readonly kind: "tool"; readonly person: string; readonly tool: Tool }
  | { readonly kind: "tool_gone"; readonly person: string; readonly id: string }
  | { readonly kind: "calibrated"; readonly person: string; readonly id: string; readonly until: string }
  /** Hours of one weekday; none where somebody does not work then. */
  | {
      readonly kind: "hours";
      readonly person: string;
      readonly weekdays: readonly Weekday[];
      readonly shifts: readonly Shift[];
    }
  /** Both ends included. */
  | { readonly kind: "off"; readonly person: string; readonly from: string; readonly to: string }
  | { readonly kind: "works"; readonly person: string; readonly from: string; readonly to: string }
  /** Left out: they have no truck any more. */
  | { readonly kind: "truck"; readonly person: string; readonly truck?: string }
  /** "add": so much more, or less where negative. "count": so much is there. Pieces, or metres of what is cut. */
  | {
      readonly kind: "stock";
      readonly truck: string;
      readonly part: string;
      readonly how: "add" | "count";
      readonly amount: number;
    }
  /** Parts used on a job, off the truck of whoever did it. `entry`: number of the event in the job that says so. */
  | {
      readonly kind: "used";
      readonly truck: string;
      readonly job: string;
      readonly entry: number;
      readonly parts: Stock;
    }
  /** The event that this amends is taken back. */
  | { readonly kind: "withdrawn" };

export interface CrewEvent {
  /** Counted from 1, a workspace. */
  readonly number: number;
  readonly change: CrewChange;
  /** Number of the event that is taken back. */
  readonly amends?: number;
  /** Name of whoever said it, as it was then. */
  readonly by: string;
  /** Id of whoever said it. */
  readonly said_by: string;
  readonly at_ms: number;
  readonly door: Door;
}
/** A change that somebody wants made: what an event holds before who, when and where are known. */
export interface CrewEntry {
  readonly change: CrewChange;
  readonly amends?: number;
}

/** Truck id of the shop, where what is not in a truck lies. */
export const SHOP = "shop";

/** The events that count: what was taken back and the taking back are left out. */
export function standingEvents(events: readonly CrewEvent[]): readonly CrewEvent[] {
  const gone = new Set(events.flatMap(({ change, amends }) => (change.kind === "withdrawn" ? [amends] : [])));
  return events.filter(({ number, change }) => change.kind !== "withdrawn" && !gone.has(number));
}
