import type { Job, JobEvent } from "../jobs/job.ts";
import { cautionsSeenTo, factsOfHouse, type JobRecord } from "../jobs/job-record.ts";
import type { PaperBlock, RecordPaper } from "../ports/papers.ts";
import { itemRows, peopleOf, stepRows, unitOf } from "./build-job-blocks.ts";
import { captionOf, closedItemRows, partRows, settingRows, untakenRows } from "./build-record-blocks.ts";
import { buildGauges } from "./build-record-gauges.ts";
import { faultRows, noteRows } from "./build-seen-blocks.ts";
import type { RowsBlock } from "./card.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, nameOf, showKept } from "./job-labels.ts";
import { RECORD_TEXTS, sayByWhen, sayDayAndTime, sayMark, sayMarked, sayTimeOnSite } from "./record-words.ts";
import { sayStands } from "./say-change.ts";
import { showDay, showQuantity, type Voice } from "./voice.ts";

const NAMES = { name: "", isInvented: false } as const;

/** The record of a job as a page to print, in the voice's language and units: Letter for US units, A4 for SI. */
export function buildRecordPaper(voice: Voice, { job, events, marks }: JobRecord): RecordPaper {
  const { paper } = RECORD_TEXTS[voice.language];
  const { record } = JOB_TEXTS[voice.language];
  const { name, isInvented } = voice.books?.company ?? NAMES;
  const at_ms = [...events, ...marks].reduce((last, one) => Math.max(last, one.at_ms), job.openedAt_ms);
  const title = paper.title(job.number);
  return {
    language: voice.language,
    sheet: voice.units === "us" ? "letter" : "a4",
    title,
    subject: paper.subject(unitOf(voice, job) ?? record.noUnit, job.place),
    company: name,
    ...(isInvented && { warning: paper.invented }),
    mark: title,
    foot: paper.decides,
    leftOut: paper.leftOut,
    page: paper.page,
    of: paper.of,
    at_ms,
    blocks: [
      { kind: "pairs", pairs: headOf(voice, job, events, at_ms) },
      ...itemTable(voice, job),
      ...readingTable(voice, job),
      ...buildGauges(voice, job),
      ...inTable(voice, settingRows(voice, job), "value"),
      ...inTable(voice, stepRows(voice, job)),
      ...untaken(voice, job),
      ...cautionTable(voice, marks),
      ...inTable(voice, partRows(voice, job), "amount"),
      ...faultTable(voice, job),
      ...notes(voice, job),
      ...inTable(voice, closedItemRows(voice, job)),
      ...houseTable(voice, job),
      ...photos(voice, job),
      ...signatures(voice),
    ],
  };
}

function headOf(
  voice: Voice,
  job: Job,
  events: readonly JobEvent[],
  at_ms: number,
): readonly (readonly [string, string])[] {
  const { record, statuses } = JOB_TEXTS[voice.language];
  const texts = RECORD_TEXTS[voice.language];
  const pairs: readonly (readonly [string, string | undefined])[] = [
    [record.status, statuses[job.status]],
    [record.customer, job.customer],
    [record.unit, unitOf(voice, job) ?? record.noUnit],
    [record.place, job.place],
    [record.people, peopleOf(voice, job)],
    [record.permit, job.permit],
    [record.day, job.day && showDay(voice, job.day)],
    [record.time, sayTimeOnSite(voice, events)],
    [texts.started, job.startedAt_ms === undefined ? undefined : sayDayAndTime(voice, job.startedAt_ms)],
    [texts.closed, job.closedAt_ms === undefined ? undefined : sayDayAndTime(voice, job.closedAt_ms)],
    [texts.asOfLabel, sayDayAndTime(voice, at_ms)],
  ];
  return pairs.flatMap(([label, value]) => (value === undefined ? [] : [[label, value] as const]));
}

function heading(text: string): PaperBlock {
  return { kind: "heading", text };
}

function itemTable(voice: Voice, job: Job): readonly PaperBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  if (itemRows(voice, job).length === 0) return [{ kind: "text", tone: "strong", text: record.nothingOpen }];
  const rows = job.items
    .filter(({ closed }) => closed === undefined)
    .map(({ what, owner, due }) => [labelOfStep(voice, what), nameOf(voice, owner), showDay(voice, due)]);
  const columns = RECORD_TEXTS[voice.language].itemColumns;
  return [heading(record.items), { kind: "table", widths: [0.5, 0.25, 0.25], columns, rows }];
}

function readingTable(voice: Voice, { readings }: Job): readonly PaperBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = Object.values(readings).map((reading) => [
    labelOfStep(voice, reading.id),
    showQuantity(voice, reading.quantity),
    reading.expected === undefined ? "–" : showQuantity(voice, reading.expected),
    sayStands(voice, reading),
    sayByWhen(voice, reading),
  ]);
  if (rows.length === 0) return [];
  const columns = [...record.readingColumns, RECORD_TEXTS[voice.language].readingBy];
  return [heading(record.readings), { kind: "table", widths: [0.26, 0.13, 0.16, 0.22, 0.23], columns, rows }];
}

function cautionTable(voice: Voice, marks: JobRecord["marks"]): readonly PaperBlock[] {
  const rows = cautionsSeenTo(marks).map((mark) => [sayMarked(voice, mark), sayMark(voice, mark)]);
  if (rows.length === 0) return [];
  const columns = RECORD_TEXTS[voice.language].cautionColumns;
  return [heading(JOB_TEXTS[voice.language].record.cautions), { kind: "table", widths: [0.6, 0.4], columns, rows }];
}

function faultTable(voice: Voice, job: Job): readonly PaperBlock[] {
  const texts = RECORD_TEXTS[voice.language];
  const rows = faultRows(voice, job).flatMap((block) =>
    block.rows.map(({ label, value, note = "" }) => [label, value, note]),
  );
  if (rows.length === 0) return [];
  return [heading(texts.faultWalk), { kind: "table", widths: [0.34, 0.41, 0.25], columns: texts.faultColumns, rows }];
}

/** Notes may be long, so each runs over the whole width. */
function notes(voice: Voice, job: Job): readonly PaperBlock[] {
  return noteRows(voice, job).flatMap(({ heading: title = "", rows }): PaperBlock[] => [
    heading(title),
    ...rows.flatMap(({ label, value }): PaperBlock[] => [
      { kind: "text", tone: "quiet", text: label },
      { kind: "text", tone: "plain", text: value },
    ]),
  ]);
}

function houseTable(voice: Voice, job: Job): readonly PaperBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = factsOfHouse(job).map((fact) => [
    labelOfKept(voice, fact.topic, fact.id),
    showKept(voice, fact.topic, fact.id, fact.value),
    sayByWhen(voice, fact),
  ]);
  if (rows.length === 0) return [];
  const { rowColumns, readingBy } = RECORD_TEXTS[voice.language];
  const columns = [rowColumns.what, rowColumns.value, readingBy];
  return [heading(record.facts), { kind: "table", widths: [0.4, 0.35, 0.25], columns, rows }];
}

/** Steps that nobody took, one after the other: there is nothing more to say of them. */
function untaken(voice: Voice, job: Job): readonly PaperBlock[] {
  return untakenRows(voice, job).flatMap(({ heading: title = "", rows }): PaperBlock[] => [
    heading(title),
    { kind: "text", tone: "plain", text: rows.map(({ label }) => label).join(" · ") },
  ]);
}

/** Rows of a card as a table of two columns. */
function inTable(
  voice: Voice,
  blocks: readonly RowsBlock[],
  second: "stands" | "value" | "amount" = "stands",
): readonly PaperBlock[] {
  const { rowColumns } = RECORD_TEXTS[voice.language];
  return blocks.flatMap((block): PaperBlock[] => [
    heading(block.heading ?? ""),
    {
      kind: "table",
      widths: [0.5, 0.5],
      columns: [rowColumns.what, rowColumns[second]],
      rows: block.rows.map(({ label, value }) => [label, value]),
    },
  ]);
}

/** Pictures are printed; papers that came with the job are named. */
function photos(voice: Voice, job: Job): readonly PaperBlock[] {
  const texts = RECORD_TEXTS[voice.language];
  const isPicture = ({ type }: { readonly type: string }) => type.startsWith("image/");
  const pictures = job.files.filter(isPicture).map((file) => {
    const { by: _, at_ms: __, ...kept } = file;
    const { photoMissing, photoElsewhere } = texts.paper;
    const caption = captionOf(voice, file);
    return { file: kept, caption, missing: photoMissing(caption), elsewhere: photoElsewhere(caption) };
  });
  const papers = job.files.filter((file) => !isPicture(file));
  return [
    ...(pictures.length === 0 ? [] : [heading(texts.photos), { kind: "photos" as const, photos: pictures }]),
    ...(papers.length === 0 ? [] : [heading(texts.papers)]),
    ...papers.map((file): PaperBlock => ({ kind: "text", tone: "plain", text: captionOf(voice, file) })),
  ];
}

function signatures(voice: Voice): readonly PaperBlock[] {
  const { paper } = RECORD_TEXTS[voice.language];
  const date = paper.dateSigned;
  return [
    heading(paper.signatures),
    { kind: "text", tone: "quiet", text: paper.signatureNote },
    {
      kind: "signatures",
      lines: [
        { who: paper.crewSigns, date },
        { who: paper.customerSigns, date },
      ],
    },
  ];
}
