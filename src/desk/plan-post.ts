import type { JobEntry } from "../jobs/job.ts";
import { CREW_TEXTS } from "../messages/crew-texts.ts";
import { sayWritten } from "../messages/say-job.ts";
import { voiceFor } from "../messages/voice.ts";
import type { Post } from "../ports/outbox.ts";
import type { JobWriting } from "./write-job.ts";

interface Drafted {
  readonly entries: readonly JobEntry[];
  readonly announces?: true;
}

/** What the team reads of a plan that was confirmed or taken back; nothing where the company named no channel. */
export function planPosts(
  { turn, own, workspace, now_ms }: JobWriting,
  { entries, announces }: Drafted,
): readonly Post[] {
  const { teamChannel: channel, language, units } = own.books.company;
  const [first] = entries;
  if (announces !== true || channel === undefined || first === undefined) return [];
  const title = CREW_TEXTS[language].planTitle;
  const lines = sayWritten({ ...voiceFor(turn.library, { language, units }), books: own.books }, entries, []);
  const id = `${workspace}-plan-${first.job}-${first.version ?? 0}-${now_ms}`;
  const blocks = lines.map((text) => ({ kind: "text", tone: "plain", text }) as const);
  return [{ id, channel, language, card: { title, blocks, summary: lines.join(" ") } }];
}
