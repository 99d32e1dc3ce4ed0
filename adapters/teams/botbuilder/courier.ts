import { type Activity, CloudAdapter, TurnContext } from "botbuilder";
import { ConnectorClient } from "botframework-connector";
import type { ConversationReference } from "../../../src/ports/conversation-references.ts";
import type { TeamsCourier, TeamsMessage } from "../port.ts";
import type { CheckedSettings } from "../settings.ts";
import { dropLibraryRetries, openAuthentication, REQUEST_OPTIONS, type StandIns } from "./connect.ts";
import { toActivity } from "./to-activity.ts";

const CHANNEL = "msteams";

/** Takes messages into conversations where nobody has just asked. Each is sent once: who promised it tries again. */
export function openCourier(settings: CheckedSettings, standIns: StandIns = {}): TeamsCourier {
  const adapter = new CloudAdapter(openAuthentication(settings, standIns).inbound);
  return {
    async post(reference, message, thread) {
      const { connector, activity } = await address(adapter, settings.appId, reference, message, thread);
      const { conversations } = connector;
      if (reference.kind !== "channel" || thread !== undefined)
        return (await conversations.sendToConversation(conversationOf(reference, thread), activity, REQUEST_OPTIONS))
          .id;
      const begun = await conversations.createConversation(threadIn(reference, activity), REQUEST_OPTIONS);
      return begun.activityId;
    },
    async update(reference, id, message, thread = id) {
      const { connector, activity } = await address(adapter, settings.appId, reference, message, thread);
      const conversation = conversationOf(reference, thread);
      await connector.conversations.updateActivity(conversation, id, { ...activity, id }, REQUEST_OPTIONS);
    },
  };
}

/**
 * A channel is a list of threads, each named by its first message.
 * @source Microsoft Teams, "Send proactive messages" and "Channel and group conversations with a bot"
 */
function conversationOf({ kind, conversation }: ConversationReference, thread: string | undefined): string {
  return kind === "channel" && thread !== undefined ? `${conversation};messageid=${thread}` : conversation;
}

/** A message that begins a thread of its own. @source botbuilder 4.23.3, `TeamsInfo.sendMessageToTeamsChannel` */
function threadIn({ tenant, conversation, bot }: ConversationReference, activity: Partial<Activity>) {
  if (!isAddressed(activity)) throw new Error("A message has no conversation to go to.");
  return {
    isGroup: true,
    bot: { id: bot, name: "" },
    tenantId: tenant,
    channelData: { channel: { id: conversation }, tenant: { id: tenant } },
    activity,
  };
}

/** What the library's types ask for a new thread is more than the platform does. */
function isAddressed(activity: Partial<Activity>): activity is Activity {
  return activity.serviceUrl !== undefined && activity.conversation !== undefined;
}

async function address(
  adapter: CloudAdapter,
  appId: string,
  reference: ConversationReference,
  message: TeamsMessage,
  thread: string | undefined,
) {
  const known = {
    channelId: CHANNEL,
    serviceUrl: reference.serviceUrl,
    bot: { id: reference.bot, name: "" },
    conversation: {
      id: conversationOf(reference, thread),
      conversationType: reference.kind,
      tenantId: reference.tenant,
      isGroup: reference.kind !== "personal",
      name: "",
    },
  };
  let connector: unknown;
  await adapter.continueConversationAsync(appId, known, async ({ turnState }) => {
    connector = turnState.get(adapter.ConnectorClientKey);
  });
  if (!(connector instanceof ConnectorClient)) throw new Error("The bot library gave no way to post.");
  dropLibraryRetries(connector);
  return { connector, activity: TurnContext.applyConversationReference(toActivity(message), known) };
}
