import type { Language } from "../../src/messages/language.ts";
import type { ChatPort, Outgoing, PostedParts, SendOutcome } from "../../src/ports/chat.ts";
import type { ConversationReference, ConversationReferences } from "../../src/ports/conversation-references.ts";
import { BoundedMap } from "./bounded-map.ts";
import { noteFiles } from "./file-messages.ts";
import { textAt } from "./payload.ts";
import type { TeamsCourier, TeamsMessage } from "./port.ts";
import { renderAdaptive } from "./render-adaptive.ts";
import { didNotArrive, retryAfter_ms, statusOf } from "./send-patiently.ts";

/** Long cards that are half there, remembered until their rest is sent. */
const MOST_HALF_SENT = 200;
const FORBIDDEN = 403;
const NOT_FOUND = 404;
const UNKNOWN_BOT = 401;
/** Turned away before anything was done, and only for now. @source Microsoft Teams, "Status code retry guidance" */
const TURNED_AWAY: ReadonlySet<number> = new Set([UNKNOWN_BOT, 412, 429, 503]);
/** Nobody can say whether it was taken. */
const UNSURE_FROM = 500;
/**
 * What the platform says when the conversation itself is not there, rather than a message in it.
 * @source Microsoft Teams, "Status codes from bot conversational APIs": ConversationNotFound, ActivityNotFoundInConversation
 */
const CONVERSATION_GONE = /^ConversationNotFound$/i;
const REASONS = {
  strange:
    "the bot is in no Teams conversation of this id; add it there, write to it once, and copy what it answers to the word where",
  left: "the bot is not in this Teams conversation any more, or may not write there; add it again and write to it once",
  gone: "the Teams message that this belongs to was deleted",
} as const;

export interface TeamsPostSettings {
  readonly courier: TeamsCourier;
  readonly references: ConversationReferences;
  /** What its screen reader texts are marked as; the card itself is in the language that it was written in. */
  readonly language: Language;
  readonly now_ms: () => number;
}

/**
 * Posts to Teams, into conversations whose references are kept. Teams offers no way to look whether a message is
 * there; what is known for certain is which messages of a long card this process has seen arrive.
 */
export function createTeamsPosts(settings: TeamsPostSettings): ChatPort {
  const halfSent = new BoundedMap<PostedParts>(MOST_HALF_SENT);
  return {
    async send(out) {
      const { references } = settings;
      const reference = await references.find(out.workspace, out.channel.id);
      if (reference === undefined) return { kind: "refused", because: REASONS.strange };
      const { language } = settings;
      const messages = renderAdaptive(noteFiles(out.card, language), { language });
      const progress: Progress = { arrived: 0, ...(out.there && { first: out.there.messageId }) };
      try {
        await sendParts(settings.courier, reference, out, messages, progress);
        halfSent.delete(keyOf(out));
        return { kind: "sent", messageId: progress.first ?? "" };
      } catch (error) {
        const outcome = outcomeOf(error, out, progress, settings.now_ms());
        if (outcome === undefined) throw error;
        if (outcome.drops) await references.drop(reference);
        const { first, arrived } = progress;
        if (first !== undefined && arrived > 0) halfSent.set(keyOf(out), { messageId: first, parts: arrived });
        return outcome.said;
      }
    },
    async find(out) {
      const there = halfSent.get(keyOf(out));
      halfSent.delete(keyOf(out));
      return there === undefined ? { kind: "cannot_look" } : { kind: "partly", ...there };
    },
  };
}

/** How far a card has come. */
interface Progress {
  /** Messages that are there, from the first one on. */
  arrived: number;
  first?: string;
}

/** The first message, which others of the same card follow: in a channel as answers to it, in its thread. */
async function sendParts(
  courier: TeamsCourier,
  reference: ConversationReference,
  out: Outgoing,
  messages: readonly TeamsMessage[],
  progress: Progress,
): Promise<void> {
  const { updatesMessage, there, thread } = out;
  for (const [part, message] of messages.entries()) {
    if (part < (there?.parts ?? 0)) {
      progress.arrived = part + 1;
      continue;
    }
    if (part === 0 && updatesMessage !== undefined) {
      await courier.update(reference, updatesMessage, message, thread);
      progress.first = updatesMessage;
    } else {
      const id = await courier.post(reference, message, thread ?? progress.first);
      progress.first ??= id;
    }
    progress.arrived = part + 1;
  }
}

interface Outcome {
  readonly said: SendOutcome;
  /** True: the reference leads nowhere any more. */
  readonly drops?: true;
}

/** What the platform said; nothing where nobody can say whether the message arrived. */
function outcomeOf(error: unknown, out: Outgoing, progress: Progress, now_ms: number): Outcome | undefined {
  const status = statusOf(error);
  const because = `Teams answers ${[status, textAt(error, "code")].filter((word) => word !== undefined).join(" ")}`;
  const isPartly = progress.arrived > 0;
  if (didNotArrive(error) || (status !== undefined && TURNED_AWAY.has(status))) {
    const after_ms = retryAfter_ms(error, now_ms) ?? 0;
    return { said: { kind: "retryLater", after_ms, because, ...(isPartly && { isPartly }) } };
  }
  if (status === undefined || status >= UNSURE_FROM) return undefined;
  const isOfMessage = out.updatesMessage !== undefined && !CONVERSATION_GONE.test(textAt(error, "code") ?? "");
  if (status === NOT_FOUND && isOfMessage) return { said: { kind: "refused", because: REASONS.gone } };
  if (status === FORBIDDEN || status === NOT_FOUND)
    return { said: { kind: "refused", because: REASONS.left }, drops: true };
  return { said: { kind: "refused", because } };
}

function keyOf({ workspace, id }: Outgoing): string {
  return JSON.stringify([workspace, id]);
}
