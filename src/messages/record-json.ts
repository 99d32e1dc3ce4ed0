import type { FactValue } from "../declaration/facts.ts";
import { describeHistory } from "../jobs/describe-history.ts";
import type { Job, JobChange } from "../jobs/job.ts";
import { cautionsSeenTo, factsOfFault, factsOfHouse, type JobRecord, type NamedFact } from "../jobs/job-record.ts";
import { timeOnSite } from "../jobs/time-on-site.ts";
import { QUANTITY_KINDS, type Quantity } from "../units/quantity-kinds.ts";
import { stepRows, unitOf } from "./build-job-blocks.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept, unitOfKept } from "./job-labels.ts";
import { sayMark, sayMarked } from "./record-words.ts";
import { sayChange, sayStands } from "./say-change.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Changes with the shape below; a reader that knows this number can read the file. */
export const RECORD_FORM = 1;

/** A moment: ISO 8601 in UTC. */
type Moment = string;
interface Said {
  readonly by: string;
  readonly at: Moment;
}
interface NumberJson {
  readonly value: number;
  /** The base unit; "" for a pure number. */
  readonly unit: string;
  /** The same in the reader's units and language. */
  readonly text: string;
}
interface FactJson extends Said {
  readonly id: string;
  readonly topic: string;
  readonly label: string;
  readonly value: FactValue;
  readonly unit: string;
  readonly text: string;
}
interface ReadingJson extends Said {
  readonly id: string;
  readonly label: string;
  readonly measured: NumberJson;
  readonly expected: NumberJson | null;
  readonly is_accepted: boolean;
  readonly because: string | null;
  readonly text: string;
}
interface ItemJson {
  readonly id: string;
  readonly what: string;
  readonly owner: string;
  readonly owner_name: string;
  /** YYYY-MM-DD */
  readonly due: string;
  readonly closed: Said | null;
}
interface CautionJson extends Said {
  readonly id: string;
  readonly severity: string | null;
  readonly act: "seen" | "skipped";
  readonly because: string | null;
  readonly caution: string;
  readonly text: string;
}
interface FileJson extends Said {
  readonly name: string;
  readonly type: string;
  readonly size_B: number;
  readonly sha256: string;
}
interface EventJson extends Said {
  readonly number: number;
  readonly kind: JobChange["kind"];
  readonly door: string;
  readonly text: string;
  /** The change as it is kept, in base units. */
  readonly change: JobChange;
  readonly amends: number | null;
  readonly amended_by: number | null;
}

/**
 * The record of a job for programs. Every name is stable: what is added later is a new name, and what would change or take
 * one away raises `form`. Numbers stand in base units with their unit beside them; `text` is for people.
 */
export interface RecordJson {
  readonly form: number;
  readonly job: string;
  readonly is_invented: boolean;
  readonly company: string;
  readonly customer: string;
  readonly place: string;
  readonly status: Job["status"];
  readonly status_text: string;
  readonly day: string | null;
  readonly permit: string | null;
  readonly model: string | null;
  readonly model_name: string | null;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly opened_at: Moment;
  readonly started_at: Moment | null;
  readonly closed_at: Moment | null;
  readonly time_on_site_s: number | null;
  readonly facts: readonly FactJson[];
  readonly readings: readonly ReadingJson[];
  readonly steps: readonly { readonly label: string; readonly text: string }[];
  readonly items: readonly ItemJson[];
  readonly cautions: readonly CautionJson[];
  readonly parts: readonly {
    readonly id: string;
    readonly name: string;
    readonly amount: number;
    readonly unit: "" | "m";
  }[];
  readonly notes: readonly (Said & { readonly text: string })[];
  readonly fault_checks: readonly FactJson[];
  readonly fault_remarks: readonly (Said & { readonly text: string })[];
  readonly files: readonly FileJson[];
  /** Oldest first; entries that were put right later stay. */
  readonly history: readonly EventJson[];
}

export function recordToJson(voice: Voice, record: JobRecord): RecordJson {
  const { job } = record;
  const { company } = voice.books ?? {};
  return {
    form: RECORD_FORM,
    job: job.number,
    is_invented: company?.isInvented === true,
    company: company?.name ?? "",
    customer: job.customer,
    place: job.place,
    status: job.status,
    status_text: JOB_TEXTS[voice.language].statuses[job.status],
    day: job.day ?? null,
    permit: job.permit ?? null,
    model: job.model ?? null,
    model_name: unitOf(voice, job) ?? null,
    people: job.people.map((id) => ({ id, name: nameOf(voice, id) })),
    opened_at: moment(job.openedAt_ms),
    started_at: momentOrNull(job.startedAt_ms),
    closed_at: momentOrNull(job.closedAt_ms),
    time_on_site_s: secondsOnSite(record.events),
    ...workJson(voice, record),
    ...trailJson(voice, record),
  };
}

const MS_A_SECOND = 1000;

function secondsOnSite(events: JobRecord["events"]): number | null {
  const spent = timeOnSite(events);
  return spent === undefined ? null : Math.round(spent.total_ms / MS_A_SECOND);
}

type Work = Pick<RecordJson, "facts" | "readings" | "steps" | "items" | "cautions" | "parts">;

function workJson(voice: Voice, { job, marks }: JobRecord): Work {
  const parts = voice.books?.crew.parts ?? [];
  return {
    facts: factsOfHouse(job).map((fact) => factJson(voice, fact)),
    readings: Object.values(job.readings).map((reading) => ({
      id: reading.id,
      label: labelOfStep(voice, reading.id),
      measured: numberJson(voice, reading.quantity),
      expected: reading.expected === undefined ? null : numberJson(voice, reading.expected),
      is_accepted: reading.isAccepted,
      because: reading.because ?? null,
      text: sayStands(voice, reading),
      ...said(reading),
    })),
    steps: stepRows(voice, job).flatMap(({ rows }) => rows.map(({ label, value }) => ({ label, text: value }))),
    items: job.items.map(({ id, what, owner, due, closed }) => ({
      id,
      what: labelOfStep(voice, what),
      owner,
      owner_name: nameOf(voice, owner),
      due,
      closed: closed === undefined ? null : said(closed),
    })),
    cautions: cautionsSeenTo(marks).map((mark) => ({
      id: mark.caution,
      severity: mark.shown?.severity ?? null,
      act: mark.act === "skipped" ? ("skipped" as const) : ("seen" as const),
      because: mark.because ?? null,
      caution: sayMarked(voice, mark),
      text: sayMark(voice, mark),
      ...said(mark),
    })),
    parts: Object.entries(job.parts).map(([id, amount]) => {
      const part = parts.find((one) => one.id === id);
      const unit = part?.measure === "length" ? ("m" as const) : ("" as const);
      return { id, name: part?.name[voice.language] ?? id, amount, unit };
    }),
  };
}

type Trail = Pick<RecordJson, "notes" | "fault_checks" | "fault_remarks" | "files" | "history">;

function trailJson(voice: Voice, { job, events }: JobRecord): Trail {
  return {
    notes: job.notes.map((note) => ({ text: note.text, ...said(note) })),
    fault_checks: factsOfFault(job).map((fact) => factJson(voice, fact)),
    fault_remarks: job.trail.map((remark) => ({ text: remark.text, ...said(remark) })),
    files: job.files.map((file) => ({
      name: file.name,
      type: file.type,
      size_B: file.size_B,
      sha256: file.hash,
      ...said(file),
    })),
    history: describeHistory(events)
      .toReversed()
      .map((line) => ({
        number: line.number,
        kind: line.change.kind,
        door: line.door,
        text: sayChange(voice, line.change),
        change: line.change,
        amends: line.amends?.number ?? null,
        amended_by: line.amendedBy ?? null,
        ...said(line),
      })),
  };
}

function factJson(voice: Voice, fact: NamedFact): FactJson {
  const { id, topic, value } = fact;
  return {
    id,
    topic,
    label: labelOfKept(voice, topic, id),
    value,
    unit: unitOfKept(voice, topic, id),
    text: showKept(voice, topic, id, value),
    ...said(fact),
  };
}

function numberJson(voice: Voice, quantity: Quantity): NumberJson {
  return { value: quantity.value, unit: QUANTITY_KINDS[quantity.kind].base, text: showQuantity(voice, quantity) };
}

function said({ by, at_ms }: { readonly by: string; readonly at_ms: number }): Said {
  return { by, at: moment(at_ms) };
}

function moment(at_ms: number): Moment {
  return new Date(at_ms).toISOString();
}

function momentOrNull(at_ms: number | undefined): Moment | null {
  return at_ms === undefined ? null : moment(at_ms);
}
