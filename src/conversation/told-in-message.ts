import type { KnownFacts } from "../declaration/facts.ts";
import type { Job, JobChange } from "../jobs/job.ts";
import { isSame, toldToJob } from "../jobs/shared-facts.ts";
import type { ConversationState, LastAnswer, Walk } from "./state.ts";
import type { Show, Turn } from "./turn.ts";

type About = Pick<Walk, "topic" | "facts"> & { readonly open: readonly string[] };

/**
 * What this message told about the open job that the job does not hold yet. Only what the message itself changed counts, so
 * that a colleague's newer word is not written over by an older walk.
 */
export function toldInMessage(turn: Turn, { state }: Pick<Show, "state">, job: Job): readonly JobChange[] {
  const about = talkedAbout(turn.state, state, job.number);
  const topic = about && turn.library.topics.get(about.topic);
  if (about === undefined || topic === undefined || turn.books === undefined) return [];
  const before = toldBefore(turn.state, about.topic, job.number);
  if (topic.enters !== undefined) {
    const [was, is] = [topic.enters(before, turn.books), topic.enters(about.facts, turn.books)];
    const said = was.map((change) => JSON.stringify(change));
    return is.filter((change) => !said.includes(JSON.stringify(change)));
  }
  const fresh = Object.entries(about.facts).filter(
    ([fact, { value }]) => !about.open.includes(fact) && !isSame(before[fact]?.value, value),
  );
  const change = toldToJob(topic, Object.fromEntries(fresh), job, turn.books);
  return change === undefined ? [] : [change];
}

/** The walk on the table, else the answer that has just been given, where it is about this job. */
function talkedAbout(before: ConversationState, after: ConversationState, job: string): About | undefined {
  const { walk, last } = after;
  // What is asked again was refused.
  if (walk !== undefined) return walk.job === job ? { ...walk, open: walk.toAsk } : undefined;
  return last === undefined || last === before.last || last.job !== job ? undefined : { ...last, open: [] };
}

/** What was known of this topic and job before the message, in whichever walk or answer. */
function toldBefore({ walk, parked = [], last }: ConversationState, topic: string, job: string): KnownFacts {
  const known: readonly (Walk | LastAnswer | undefined)[] = [last, ...parked, walk];
  const theirs = known.filter((one) => one !== undefined && one.topic === topic && one.job === job);
  return Object.assign({}, ...theirs.map((one) => one?.facts ?? {}));
}
