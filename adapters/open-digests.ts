import { randomUUID } from "node:crypto";
import type { Books } from "../src/books/books.ts";
import type { Library } from "../src/library.ts";
import type { FaultLog } from "../src/ports/fault-log.ts";
import type { Caller, Store } from "../src/ports/store.ts";
import { createDigestClock, type DigestClock } from "./workers/digest-clock.ts";

interface DigestSettings {
  readonly library: Library;
  readonly books: Books;
  readonly store: Store;
  readonly faults: FaultLog;
}

/** How often it is looked whether the hour of a digest has come [ms]. */
const EVERY_ms = 20_000;
/** Nobody in particular, at one of the company's own doors: enough to find its workspace. */
const OWN_DOOR: Caller = { door: "web", organisation: "local", user: "", name: "" };

/** Starts posting the company's digests at their hours, until it is stopped. */
export function startDigests({ library, books, store, faults }: DigestSettings): Pick<DigestClock, "stop"> {
  const clock = createDigestClock({
    library,
    books,
    openOwn: () => store.openWorkspace(OWN_DOOR),
    clock: { now_ms: Date.now },
    report: (error) =>
      faults.report({
        id: randomUUID().slice(-8),
        doing: "post",
        door: books.company.digest?.channel.door ?? "",
        error,
      }),
  });
  clock.start(EVERY_ms);
  return clock;
}
