import type { FactValue } from "../declaration/facts.ts";
import type { Door } from "../ports/store.ts";
import type { Quantity } from "../units/quantity-kinds.ts";

/** Where a job stands. "open_items": closed by the crew, with something left to see to. */
export const JOB_STATUSES = [
  "planned",
  "surveyed",
  "under_way",
  "open_items",
  "complete",
  "called_back",
  "cancelled",
] as const;
export type JobStatus = (typeof JOB_STATUSES)[number];

/** A fact learnt about this job in any walk, under the id that all topics share. */
export interface JobFact {
  readonly value: FactValue;
  /** The topic that it was told to. */
  readonly topic: string;
  readonly by: string;
  readonly at_ms: number;
}
/** Something measured on site, beside what was expected, and whether that is accepted. */
export interface JobReading {
  readonly id: string;
  readonly quantity: Quantity;
  readonly expected?: Quantity;
  readonly isAccepted: boolean;
  /** Why it stands although it is not accepted, or was not taken. */
  readonly because?: string;
  readonly by: string;
  readonly at_ms: number;
}
/** What is left to see to, with who owns it and by when. */
export interface OpenItem {
  readonly id: string;
  readonly what: string;
  readonly owner: string;
  /** YYYY-MM-DD */
  readonly due: string;
  readonly closed?: { readonly by: string; readonly at_ms: number };
}
export interface JobFile {
  readonly hash: string;
  readonly name: string;
  readonly type: string;
  readonly size_B: number;
  readonly by: string;
  readonly at_ms: number;
}

/** A job as it stands now: what all its events come to. Nothing about the customer beyond initials or a nickname. */
export interface Job {
  readonly number: string;
  readonly customer: string;
  readonly place: string;
  readonly status: JobStatus;
  /** Day that the work is planned for, YYYY-MM-DD. */
  readonly day?: string;
  /** Model of the catalogue. */
  readonly model?: string;
  /** Ids of the people who do it, the one who leads first. */
  readonly people: readonly string[];
  readonly permit?: string;
  readonly facts: Readonly<Record<string, JobFact>>;
  readonly readings: Readonly<Record<string, JobReading>>;
  readonly items: readonly OpenItem[];
  readonly files: readonly JobFile[];
  /** Parts used, by id of the kit list, over all visits. */
  readonly parts: Readonly<Record<string, number>>;
  readonly notes: readonly { readonly text: string; readonly by: string; readonly at_ms: number }[];
  /** Checks and findings of fault walks, oldest first. */
  readonly trail: readonly { readonly text: string; readonly by: string; readonly at_ms: number }[];
  readonly openedAt_ms: number;
  /** When the work first began. */
  readonly startedAt_ms?: number;
  /** When the crew closed it; unset again while it is worked on anew. */
  readonly closedAt_ms?: number;
  /** Number of the last event that this holds. */
  readonly version: number;
}

/** What happened to a job. Events are only ever added; a slip is put right by a further event that says so. */
export type JobChange =
  | { readonly kind: "opened"; readonly customer: string; readonly place: string; readonly day?: string }
  | { readonly kind: "planned"; readonly day: string; readonly people: readonly string[] }
  | { readonly kind: "unit"; readonly model: string }
  | { readonly kind: "permit"; readonly permit: string }
  | { readonly kind: "status"; readonly status: JobStatus; readonly because?: string }
  | { readonly kind: "facts"; readonly topic: string; readonly facts: Readonly<Record<string, FactValue>> }
  | { readonly kind: "reading"; readonly reading: Omit<JobReading, "by" | "at_ms"> }
  | { readonly kind: "item_opened"; readonly item: Omit<OpenItem, "closed"> }
  | { readonly kind: "item_closed"; readonly item: string }
  | { readonly kind: "file"; readonly file: Omit<JobFile, "by" | "at_ms"> }
  /** Parts used this time: added to those used before. */
  | { readonly kind: "parts"; readonly parts: Readonly<Record<string, number>> }
  | { readonly kind: "note"; readonly text: string }
  | { readonly kind: "trail"; readonly text: string }
  /** The event that this amends is taken back; alone it means nothing. */
  | { readonly kind: "withdrawn"; readonly because?: string };
export interface JobEvent {
  /** Counted from 1, a job. */
  readonly number: number;
  readonly job: string;
  readonly change: JobChange;
  /** Number of the event that this one puts right. */
  readonly amends?: number;
  /** Name of the person, as it was then. */
  readonly by: string;
  /** Id of the person. */
  readonly person: string;
  readonly at_ms: number;
  readonly door: Door;
}
/** A change that somebody wants made: what an event holds before who, when and where are known. */
export interface JobEntry {
  readonly job: string;
  readonly change: JobChange;
  readonly amends?: number;
  /** Version that the person saw, 0 for a new job: what has changed meanwhile is then not written over. */
  readonly version?: number;
}
