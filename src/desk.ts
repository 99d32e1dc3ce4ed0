import type { Books } from "./books/books.ts";
import type { SentForm } from "./conversation/turn.ts";
import { callOff, ownerOf } from "./desk/call-off.ts";
import { createTurns } from "./desk/in-turn.ts";
import { keepCards } from "./desk/kept-cards.ts";
import { CODE_LIFE_ms } from "./desk/link-doors.ts";
import { watchRuns } from "./desk/runs-in-flight.ts";
import { type DeskRoom, serve } from "./desk/serve.ts";
import { createTryLimit } from "./desk/try-limit.ts";
import { shelveBooks } from "./desk/workspace-books.ts";
import type { Library } from "./library.ts";
import type { Aim, Card } from "./messages/card.ts";
import type { Clock } from "./ports/clock.ts";
import type { FaultLog } from "./ports/fault-log.ts";
import type { FileStore, SentFile } from "./ports/files.ts";
import type { PaperPort } from "./ports/papers.ts";
import type { Solve } from "./ports/solver.ts";
import type { Caller, Store } from "./ports/store.ts";
import type { TopicRunner } from "./ports/topic-runner.ts";

/** One message from any door. */
export interface Inbound {
  readonly caller: Caller;
  /** The door's own id of the conversation: channel and thread, Teams conversation, browser tab, terminal session. */
  readonly conversation: string;
  /** The door's own id of the channel that posts may go to; left out where the door has none. */
  readonly channel?: string;
  /** Unique per delivery: the same id again is answered with the same card and changes nothing. */
  readonly delivery: string;
  readonly text: string;
  /** Set when a button was pressed that belongs to one question of one walk. */
  readonly aim?: Aim;
  /** Set when a form was sent: what stands in each field. */
  readonly form?: SentForm;
  /** Photos and papers that came with it. */
  readonly files?: readonly SentFile[];
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
  /** A new id, unlike any other; its last eight characters, which are hexadecimal digits, are shown to people. */
  readonly newId: () => string;
  /** Six random digits that cannot be foreseen. */
  readonly newCode: () => string;
  readonly faults: FaultLog;
  /** Where photos and papers are kept; left out where none are, and then they are refused. */
  readonly files?: FileStore;
  /** Makes papers to print; left out where none are made. */
  readonly papers?: PaperPort;
  /** Lends the solver to the topics of the office. */
  readonly openSolver?: () => Promise<Solve>;
}

const MOST_WRONG_CODES = 5;
/** Enough for what doors send again within minutes. */
const MOST_KEPT_CARDS = 1_000;

/**
 * Opens the front desk. Messages of one person are answered one after the other, those of others at the same time; only
 * a message that calls off work goes ahead of what waits.
 */
export function createDesk(parts: DeskParts): Desk {
  const room: DeskRoom = {
    ...parts,
    turns: createTurns(),
    tries: createTryLimit(MOST_WRONG_CODES, CODE_LIFE_ms),
    runs: watchRuns(),
    kept: keepCards(MOST_KEPT_CARDS),
    shelf: shelveBooks(parts.books),
  };
  return {
    receive: (inbound, show, signal) =>
      callOff(room, inbound) ?? room.turns.take(ownerOf(inbound.caller), () => serve(room, inbound, show, signal)),
  };
}
