import type { Activity } from "botbuilder";
import type { TeamsMessage } from "../port.ts";

const CARD_TYPE = "application/vnd.microsoft.card.adaptive";

export function toActivity(message: TeamsMessage): Partial<Activity> {
  const attachment = "card" in message ? { contentType: CARD_TYPE, content: message.card } : { ...message.attachment };
  return { type: "message", summary: message.summary, attachments: [attachment] };
}
