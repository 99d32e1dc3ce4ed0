import { type Activity, type ConversationReference, TurnContext } from "botbuilder";
import type { ConnectorClient } from "botframework-connector";
import type { TeamsLine, TeamsMessage } from "../port.ts";
import { type Patience, sendPatiently } from "../send-patiently.ts";
import { REQUEST_OPTIONS } from "./connect.ts";
import { toActivity } from "./to-activity.ts";

/** One conversation, reached through the library's client, which outlives the turn. */
export class ConnectorLine implements TeamsLine {
  readonly #connector: ConnectorClient;
  readonly #reference: Partial<ConversationReference>;
  readonly #conversation: string;
  readonly #patience: Patience;

  constructor(connector: ConnectorClient, reference: Partial<ConversationReference>, patience: Patience) {
    this.#connector = connector;
    this.#reference = reference;
    this.#conversation = reference.conversation?.id ?? "";
    this.#patience = patience;
  }

  async send(message: TeamsMessage, signal: AbortSignal): Promise<string> {
    const activity = this.#address(toActivity(message));
    const { conversations } = this.#connector;
    const sent = await this.#patiently(
      () => conversations.sendToConversation(this.#conversation, activity, REQUEST_OPTIONS),
      signal,
    );
    return sent.id;
  }

  async update(id: string, message: TeamsMessage, signal: AbortSignal): Promise<void> {
    const activity = { ...this.#address(toActivity(message)), id };
    const { conversations } = this.#connector;
    await this.#patiently(
      () => conversations.updateActivity(this.#conversation, id, activity, REQUEST_OPTIONS),
      signal,
    );
  }

  async showTyping(): Promise<void> {
    const activity = this.#address({ type: "typing" });
    await this.#connector.conversations.sendToConversation(this.#conversation, activity, REQUEST_OPTIONS);
  }

  #address(activity: Partial<Activity>): Partial<Activity> {
    return TurnContext.applyConversationReference(activity, this.#reference);
  }

  #patiently<T>(send: () => Promise<T>, signal: AbortSignal): Promise<T> {
    return sendPatiently(send, this.#patience, signal);
  }
}
