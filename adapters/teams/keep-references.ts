import {
  CONVERSATION_KINDS,
  type ConversationReference,
  type ConversationReferences,
  type LeftPlace,
} from "../../src/ports/conversation-references.ts";
import { describeError } from "./describe-error.ts";
import { listAt, textAt } from "./payload.ts";
import type { DoorLog } from "./port.ts";
import { channelOf, tenantOf } from "./read-activity.ts";

/** Notes down where posts may go to, as the platform speaks of it. */
export interface ReferenceKeeper {
  /** Takes what an activity says of its conversation; nobody waits for it. */
  hear(activity: unknown): void;
  /** Settles when everything heard so far is noted. */
  settled(): Promise<void>;
}

/** @param references left out where no posts are sent */
export function createReferenceKeeper(references: ConversationReferences | undefined, log: DoorLog): ReferenceKeeper {
  // One after the other: what was heard first must not undo what was heard last.
  let last: Promise<void> = Promise.resolve();
  return {
    hear(activity) {
      if (references === undefined) return;
      const [left, reference] = [readLeft(activity), readReference(activity)];
      last = last
        .then(async () => {
          if (left !== undefined) await references.leave(left);
          else if (reference !== undefined) await references.keep(reference);
        })
        .catch((error: unknown) => log.warn(describeError(error), "where to post was not noted"));
    },
    settled: () => last,
  };
}

function readReference(activity: unknown): ConversationReference | undefined {
  const [tenant, conversation] = [tenantOf(activity), channelOf(activity)];
  const [serviceUrl, bot] = [textAt(activity, "serviceUrl"), textAt(activity, "recipient", "id")];
  const named = textAt(activity, "conversation", "conversationType") ?? "personal";
  const kind = CONVERSATION_KINDS.find((one) => one === named);
  const isKnown = tenant && conversation && serviceUrl && bot && kind;
  if (!isKnown) return undefined;
  const team = textAt(activity, "channelData", "team", "id");
  return { tenant, conversation, kind, serviceUrl, bot, ...(kind === "channel" && team && { team }) };
}

/**
 * The place that an activity says the bot has left, or that is no more.
 * @source Microsoft Teams, "Conversation events in your Teams bot": members removed, installation update, channel and
 * team deleted
 */
function readLeft(activity: unknown): LeftPlace | undefined {
  const [tenant, conversation] = [tenantOf(activity), channelOf(activity)];
  if (tenant === undefined || conversation === undefined) return undefined;
  const team = textAt(activity, "channelData", "team", "id");
  const event = textAt(activity, "channelData", "eventType");
  if (event === "channelDeleted") {
    const channel = textAt(activity, "channelData", "channel", "id");
    return channel === undefined ? undefined : { tenant, conversation: channel };
  }
  return event === "teamDeleted" || isBotRemoved(activity)
    ? { tenant, conversation, ...(team !== undefined && { team }) }
    : undefined;
}

function isBotRemoved(activity: unknown): boolean {
  switch (textAt(activity, "type")) {
    case "installationUpdate":
      // An upgrade of the app removes it too, and puts it back.
      return textAt(activity, "action") === "remove";
    case "conversationUpdate": {
      const bot = textAt(activity, "recipient", "id");
      return bot !== undefined && listAt(activity, "membersRemoved").some((member) => textAt(member, "id") === bot);
    }
    default:
      return false;
  }
}
