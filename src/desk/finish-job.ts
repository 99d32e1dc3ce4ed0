import type { Show } from "../conversation/turn.ts";
import type { Job, JobEntry, JobEvent } from "../jobs/job.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import { projectJob } from "../jobs/project-job.ts";
import type { KeptMark } from "../ports/store.ts";
import { withMarks } from "./job-background.ts";
import { summaryPosts } from "./summary-post.ts";
import type { JobWriting, Written } from "./write-job.ts";

/** A job with its record as the message leaves it, and what the team is told of that. */
export function finishJob(
  writing: JobWriting,
  { marks = [] }: Show,
  left: Job,
  written: readonly JobEntry[],
  wantsSummary: boolean,
): Pick<Written, "record" | "posts"> {
  const { person, now_ms, door, turn, otherEvents } = writing;
  const { number } = left;
  const entries = written.filter(({ job }) => job === number);
  const before = number === turn.job?.number ? writing.events : otherEvents.filter(({ job }) => job === number);
  const events = [...before, ...eventsOf(writing, entries, before.length)];
  // What is put right or taken back is only told by all events.
  const job = (entries.some(({ amends }) => amends !== undefined) ? projectJob(events) : undefined) ?? left;
  const seen = marks
    .filter((mark) => mark.job === number)
    .map((mark): KeptMark => ({ ...mark, by: person.name, at_ms: now_ms, door }));
  const { marks: kept = [], isSummaryPosted = false } = writing.background.get(number) ?? {};
  const record: JobRecord = { job, events, marks: withMarks(kept, seen) };
  const isSeenTo = seen.length > 0;
  return { record, posts: summaryPosts(writing, { record, entries, isSeenTo, wantsSummary, isSummaryPosted }) };
}

/** What the entries come to in the history once they are saved. */
function eventsOf(
  { person, now_ms, door }: JobWriting,
  entries: readonly JobEntry[],
  before: number,
): readonly JobEvent[] {
  const who = { by: person.name, person: person.id, at_ms: now_ms, door };
  return entries.map(({ job, change, amends }, index) => {
    const number = before + index + 1;
    return { number, job, change, ...(amends !== undefined && { amends }), ...who };
  });
}
