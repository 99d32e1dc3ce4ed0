import { q } from "../declaration/answer.ts";
import type { Job, JobEvent, JobFile } from "../jobs/job.ts";
import { cautionsSeenTo, type JobRecord } from "../jobs/job-record.ts";
import { untakenSteps } from "../jobs/startup-state.ts";
import type { KeptMark } from "../ports/store.ts";
import { buildHistoryBlocks } from "./build-history-blocks.ts";
import { factRows, itemRows, planRows, readingTable, stepRows } from "./build-job-blocks.ts";
import { faultRows, noteRows, rowsUnder } from "./build-seen-blocks.ts";
import type { Block, FileBlock, Row, RowsBlock, TextBlock } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, showKept } from "./job-labels.ts";
import { RECORD_TEXTS, sayDayAndTime, sayMark, sayMarked, sayMoment, sayTimeOnSite } from "./record-words.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Facts of a house that say how the heater was left. */
const SETTINGS = ["setpoint", "mode", "supply", "precharge", "mixing_valve"];

/** The whole record of a job: how it stands and what is open first, everything else folded. */
export function buildRecordBlocks(voice: Voice, { job, events, marks }: JobRecord): readonly Block[] {
  const nothingOpen: TextBlock = { kind: "text", tone: "plain", text: JOB_TEXTS[voice.language].record.nothingOpen };
  const items = itemRows(voice, job);
  return [
    { kind: "rows", rows: [...planRows(voice, job), ...timeRows(voice, job, events)] },
    ...(items.length > 0 ? items : [nothingOpen]),
    ...[
      ...buildWork(voice, job, marks),
      ...closedItemRows(voice, job),
      ...factRows(voice, job),
      ...fileBlocks(voice, job),
      ...buildHistoryBlocks(voice, events),
    ].map((block) => ({ ...block, isDetail: true as const })),
  ];
}

/** What was set, measured, looked at and used, and what a fault walk found. */
export function buildWork(voice: Voice, job: Job, marks: readonly KeptMark[]) {
  return [
    ...settingRows(voice, job),
    ...readingTable(voice, job),
    ...stepRows(voice, job),
    ...untakenRows(voice, job),
    ...cautionRows(voice, marks),
    ...partRows(voice, job),
    ...faultRows(voice, job),
    ...noteRows(voice, job),
  ];
}

function timeRows(voice: Voice, job: Job, events: readonly JobEvent[]): readonly Row[] {
  const texts = RECORD_TEXTS[voice.language];
  const spent = sayTimeOnSite(voice, events);
  const when = (label: string, at_ms: number | undefined): readonly Row[] =>
    at_ms === undefined ? [] : [{ label, value: sayDayAndTime(voice, at_ms) }];
  return [
    ...when(texts.opened, job.openedAt_ms),
    ...when(texts.started, job.startedAt_ms),
    ...when(texts.closed, job.closedAt_ms),
    ...(spent === undefined ? [] : [{ label: JOB_TEXTS[voice.language].record.time, value: spent }]),
  ];
}

export function settingRows(voice: Voice, { facts }: Job): readonly RowsBlock[] {
  const rows = SETTINGS.flatMap((id): Row[] => {
    const fact = facts[id];
    if (fact === undefined) return [];
    return [{ label: labelOfKept(voice, fact.topic, id), value: showKept(voice, fact.topic, id, fact.value) }];
  });
  return rowsUnder(JOB_TEXTS[voice.language].record.settings, rows);
}

/** Steps of the start-up that nobody took; those that may hurt are open items already. */
export function untakenRows(voice: Voice, job: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const open = job.items.filter(({ closed }) => closed === undefined).map(({ id }) => id);
  const steps = voice.books === undefined ? [] : untakenSteps(job, voice.books);
  const rows = steps.filter((id) => !open.includes(id)).map((id) => ({ label: labelOfStep(voice, id), value: "–" }));
  return rowsUnder(record.untaken, rows);
}

/** What was done about cautions of this job, in the words in which they were shown. */
export function cautionRows(voice: Voice, marks: readonly KeptMark[]): readonly RowsBlock[] {
  const rows = cautionsSeenTo(marks).map(
    (mark): Row => ({ label: sayMarked(voice, mark), value: sayMark(voice, mark) }),
  );
  return rowsUnder(JOB_TEXTS[voice.language].record.cautions, rows);
}

export function partRows(voice: Voice, { parts }: Job): readonly RowsBlock[] {
  const book = voice.books?.crew.parts ?? [];
  const rows = Object.entries(parts).map(([id, amount]): Row => {
    const part = book.find((one) => one.id === id);
    const value = part?.measure === "length" ? showQuantity(voice, q("length", amount)) : String(amount);
    return { label: part?.name[voice.language] ?? id, value };
  });
  return rowsUnder(JOB_TEXTS[voice.language].record.parts, rows);
}

export function closedItemRows(voice: Voice, { items }: Job): readonly RowsBlock[] {
  const texts = RECORD_TEXTS[voice.language];
  const rows = items.flatMap(({ what, closed }): Row[] =>
    closed === undefined
      ? []
      : [{ label: labelOfStep(voice, what), value: texts.closedItem(closed.by, sayMoment(voice, closed.at_ms)) }],
  );
  return rowsUnder(texts.closedItems, rows);
}

/** Photos and papers of a job, each with who sent it and when. */
export function fileBlocks(voice: Voice, { files }: Job): readonly FileBlock[] {
  return files.map((file): FileBlock => {
    const { by: _, at_ms: __, ...kept } = file;
    return { kind: "file", file: kept, text: captionOf(voice, file) };
  });
}

export function captionOf(voice: Voice, { name, by, at_ms }: JobFile): string {
  return RECORD_TEXTS[voice.language].fileBy(name, by, sayMoment(voice, at_ms));
}
