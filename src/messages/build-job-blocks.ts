import { readyFor } from "../faults/topic/fault-facts.ts";
import type { Job } from "../jobs/job.ts";
import { factOfStep, whyOfStep } from "../jobs/startup-facts.ts";
import { STARTUP_STEPS } from "../jobs/startup-steps-table.ts";
import type { Block, Row, RowsBlock, TableBlock } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept } from "./job-labels.ts";
import { sayStands } from "./say-change.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Where a job stands: its plan, what is known of the house, what was measured and what is open. */
export function buildJobBlocks(voice: Voice, job: Job): readonly Block[] {
  const { record, statuses } = JOB_TEXTS[voice.language];
  const plan: Row[] = [
    { label: record.status, value: statuses[job.status] },
    ...optional(record.day, job.day),
    ...optional(record.unit, unitOf(voice, job)),
    ...(job.people.length === 0 ? [] : [{ label: record.people, value: namesOf(voice, job) }]),
    ...optional(record.permit, job.permit),
  ];
  return [
    { kind: "rows", rows: plan },
    ...itemRows(voice, job),
    ...readingTable(voice, job),
    ...stepRows(voice, job),
    ...noteRows(voice, job),
    ...seenRows(voice, job),
    ...factRows(voice, job),
  ];
}

/** The unit that is planned or went in. */
export function unitOf({ books }: Voice, { model, facts }: Job): string | undefined {
  const id = model ?? facts["model"]?.value;
  return books?.catalogue.find((one) => one.id === id)?.name ?? (id === undefined ? undefined : String(id));
}

export function namesOf(voice: Voice, { people }: Job): string {
  return people.map((person) => nameOf(voice, person)).join(", ");
}

/** What was measured beside what was expected. */
export function readingTable(voice: Voice, { readings }: Job): readonly TableBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = Object.values(readings).map((reading) => [
    labelOfStep(voice, reading.id),
    showQuantity(voice, reading.quantity),
    reading.expected === undefined ? "–" : showQuantity(voice, reading.expected),
    sayStands(voice, reading),
  ]);
  return rows.length === 0 ? [] : [{ kind: "table", caption: record.readings, columns: record.readingColumns, rows }];
}

export function itemRows(voice: Voice, { items }: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = items
    .filter(({ closed }) => closed === undefined)
    .toSorted((a, b) => a.due.localeCompare(b.due))
    .map(({ what, owner, due }) => ({
      label: labelOfStep(voice, what),
      value: `${nameOf(voice, owner)}, ${due}`,
      ...(due < (voice.books?.today ?? "") && { note: record.overdue }),
    }));
  return rows.length === 0 ? [] : [{ kind: "rows", heading: record.items, rows }];
}

/** What people noted, newest last. */
function noteRows(voice: Voice, { notes }: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  return rowsUnder(
    record.notes,
    notes.map(({ text, by }) => ({ label: by, value: text })),
  );
}

function factRows(voice: Voice, { facts }: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const ofHouse = Object.entries(facts).filter(
    ([id, { topic }]) => !id.startsWith(factOfStep("")) && !id.startsWith(readyFor("")) && !isOfFault(id, topic, voice),
  );
  const rows = ofHouse.map(
    ([id, { topic, value, by }]): Row => ({
      label: labelOfKept(voice, topic, id),
      value: showKept(voice, topic, id, value),
      note: record.factNote(by),
    }),
  );
  return rows.length === 0 ? [] : [{ kind: "rows", heading: record.facts, rows }];
}

/** What was looked at for a fault: complaints, checks and readings in the order in which they were told. */
export function seenRows(voice: Voice, { facts }: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = Object.entries(facts)
    .filter(([id, { topic }]) => isOfFault(id, topic, voice))
    .map(([id, { topic, value, by, at_ms }]): Row & { readonly at_ms: number } => ({
      label: labelOfKept(voice, topic, id),
      value: showKept(voice, topic, id, value),
      note: record.factNote(by),
      at_ms,
    }))
    .sort((one, other) => one.at_ms - other.at_ms)
    .map(({ at_ms: _, ...row }) => row);
  return rowsUnder(record.seen, rows);
}

/** What only a fault walk asks; what other topics ask too is of the house, and that somebody was careful is in the history. */
function isOfFault(id: string, topic: string, { topics }: Voice): boolean {
  return (
    topic === "fault" &&
    !id.startsWith(readyFor("")) &&
    ![...topics.values()].some((one) => one.id !== topic && Object.hasOwn(one.facts, id))
  );
}

function optional(label: string, value: string | undefined): readonly Row[] {
  return value === undefined ? [] : [{ label, value }];
}

/** What was looked at: done, or why not. */
export function stepRows(voice: Voice, { facts }: Job): readonly RowsBlock[] {
  const rows = STARTUP_STEPS.flatMap(({ id, reading }): Row[] => {
    const why = facts[whyOfStep(id)]?.value;
    const fact = facts[factOfStep(id)];
    if (fact === undefined && why === undefined) return [];
    if (reading !== undefined && why === undefined) return [];
    const label = labelOfKept(voice, "startup", factOfStep(id));
    const value = fact === undefined ? "" : showKept(voice, "startup", factOfStep(id), fact.value);
    return [{ label, value: [value, why].filter((part) => part !== undefined && part !== "").join(": ") }];
  });
  return rowsUnder(JOB_TEXTS[voice.language].record.steps, rows);
}

/** Rows under a heading; nothing where there are none. */
export function rowsUnder(heading: string, rows: readonly Row[]): readonly RowsBlock[] {
  return rows.length === 0 ? [] : [{ kind: "rows", heading, rows }];
}
