import type { Job } from "../jobs/job.ts";
import { factsOfHouse } from "../jobs/job-record.ts";
import { factOfStep, whyOfStep } from "../jobs/startup-facts.ts";
import { STARTUP_STEPS } from "../jobs/startup-steps-table.ts";
import { faultRows, noteRows, rowsUnder } from "./build-seen-blocks.ts";
import type { Block, Row, RowsBlock, TableBlock } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept } from "./job-labels.ts";
import { sayStands } from "./say-change.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Where a job stands: its plan, what is known of the house, what was measured and what is open. */
export function buildJobBlocks(voice: Voice, job: Job): readonly Block[] {
  return [
    { kind: "rows", rows: planRows(voice, job) },
    ...itemRows(voice, job),
    ...readingTable(voice, job),
    ...stepRows(voice, job),
    ...noteRows(voice, job),
    ...faultRows(voice, job),
    ...factRows(voice, job),
  ];
}

/** Status, day, unit, people and permit. */
export function planRows(voice: Voice, job: Job): readonly Row[] {
  const { record, statuses } = JOB_TEXTS[voice.language];
  return [
    { label: record.status, value: statuses[job.status] },
    ...optional(record.day, job.day),
    ...optional(record.unit, unitOf(voice, job)),
    ...(job.people.length === 0 ? [] : [{ label: record.people, value: namesOf(voice, job) }]),
    ...optional(record.permit, job.permit),
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

/** Who does the job; where nobody was planned for it, who measured and told. */
export function peopleOf(voice: Voice, job: Job): string | undefined {
  if (job.people.length > 0) return namesOf(voice, job);
  const told = [...Object.values(job.readings), ...Object.values(job.facts)].map(({ by }) => by);
  return told.length === 0 ? undefined : [...new Set(told)].join(", ");
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

/** What is known of the house; what a fault walk found stands apart. */
export function factRows(voice: Voice, job: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = factsOfHouse(job).map(
    ({ id, topic, value, by }): Row => ({
      label: labelOfKept(voice, topic, id),
      value: showKept(voice, topic, id, value),
      note: record.factNote(by),
    }),
  );
  return rows.length === 0 ? [] : [{ kind: "rows", heading: record.facts, rows }];
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
