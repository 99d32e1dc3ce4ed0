import { q, type RaisedCaution } from "../declaration/answer.ts";
import type { Job } from "../jobs/job.ts";
import { untakenSteps } from "../jobs/startup-state.ts";
import type { KeptMark } from "../ports/store.ts";
import { sayBriefly } from "./build-caution-blocks.ts";
import { itemRows, namesOf, readingTable, rowsUnder, stepRows, unitOf } from "./build-job-blocks.ts";
import type { Block, Card, Row, RowsBlock } from "./card.ts";
import { formatDuration } from "./format-duration.ts";
import { JOB_TEXTS, labelOfKept, labelOfStep, showKept } from "./job-labels.ts";
import { showQuantity, type Voice } from "./voice.ts";

/** Facts of a house that say how the heater was left. */
const SETTINGS = ["setpoint", "mode", "supply", "precharge", "mixing_valve"];

/** What somebody did about a caution, with the caution as it was shown where that is still known. */
export interface SeenCaution {
  readonly mark: KeptMark;
  readonly caution?: Pick<RaisedCaution, "id" | "severity" | "data" | "local">;
}

/**
 * What the team reads when a job is closed: what went in and where, and what is open, on the first screen; then settings,
 * readings beside what was expected, cautions, parts, photos and time.
 */
export function buildSummaryCard(voice: Voice, job: Job, seen: readonly SeenCaution[]): Card {
  const { record, statuses } = JOB_TEXTS[voice.language];
  const headline = record.headline(unitOf(voice, job) ?? record.noUnit, job.place);
  const items = itemRows(voice, job);
  const title = record.title(job.number, statuses[job.status]);
  const isComplete = job.status === "complete";
  const blocks: Block[] = [
    { kind: "headline", text: headline },
    ...(items.length > 0 ? items : [{ kind: "text" as const, tone: "plain" as const, text: record.nothingOpen }]),
    { kind: "rows", rows: firstRows(voice, job) },
    ...[
      ...settingRows(voice, job),
      ...readingTable(voice, job),
      ...stepRows(voice, job),
      ...untakenRows(voice, job),
      ...cautionRows(voice, job, seen),
      ...partRows(voice, job),
    ].map((block) => ({ ...block, isDetail: true as const })),
  ];
  return {
    verdict: { kind: isComplete ? "good" : "caution", word: voice.common.verdicts[isComplete ? "good" : "caution"] },
    title,
    blocks,
    summary: `${title}. ${headline}.`,
  };
}

function firstRows(voice: Voice, job: Job): readonly Row[] {
  const { record } = JOB_TEXTS[voice.language];
  const { startedAt_ms, closedAt_ms } = job;
  const hasTimes = startedAt_ms !== undefined && closedAt_ms !== undefined;
  return [
    { label: record.customer, value: job.customer },
    ...(job.people.length === 0 ? [] : [{ label: record.people, value: namesOf(voice, job) }]),
    ...(hasTimes
      ? [{ label: record.time, value: formatDuration(Math.round((closedAt_ms - startedAt_ms) / 1000), voice.language) }]
      : []),
    { label: record.files, value: String(job.files.length) },
  ];
}

function settingRows(voice: Voice, { facts }: Job): readonly RowsBlock[] {
  const rows = SETTINGS.flatMap((id): Row[] => {
    const fact = facts[id];
    if (fact === undefined) return [];
    return [{ label: labelOfKept(voice, fact.topic, id), value: showKept(voice, fact.topic, id, fact.value) }];
  });
  return rowsUnder(JOB_TEXTS[voice.language].record.settings, rows);
}

/** Steps of the start-up that nobody took; those that may hurt are open items already. */
function untakenRows(voice: Voice, job: Job): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const open = job.items.filter(({ closed }) => closed === undefined).map(({ id }) => id);
  const steps = voice.books === undefined ? [] : untakenSteps(job, voice.books);
  const rows = steps.filter((id) => !open.includes(id)).map((id) => ({ label: labelOfStep(voice, id), value: "–" }));
  return rowsUnder(record.untaken, rows);
}

/** What was done about cautions since the job was begun, in the words in which they were shown. */
function cautionRows(voice: Voice, job: Job, seen: readonly SeenCaution[]): readonly RowsBlock[] {
  const { record } = JOB_TEXTS[voice.language];
  const rows = seen.flatMap(({ mark, caution }): Row[] => {
    const { act, by, because = "", at_ms } = mark;
    if (act === "unseen" || at_ms < job.openedAt_ms) return [];
    const label = caution === undefined ? mark.caution.replaceAll("_", " ") : sayBriefly(voice, caution);
    return [{ label, value: act === "seen" ? by : `${by}: ${because}` }];
  });
  return rowsUnder(record.cautions, rows);
}

function partRows(voice: Voice, { parts }: Job): readonly RowsBlock[] {
  const book = voice.books?.crew.parts ?? [];
  const rows = Object.entries(parts).map(([id, amount]): Row => {
    const part = book.find((one) => one.id === id);
    const value = part?.measure === "length" ? showQuantity(voice, q("length", amount)) : String(amount);
    return { label: part?.name[voice.language] ?? id, value };
  });
  return rowsUnder(JOB_TEXTS[voice.language].record.parts, rows);
}
