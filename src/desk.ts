import type { Books } from "./books/books.ts";
import type { SentForm } from "./conversation/turn.ts";
import { createTurns } from "./desk/in-turn.ts";
import { CODE_LIFE_ms } from "./desk/link-doors.ts";
import { serve } from "./desk/serve.ts";
import { createTryLimit } from "./desk/try-limit.ts";
import type { Library } from "./library.ts";
import type { Aim, Card } from "./messages/card.ts";
import type { Clock } from "./ports/clock.ts";
import type { FaultLog } from "./ports/fault-log.ts";
import type { Caller, Store } from "./ports/store.ts";
import type { TopicRunner } from "./ports/topic-runner.ts";

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
  readonly form?: SentForm;
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
  /** Never rejects: a failure of ours is a card that says so, with an id that is in the fault log. */
  receive(inbound: Inbound, show: ShowProgress, signal: AbortSignal): Promise<Reply>;
}

/** Everything that the desk works with. */
export interface DeskParts {
  readonly library: Library;
  readonly books: Books;
  readonly store: Store;
  readonly runner: TopicRunner;
  readonly clock: Clock;
  /** A new id, unlike any other; its last eight characters are shown to people. */
  readonly newId: () => string;
  /** Six random digits that cannot be foreseen. */
  readonly newCode: () => string;
  readonly faults: FaultLog;
}

const MOST_WRONG_CODES = 5;

/** Opens the front desk. Messages of one person are answered one after the other, those of others at the same time. */
export function createDesk(parts: DeskParts): Desk {
  const turns = createTurns();
  const tries = createTryLimit(MOST_WRONG_CODES, CODE_LIFE_ms);
  return {
    receive(inbound, show, signal) {
      const { door, organisation, user } = inbound.caller;
      const key = JSON.stringify([door, organisation, user]);
      return turns.take(key, () => serve({ ...parts, turns, tries }, inbound, show, signal));
    },
  };
}
