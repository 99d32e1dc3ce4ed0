import type { Language } from "../../src/messages/language.ts";
import { buildLostPostsCard, noteRepeat } from "../../src/messages/say-job.ts";
import type { ChatPort, FindOutcome, Outgoing, PostedParts } from "../../src/ports/chat.ts";
import type { Clock } from "../../src/ports/clock.ts";
import { type KeptPost, type Outbox, OWNER_CHANNEL, type PostResult } from "../../src/ports/outbox.ts";
import type { Door } from "../../src/ports/store.ts";
import { type CompletePost, withoutPaper } from "./post-papers.ts";

export interface RelayParts {
  readonly outbox: Outbox;
  readonly ports: Readonly<Record<Door, ChatPort>>;
  readonly clock: Clock;
  /** Makes the papers that go with posts; where it is left out they go without. */
  readonly complete?: CompletePost;
  /** What the owner reads. */
  readonly language: Language;
  /** A share of the wait that is added to it, so that many waiting posts do not return at once [0..1]. */
  readonly jitter: () => number;
  /** Something failed that is not told to the person, because nobody waits for it. */
  readonly report: (error: unknown, kept: KeptPost) => void;
}

export interface OutboxRelay {
  /** Takes one post of each channel that is due. @returns how many were taken */
  runOnce(): Promise<number>;
  /** Goes on until it is stopped. */
  start(every_ms: number): void;
  /** Ends after the posts that are under way. */
  stop(): Promise<void>;
}

/** Own limits: a channel takes a message a second (so does Slack); a post is given up after about seven hours. */
const PACE_ms = 1_000;
const MOST_TRIES = 30;
const FIRST_WAIT_ms = 2_000;
const LONGEST_WAIT_ms = 20 * 60_000;
/** Longer than any call takes: who claims a post and says nothing for so long has died. */
const CLAIM_ms = 60_000;
/** A message that is still on its way must have arrived before it is looked for. */
const SETTLE_ms = 10_000;
const JITTER_SHARE = 0.25;

/**
 * Sends what stands in the outbox. Before anything is sent, that it is being sent is written down; when nobody can say
 * how it ended, the post is looked for where the platform lets us, and is otherwise sent again with a note that says
 * so. Channels do not wait for each other.
 */
export function createOutboxRelay(parts: RelayParts): OutboxRelay {
  const { outbox, clock } = parts;
  const lastSent_ms = new Map<string, number>();
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<unknown> = Promise.resolve();
  let isStopped = false;

  const isPaced = (kept: KeptPost): boolean =>
    clock.now_ms() - (lastSent_ms.get(channelOf(kept)) ?? Number.NEGATIVE_INFINITY) >= PACE_ms;
  const deliver = async (kept: KeptPost): Promise<number> => {
    try {
      if (!(await outbox.claim(kept, clock.now_ms() + CLAIM_ms))) return 0;
      lastSent_ms.set(channelOf(kept), clock.now_ms());
      const result = await attempt(parts, kept);
      // Before it is settled: told twice it stands there once, forgotten it would never be told.
      if (result.state === "given_up") await tellOwner(parts, { ...kept, because: result.because });
      await outbox.settle(kept, result);
    } catch (error) {
      parts.report(error, kept);
    }
    return 1;
  };
  const runOnce = async (): Promise<number> => {
    const due = (await outbox.due(clock.now_ms())).filter(isPaced);
    const counts = await Promise.all(due.map(deliver));
    return counts.reduce((sum, count) => sum + count, 0);
  };
  return {
    runOnce,
    start(every_ms) {
      const tick = () => {
        running = runOnce()
          // A database that is shut or busy now is asked again with the next turn.
          .catch(() => undefined)
          .finally(() => {
            if (!isStopped) timer = setTimeout(tick, every_ms).unref();
          });
      };
      timer = setTimeout(tick, every_ms).unref();
    },
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      await running;
    },
  };
}

async function attempt(parts: RelayParts, waiting: KeptPost): Promise<PostResult> {
  const port = parts.ports[waiting.post.channel.door];
  const kept = await complete(parts, waiting);
  if (!("post" in kept)) return kept;
  try {
    const found: FindOutcome = kept.state === "waiting" ? { kind: "absent" } : await look(port, kept);
    if (found.kind === "found") return { state: "sent", messageId: found.messageId };
    return await send(parts, port, kept, found);
  } catch (error) {
    parts.report(error, kept);
    // A look that failed says no more than was known before; a send that failed may have arrived.
    return tryAgain(parts, kept, "unsure", SETTLE_ms, error instanceof Error ? error.message : String(error));
  }
}

/** The post with its paper, or when to try again to make that; nothing was sent yet. */
async function complete(parts: RelayParts, kept: KeptPost): Promise<KeptPost | PostResult> {
  if (parts.complete === undefined) return kept;
  try {
    return { ...kept, post: { ...kept.post, card: await parts.complete(kept) } };
  } catch (error) {
    parts.report(error, kept);
    const card = withoutPaper(kept);
    if (card !== undefined) return { ...kept, post: { ...kept.post, card } };
    const state = kept.state === "waiting" ? "waiting" : "unsure";
    return tryAgain(parts, kept, state, 0, "the paper could not be made");
  }
}

async function look(port: ChatPort, kept: KeptPost): Promise<FindOutcome> {
  return port.find === undefined ? { kind: "cannot_look" } : await port.find(outgoing(kept));
}

async function send(
  parts: RelayParts,
  port: ChatPort,
  kept: KeptPost,
  found: Exclude<FindOutcome, { readonly kind: "found" }>,
): Promise<PostResult> {
  const out = outgoing(kept, found.kind === "partly" ? found : undefined);
  const { card, language } = kept.post;
  // To put the same card in the place of a message twice changes nothing.
  const mayRepeat = found.kind === "cannot_look" && kept.updatesMessage === undefined;
  const sent = await port.send(mayRepeat ? { ...out, card: noteRepeat(card, language) } : out);
  if (sent.kind === "sent") return { state: "sent", messageId: sent.messageId };
  if (sent.kind === "refused") return { state: "given_up", because: sent.because };
  // What was unsure before stays so where nobody could look: this refusal is about this attempt alone.
  const isCertain = found.kind === "absent" && !sent.isPartly;
  return tryAgain(parts, kept, isCertain ? "waiting" : "unsure", sent.after_ms, sent.because);
}

async function tellOwner({ ports, language, clock }: RelayParts, kept: KeptPost): Promise<void> {
  const card = buildLostPostsCard(language, [kept]);
  const out = { workspace: kept.workspace, id: `lost ${kept.post.id}`, written_ms: clock.now_ms() };
  if (card !== undefined) await ports[OWNER_CHANNEL.door].send({ ...out, channel: OWNER_CHANNEL, card });
}

/** Twice as long a wait each time, never shorter than the platform asks for. */
function tryAgain(
  { clock, jitter }: RelayParts,
  { tries }: KeptPost,
  state: "waiting" | "unsure",
  least_ms: number,
  because: string,
): PostResult {
  if (tries + 1 >= MOST_TRIES) return { state: "given_up", because };
  const backOff_ms = Math.min(LONGEST_WAIT_ms, FIRST_WAIT_ms * 2 ** tries);
  const wait_ms = Math.max(least_ms, backOff_ms) * (1 + JITTER_SHARE * jitter());
  return { state, due_ms: Math.ceil(clock.now_ms() + wait_ms), because };
}

function outgoing(
  { workspace, post, updatesMessage, followsMessage, written_ms }: KeptPost,
  there?: PostedParts,
): Outgoing {
  const { id, channel, card, thread = followsMessage } = post;
  return {
    workspace,
    id,
    channel,
    card,
    written_ms,
    ...(thread !== undefined && { thread }),
    ...(updatesMessage !== undefined && { updatesMessage }),
    ...(there && { there: { messageId: there.messageId, parts: there.parts } }),
  };
}

function channelOf({ workspace, post: { channel } }: KeptPost): string {
  return JSON.stringify([workspace, channel.door, channel.id]);
}
