import type { Company } from "../books/books.ts";
import type { Show, Turn } from "../conversation/turn.ts";
import type { Job } from "../jobs/job.ts";
import type { CautionMark, KeptMark, WorkspaceStore } from "../ports/store.ts";
import { summaryId } from "./summary-post.ts";

/** What is kept about a job besides its events. */
export interface JobBackground {
  /** What was last done about each caution, newest first. */
  readonly marks: readonly KeptMark[];
  /** The team reads its summary already. */
  readonly isSummaryPosted: boolean;
}

/** What is kept about the jobs that a message writes into. Without a channel of the team nothing was posted. */
export async function readBackground(
  workspace: WorkspaceStore,
  { teamChannel }: Pick<Company, "teamChannel">,
  jobs: readonly Job[],
): Promise<ReadonlyMap<string, JobBackground>> {
  const read = async ({ number }: Job): Promise<readonly [string, JobBackground]> => {
    const [isSummaryPosted, marks] = await Promise.all([
      teamChannel !== undefined && workspace.hasPost(summaryId(workspace.workspace, number)),
      workspace.jobMarks(number),
    ]);
    return [number, { marks, isSummaryPosted }];
  };
  return new Map(await Promise.all(jobs.map(read)));
}

/**
 * What a message does about cautions, each for the job that is talked about. What counts as not seen again does so where it
 * was seen, whichever job is open by now.
 */
export function markForJob(shown: Show, { job, cautions }: Turn): Show {
  if (shown.marks === undefined) return shown;
  const marks = shown.marks.map((mark): CautionMark => {
    const before = cautions?.marks.find((one) => one.caution === mark.caution && one.about === mark.about);
    const number = mark.act === "unseen" ? before?.job : job?.number;
    return { ...mark, ...(number !== undefined && { job: number }) };
  });
  return { ...shown, marks };
}

/** The marks of a job with those that a message adds, newest first. */
export function withMarks(kept: readonly KeptMark[], added: readonly KeptMark[]): readonly KeptMark[] {
  const isOld = ({ caution, about }: KeptMark) => !added.some((one) => one.caution === caution && one.about === about);
  return [...added.toReversed(), ...kept.filter(isOld)];
}
