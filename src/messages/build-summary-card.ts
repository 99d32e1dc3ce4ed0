import type { Job, JobEvent } from "../jobs/job.ts";
import { isClosed, type JobRecord } from "../jobs/job-record.ts";
import { NOT_JUDGED } from "../jobs/startup-state.ts";
import type { KeptMark } from "../ports/store.ts";
import { itemRows, peopleOf, unitOf } from "./build-job-blocks.ts";
import { buildWork, closedItemRows, fileBlocks } from "./build-record-blocks.ts";
import type { Block, Card, Row, TextBlock } from "./card.ts";
import { JOB_TEXTS } from "./job-labels.ts";
import { quiet } from "./notes.ts";
import { RECORD_TEXTS, sayTimeOnSite } from "./record-words.ts";
import type { Voice } from "./voice.ts";

/** What the team reads at a glance when a job is closed: what went in and where, what is open, who was there for how long. */
export function buildSummaryCard(voice: Voice, { job, events }: JobRecord): Card {
  const { record, statuses } = JOB_TEXTS[voice.language];
  const headline = headlineOf(voice, job);
  const title = record.title(job.number, statuses[job.status]);
  const verdict = job.status === "complete" ? "good" : "caution";
  const items = itemRows(voice, job);
  const nothingOpen: TextBlock = { kind: "text", tone: "plain", text: record.nothingOpen };
  const blocks: readonly Block[] = [
    { kind: "headline", text: headline },
    ...(items.length > 0 ? items : [nothingOpen]),
    { kind: "rows", rows: firstRows(voice, job, events) },
    quiet(RECORD_TEXTS[voice.language].inThread),
  ];
  return {
    verdict: { kind: verdict, word: voice.common.verdicts[verdict] },
    title,
    blocks,
    summary: `${title}. ${headline}.`,
  };
}

/** The rest of the summary, which stands in its thread: settings, readings, cautions, parts, the fault walk, photos. */
export function buildSummaryThreadCard(voice: Voice, job: Job, marks: readonly KeptMark[]): Card {
  const texts = RECORD_TEXTS[voice.language];
  const title = texts.threadTitle(job.number);
  return {
    title,
    blocks: [
      { kind: "headline", text: headlineOf(voice, job) },
      ...buildWork(voice, job, marks),
      ...closedItemRows(voice, job),
      ...(isClosed(job) ? [] : [quiet(texts.noPaperYet(job.number))]),
      ...fileBlocks(voice, job),
    ],
    summary: title,
  };
}

function headlineOf(voice: Voice, job: Job): string {
  const { record } = JOB_TEXTS[voice.language];
  return record.headline(unitOf(voice, job) ?? record.noUnit, job.place);
}

function firstRows(voice: Voice, job: Job, events: readonly JobEvent[]): readonly Row[] {
  const { record } = JOB_TEXTS[voice.language];
  const texts = RECORD_TEXTS[voice.language];
  const readings = Object.values(job.readings);
  const accepted = readings.filter(({ isAccepted, because }) => isAccepted && because !== NOT_JUDGED).length;
  const people = peopleOf(voice, job);
  const spent = sayTimeOnSite(voice, events);
  return [
    { label: record.customer, value: job.customer },
    ...(people === undefined ? [] : [{ label: record.people, value: people }]),
    ...(spent === undefined ? [] : [{ label: record.time, value: spent }]),
    ...(readings.length === 0
      ? []
      : [{ label: texts.measuredRow, value: texts.measuredCount(String(accepted), String(readings.length)) }]),
    { label: record.files, value: String(job.files.length) },
  ];
}
