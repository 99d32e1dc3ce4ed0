import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import type { Books } from "../../src/books/books.ts";
import { createDesk, type Inbound } from "../../src/desk.ts";
import type { Button, Card } from "../../src/messages/card.ts";
import type { Fault } from "../../src/ports/fault-log.ts";
import type { Solve } from "../../src/ports/solver.ts";
import type { Caller, Store } from "../../src/ports/store.ts";
import { library } from "./ask-library.ts";
import { fixtureBooks } from "./fixture-books.ts";
import { createMemoryStore, type MemoryStore } from "./memory-store.ts";

export const ANA: Caller = { door: "slack", organisation: "acme", user: "U1", name: "Ana" };
export const BEN: Caller = { ...ANA, user: "U2", name: "Ben" };

/** The fixture's company with a channel for its team, as the web shows it. */
export const TEAM_BOOKS: Books = {
  ...fixtureBooks,
  company: { ...fixtureBooks.company, teamChannel: { door: "web", id: "team" } },
};

/** A desk with the real topics over a store in memory, for conversations about jobs. */
export interface JobDesk<S extends Store = MemoryStore> {
  readonly store: S;
  readonly faults: Fault[];
  now_ms: number;
  say(text: string, caller?: Caller, conversation?: string, more?: Partial<Inbound>): Promise<Card>;
  press(button: Button, caller?: Caller, conversation?: string): Promise<Card>;
}

export function openJobDesk(books: Books = TEAM_BOOKS): JobDesk {
  return openJobDeskOn(createMemoryStore(), books);
}

export function openJobDeskOn<S extends Store>(store: S, books: Books = TEAM_BOOKS, solve?: Solve): JobDesk<S> {
  const faults: Fault[] = [];
  let ids = 0;
  const desk = createDesk({
    library,
    books,
    store,
    runner: createInlineRunner(library, books),
    clock: { now_ms: () => bench.now_ms },
    newId: () => `0000-${String(++ids).padStart(8, "0")}`,
    newCode: () => "111111",
    faults: { report: (fault) => faults.push(fault) },
    ...(solve && { openSolver: async () => solve }),
  });
  const bench: JobDesk<S> = {
    store,
    faults,
    // November 25, 2026, 14:02 in the time zone of the fixture's company.
    now_ms: Date.UTC(2026, 10, 25, 20, 2),
    say: async (text, caller = ANA, conversation = "c1", more = {}) => {
      bench.now_ms += 60_000;
      const inbound = { caller, conversation, delivery: `d${++ids}`, text, ...more };
      return (await desk.receive(inbound, () => {}, new AbortController().signal)).card;
    },
    press: ({ say, aim }, caller, conversation) => bench.say(say, caller, conversation, aim && { aim }),
  };
  return bench;
}

export async function jobOf(store: Store, number: string) {
  const workspace = await store.openWorkspace(ANA);
  return workspace.findJob(number);
}

/** Says several things one after the other; the card of the last. */
export async function sayAll({ say }: Pick<JobDesk, "say">, ...texts: readonly [string, ...string[]]): Promise<Card> {
  const [first, ...rest] = texts;
  let card = await say(first);
  for (const text of rest) card = await say(text);
  return card;
}
