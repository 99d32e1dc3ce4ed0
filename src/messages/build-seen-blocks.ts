import type { Job } from "../jobs/job.ts";
import { factsOfFault } from "../jobs/job-record.ts";
import type { Row, RowsBlock } from "./card.ts";
import { labelOfKept, showKept } from "./job-labels.ts";
import { RECORD_TEXTS, sayByWhen, sayMoment } from "./record-words.ts";
import type { Voice } from "./voice.ts";

/** Each check of a fault walk with its answer, then what was remarked, as it happened. */
export function faultRows(voice: Voice, job: Job): readonly RowsBlock[] {
  const texts = RECORD_TEXTS[voice.language];
  const checks = factsOfFault(job).map(({ id, topic, value, ...said }) => ({
    at_ms: said.at_ms,
    row: {
      label: labelOfKept(voice, topic, id),
      value: showKept(voice, topic, id, value),
      note: sayByWhen(voice, said),
    },
  }));
  const remarks = job.trail.map(({ text, ...said }) => ({
    at_ms: said.at_ms,
    row: { label: texts.faultFinding, value: text, note: sayByWhen(voice, said) },
  }));
  const rows = [...checks, ...remarks].sort((a, b) => a.at_ms - b.at_ms).map(({ row }): Row => row);
  return rowsUnder(texts.faultWalk, rows);
}

export function noteRows(voice: Voice, { notes }: Job): readonly RowsBlock[] {
  const rows = notes.map(({ text, by, at_ms }): Row => ({ label: `${by}, ${sayMoment(voice, at_ms)}`, value: text }));
  return rowsUnder(RECORD_TEXTS[voice.language].notes, rows);
}

/** Rows under a heading; nothing where there are none. */
export function rowsUnder(heading: string, rows: readonly Row[]): readonly RowsBlock[] {
  return rows.length === 0 ? [] : [{ kind: "rows", heading, rows }];
}
