import { randomUUID } from "node:crypto";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import { fixtureBooks } from "./fixture-books.ts";
import { fixtureLibrary } from "./fixture-library.ts";
import { createMemoryStore } from "./memory-store.ts";

export interface WalkDesk {
  /** The real desk on the one store, as after a start of the program. */
  openDesk(): Desk;
  readonly faults: readonly unknown[];
}

export function openWalkDesk(): WalkDesk {
  const store = createMemoryStore();
  const faults: unknown[] = [];
  const openDesk = () =>
    createDesk({
      library: fixtureLibrary,
      books: fixtureBooks,
      store,
      runner: createInlineRunner(fixtureLibrary, fixtureBooks),
      clock: { now_ms: () => 1_000_000 },
      newId: randomUUID,
      newCode: () => "123456",
      faults: { report: (fault) => faults.push(fault) },
    });
  return { openDesk, faults };
}
