import { parseSeenAs } from "../../src/boundary/stored-caution.ts";
import type { CautionMark, Door, KeptMark } from "../../src/ports/store.ts";
import type { Scope } from "./scope.ts";
import { readBack, writeDown } from "./stored-rows.ts";

/** Who did something about cautions, where and when. */
interface MarkedBy {
  readonly person: string;
  readonly door: Door;
  readonly conversation: string;
  readonly at_ms: number;
}

/** Adds what was done about cautions; nothing of it is ever changed. */
export async function addMarks(scope: Scope, marks: readonly CautionMark[], by: MarkedBy): Promise<void> {
  for (const { caution, about, act, because = null, job = null, shown } of marks) {
    const written = shown === undefined ? null : writeDown(shown, parseSeenAs);
    await scope.addCautionMark({ ...by, caution, about, act, because, job, shown: written }).execute();
  }
}

/** The newest mark of each caution and its data in a conversation, newest first. */
export async function newestMarks(scope: Scope, conversation: string): Promise<readonly KeptMark[]> {
  return newestOf(await selectMarks(scope).where("conversation", "=", conversation).execute());
}

/** The newest mark of each caution and its data about a job, in whichever conversation, newest first. */
export async function marksOfJob(scope: Scope, job: string): Promise<readonly KeptMark[]> {
  return newestOf(await selectMarks(scope).where("job", "=", job).execute());
}

function selectMarks(scope: Scope) {
  return scope
    .cautionMarks()
    .select(["caution", "about", "act", "because", "at_ms", "door", "job", "shown", "person.name as by"])
    .orderBy("number", "desc");
}

type MarkRow = Awaited<ReturnType<ReturnType<typeof selectMarks>["execute"]>>[number];

function newestOf(rows: readonly MarkRow[]): readonly KeptMark[] {
  const newest = new Map<string, MarkRow>();
  for (const row of rows) {
    const key = JSON.stringify([row.caution, row.about]);
    if (!newest.has(key)) newest.set(key, row);
  }
  return [...newest.values()].map(({ because, job, shown, ...row }) => ({
    ...row,
    ...(because !== null && { because }),
    ...(job !== null && { job }),
    ...(shown !== null && { shown: readBack(parseSeenAs(shown), `how the caution ${row.caution} was shown`) }),
  }));
}
