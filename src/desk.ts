import type { Aim, Card } from "./messages/card.ts";
import type { Caller } from "./ports/store.ts";

/** One message from any door. */
export interface Inbound {
  readonly caller: Caller;
  /** The door's own id of the conversation: channel and thread, Teams conversation, browser tab, terminal session. */
  readonly conversation: string;
  /** Unique per delivery: the same id again is answered with the same card and changes nothing. */
  readonly delivery: string;
  readonly text: string;
  /** Set when a button was pressed that belongs to one question of one walk. */
  readonly aim?: Aim;
  /** Set when a form was sent: what stands in each field. */
  readonly form?: { readonly topic: string; readonly fields: Readonly<Record<string, string>> };
}

/** Called while long work goes on, so that a door can update its message. */
export type ShowProgress = (card: Card) => void;

export interface Reply {
  readonly card: Card;
  /** True: this delivery was answered before; the card is the one given then. */
  readonly isRepeat: boolean;
}

/** The front desk: one inbound message in, one card out. */
export interface Desk {
  receive(inbound: Inbound, show: ShowProgress, signal: AbortSignal): Promise<Reply>;
}
