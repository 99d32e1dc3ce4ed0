import type { Turn } from "../conversation/turn.ts";
import type { Job, JobChange, JobEntry, JobEvent } from "../jobs/job.ts";
import { aboutOf } from "../messages/build-caution-blocks.ts";
import { buildSummaryCard, type SeenCaution } from "../messages/build-summary-card.ts";
import { type Voice, voiceFor } from "../messages/voice.ts";
import type { Post } from "../ports/outbox.ts";
import type { JobWriting } from "./write-job.ts";

/** Changes that a summary shows. */
const SHOWN: readonly JobChange["kind"][] = [
  "reading",
  "item_opened",
  "item_closed",
  "parts",
  "file",
  "facts",
  "planned",
  "unit",
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
  const { language = "en" } = turn.company;
  if (job === undefined || channel === undefined) return [];
  const wasPosted = events.some(isClosing);
  const isChanged =
    wasPosted &&
    entries.some(({ change, amends }) => change.kind === "status" || tellsOf(job, change, amends !== undefined));
  if (wantsSummary !== true && !isChanged) return [];
  const first = `${workspace}-job-${job.number}-summary`;
  return [
    {
      id: wasPosted ? `${first}-${job.version}` : first,
      channel,
      language,
      card: buildSummaryCard(companyVoice(turn), job, seenCautions(turn)),
      ...(wasPosted && { updates: first }),
    },
  ];
}

/** What the company writes for everybody of it is in its own language and units. */
export function companyVoice({ library, company, books }: Turn): Voice {
  const { language = "en", units = "us" } = company;
  return { ...voiceFor(library, { language, units }), ...(books && { books }) };
}

/** While a job is worked on anew, the team reads what came of it when it is closed again. */
function tellsOf({ status }: Job, { kind }: JobChange, isAmendment: boolean): boolean {
  return (status === "complete" || status === "open_items") && (isAmendment || SHOWN.includes(kind));
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
