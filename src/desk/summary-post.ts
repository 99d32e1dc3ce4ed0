import type { JobEntry } from "../jobs/job.ts";
import { isClosed, type JobRecord } from "../jobs/job-record.ts";
import { buildRecordPaper } from "../messages/build-record-paper.ts";
import { buildSummaryCard, buildSummaryThreadCard } from "../messages/build-summary-card.ts";
import { RECORD_TEXTS } from "../messages/record-words.ts";
import { type Voice, voiceFor } from "../messages/voice.ts";
import type { Post, PostPaper } from "../ports/outbox.ts";
import type { JobWriting } from "./write-job.ts";

/** A job as a message leaves it. */
interface Changed {
  readonly record: JobRecord;
  /** What the message wrote into it. */
  readonly entries: readonly JobEntry[];
  /** Something was done about its cautions. */
  readonly isSeenTo: boolean;
  readonly wantsSummary: boolean;
  readonly isSummaryPosted: boolean;
}
/** Id of the post that begins the summary of a job; there is one a job. */
export function summaryId(workspace: string, job: string): string {
  return `${workspace}-job-${job}-summary`;
}

/**
 * The summary for the team's channel: a short post and the rest in its thread, once when the job is closed, and in their
 * places again whenever something of them changes.
 * @returns nothing where the company named no channel
 */
export function summaryPosts(writing: JobWriting, changed: Changed): readonly Post[] {
  const { turn, workspace } = writing;
  const { record, entries, isSeenTo, wantsSummary, isSummaryPosted } = changed;
  const { job, marks } = record;
  const channel = turn.company.teamChannel;
  const { language = "en" } = turn.company;
  if (channel === undefined) return [];
  // While a job is worked on anew, the team reads what came of it when it is closed again.
  const isChanged =
    isSummaryPosted &&
    (entries.some(({ change }) => change.kind === "status") || (isClosed(job) && (entries.length > 0 || isSeenTo)));
  if (!wantsSummary && !isChanged) return [];
  const voice = companyVoice(writing);
  const first = summaryId(workspace, job.number);
  const rest = `${first}-rest`;
  // What is seen to changes no version of the job.
  const again = entries.length > 0 ? String(job.version) : `${job.version}-${turn.newId}`;
  const idOf = (post: string) => (isSummaryPosted ? `${post}-${again}` : post);
  const takesPlaceOf = (post: string) => (isSummaryPosted ? { updates: post } : {});
  return [
    { id: idOf(first), channel, language, card: buildSummaryCard(voice, record), ...takesPlaceOf(first) },
    {
      id: idOf(rest),
      channel,
      language,
      card: buildSummaryThreadCard(voice, job, marks),
      follows: first,
      ...takesPlaceOf(rest),
      ...(isClosed(job) && { paper: paperOf(voice, record) }),
    },
  ];
}

function paperOf(voice: Voice, record: JobRecord): PostPaper {
  const { fileName, fileText } = RECORD_TEXTS[voice.language].paper;
  const { number } = record.job;
  return { name: `${fileName(number)}.pdf`, text: fileText(number), record: buildRecordPaper(voice, record) };
}

/** What the company's own papers and posts are written in. */
export function companyVoice({ turn }: Pick<JobWriting, "turn">): Voice {
  const { language = "en", units = "us" } = turn.company;
  return { ...voiceFor(turn.library, { language, units }), ...(turn.books && { books: turn.books }) };
}
