import type { CautionMark, Door, KeptMark } from "../../src/ports/store.ts";
import type { Scope } from "./scope.ts";

/** Who did something about cautions, where and when. */
interface MarkedBy {
  readonly person: string;
  readonly door: Door;
  readonly conversation: string;
  readonly at_ms: number;
}

/** Adds what was done about cautions; nothing of it is ever changed. */
export async function addMarks(scope: Scope, marks: readonly CautionMark[], by: MarkedBy): Promise<void> {
  for (const { caution, about, act, because = null } of marks)
    await scope.addCautionMark({ ...by, caution, about, act, because }).execute();
}

/** The newest mark of each caution and its data in a conversation, newest first. */
export async function newestMarks(scope: Scope, conversation: string): Promise<readonly KeptMark[]> {
  const rows = await scope
    .cautionMarks()
    .select(["caution", "about", "act", "because", "at_ms", "door", "person.name as by"])
    .where("conversation", "=", conversation)
    .orderBy("number", "desc")
    .execute();
  const newest = new Map<string, (typeof rows)[number]>();
  for (const row of rows) {
    const key = JSON.stringify([row.caution, row.about]);
    if (!newest.has(key)) newest.set(key, row);
  }
  return [...newest.values()].map(({ because, ...row }) => ({ ...row, ...(because !== null && { because }) }));
}
