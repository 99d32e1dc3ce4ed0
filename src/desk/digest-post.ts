import type { Asker, Books } from "../books/books.ts";
import { dayAt } from "../crew/zone-time.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import { runTopic } from "../declaration/run-topic.ts";
import type { DigestSchedule, DueDigest } from "../jobs/digest/due.ts";
import type { Library } from "../library.ts";
import { buildAnswerCard } from "../messages/build-answer-card.ts";
import type { Block, Card } from "../messages/card.ts";
import { speakOf, voiceFor } from "../messages/voice.ts";
import type { Post } from "../ports/outbox.ts";
import type { WorkspaceStore } from "../ports/store.ts";

interface DigestParts {
  readonly library: Library;
  readonly books: Books;
  readonly workspace: Pick<WorkspaceStore, "workspace" | "listJobs" | "allHistory">;
}

/** Whose eyes a scheduled digest is made for: those of the channel that the company chose for its managers. */
const MANAGERS: Asker = { id: "managers", name: "managers", role: "manager" };

/** The post of a digest that is due: the same card that a manager gets who asks for this period, its buttons with it. */
export async function digestPost(
  { library, books, workspace }: DigestParts,
  { channel }: Pick<DigestSchedule, "channel">,
  { id, period }: DueDigest,
  now_ms: number,
): Promise<Post> {
  const { language, units, timeZone } = books.company;
  const lent: Books = {
    ...books,
    today: dayAt(timeZone, now_ms),
    asker: MANAGERS,
    jobs: await workspace.listJobs({}),
    jobEvents: await workspace.allHistory(),
  };
  const voice = speakOf({ ...voiceFor(library, { language, units }), books: lent }, "digest");
  const facts: KnownFacts =
    period.from === period.to
      ? { day: { value: period.from, from: "asked" } }
      : { from: { value: period.from, from: "asked" }, to: { value: period.to, from: "asked" } };
  const answered = runTopic(voice.topic, facts, lent, library.cautions, () => undefined);
  if (answered.result.kind !== "answer") throw new Error(`the digest ${id} came to ${answered.result.kind}`);
  const card = buildAnswerCard(voice, answered, answered.result, { walk: id, notes: [], offers: [] });
  return { id: `${workspace.workspace}-${id}`, channel, language, card: withoutWalk(card) };
}

/** Nobody asked, so that no button may lean on a conversation. */
function withoutWalk(card: Card): Card {
  const blocks = card.blocks.flatMap((block): Block[] => {
    if (block.kind !== "buttons") return [block];
    const buttons = block.buttons.filter(({ aim }) => aim === undefined);
    return buttons.length === 0 ? [] : [{ ...block, buttons }];
  });
  return { ...card, blocks };
}
