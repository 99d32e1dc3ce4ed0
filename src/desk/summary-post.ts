import type { Turn } from "../conversation/turn.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import { aboutOf } from "../messages/build-caution-blocks.ts";
import { buildSummaryCard, type SeenCaution } from "../messages/build-summary-card.ts";
import { voiceFor } from "../messages/voice.ts";
import type { Post } from "../ports/outbox.ts";
import type { JobWriting } from "./write-job.ts";

/** Changes that a summary shows. */
const SHOWN: readonly JobChange["kind"][] = [
  "reading",
  "item_opened",
  "item_closed",
  "parts",
  "file",
  "status",
  "facts",
];

interface Drafted {
  readonly job: Job | undefined;
  readonly entries: readonly JobEntry[];
  readonly wantsSummary?: true;
}

/**
 * The summary for the team's channel: once when the job is closed, and in its place again whenever something of it changes.
 * @returns nothing where the company named no channel
 */
export function summaryPosts({ turn, events, workspace }: JobWriting, drafted: Drafted): readonly Post[] {
  const { job, entries, wantsSummary } = drafted;
  const channel = turn.company.teamChannel;
  const { language = "en", units = "us" } = turn.company;
  if (job === undefined || channel === undefined) return [];
  const wasPosted = events.some(isClosing);
  const isChanged = wasPosted && entries.some(({ change }) => SHOWN.includes(change.kind));
  if (wantsSummary !== true && !isChanged) return [];
  const voice = voiceFor(turn.library, { language, units });
  const first = `${workspace}-job-${job.number}-summary`;
  return [
    {
      id: wasPosted ? `${first}-${job.version}` : first,
      channel,
      language,
      card: buildSummaryCard({ ...voice, ...(turn.books && { books: turn.books }) }, job, seenCautions(turn)),
      ...(wasPosted && { updates: first }),
    },
  ];
}

function isClosing({ change }: JobEvent): boolean {
  return change.kind === "status" && (change.status === "complete" || change.status === "open_items");
}

/** What was done about cautions in this conversation, each as it was last shown here. */
function seenCautions({ cautions, state }: Turn): readonly SeenCaution[] {
  return (cautions?.marks ?? []).map((mark): SeenCaution => {
    const caution = state.shown?.findLast((one) => one.id === mark.caution && aboutOf(one) === mark.about);
    return { mark, ...(caution && { caution }) };
  });
}
