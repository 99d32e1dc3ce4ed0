import type { Inbound } from "../../src/desk.ts";
import type { Language } from "../../src/messages/language.ts";
import type { ConversationReference } from "../../src/ports/conversation-references.ts";
import type { AdaptiveCard } from "./adaptive-card.ts";
import type { Consent } from "./file-messages.ts";
import type { Asker, Pressed } from "./submit-data.ts";

/** One message as Teams shows it. */
export type TeamsMessage = CardMessage | FileMessage;
export interface CardMessage {
  readonly card: AdaptiveCard;
  /** The line of the notification. */
  readonly summary: string;
}
/** One of the platform's own cards for files. */
export interface FileMessage {
  readonly attachment: {
    readonly contentType: string;
    readonly name: string;
    readonly contentUrl?: string;
    readonly content: Readonly<Record<string, unknown>>;
  };
  readonly summary: string;
}

/** What somebody said or pressed in Teams, whatever library brought it. */
export interface TeamsEvent {
  readonly inbound: Inbound;
  /** The language of the person's Teams. */
  readonly language: Language;
  readonly asker: Asker;
  readonly isGroup: boolean;
  /** Set when a button or a form of a card was used. */
  readonly pressed?: Pressed;
  /** Set when somebody answered whether a file may come. */
  readonly consent?: Consent;
  /** The message that carries the card that was used. */
  readonly pressedOn?: string;
}

/**
 * The way back into one conversation; it stays open after the turn that brought the event. What is being sent is sent
 * to its end; the signal ends the patience with a busy platform.
 */
export interface TeamsLine {
  /** @returns the id of the message, for updates */
  send(message: TeamsMessage, signal: AbortSignal): Promise<string>;
  update(id: string, message: TeamsMessage, signal: AbortSignal): Promise<void>;
  showTyping(): Promise<void>;
}

/** Takes messages into conversations where nobody has just asked. Nothing is tried twice; errors are the platform's. */
export interface TeamsCourier {
  /**
   * @param thread in a channel: the message whose thread it stands in; without it, it begins a thread of its own
   * @returns the id of the message
   */
  post(reference: ConversationReference, message: TeamsMessage, thread?: string): Promise<string>;
  update(reference: ConversationReference, id: string, message: TeamsMessage, thread?: string): Promise<void>;
}

/** Serves one event and settles when everything is sent. */
export type ServeEvent = (event: TeamsEvent, line: TeamsLine, signal: AbortSignal) => Promise<void>;

/** Why a wait is ended that is not needed any more; without a reason of our own an error is made each time. */
export const DONE = "done";

/** Waits, and comes back early when the signal is aborted; it never fails. */
export type Pause = (ms: number, signal: AbortSignal) => Promise<void>;

/** The part of a logger that the door uses; messages of people never go in. */
export interface DoorLog {
  info(data: object, text: string): void;
  warn(data: object, text: string): void;
  error(data: object, text: string): void;
}
