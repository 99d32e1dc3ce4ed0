import type { Books } from "../../src/books/books.ts";
import { digestPost } from "../../src/desk/digest-post.ts";
import { dueDigests } from "../../src/jobs/digest/due.ts";
import type { Library } from "../../src/library.ts";
import type { Clock } from "../../src/ports/clock.ts";
import type { WorkspaceStore } from "../../src/ports/store.ts";

export interface DigestClockParts {
  readonly library: Library;
  readonly books: Books;
  /** The workspace of the company whose books these are; no other is ever posted for. */
  readonly openOwn: () => Promise<WorkspaceStore>;
  readonly clock: Clock;
  readonly report: (error: unknown) => void;
}

export interface DigestClock {
  /** Writes the digests that are due and not yet written. @returns the ids of those that this call wrote */
  runOnce(): Promise<readonly string[]>;
  /** Goes on until it is stopped. */
  start(every_ms: number): void;
  /** Ends after the look that is under way. */
  stop(): Promise<void>;
}

/**
 * Writes the company's digests into the outbox at their hour. What is due follows from the clock alone, and the id of a post
 * from its period: so a restart, a second process or a machine that was off makes no difference, because a post whose id is
 * there is not written again.
 */
export function createDigestClock(parts: DigestClockParts): DigestClock {
  const { books, clock } = parts;
  const { digest: schedule, timeZone } = books.company;
  /** What is known to be written, so that it is not counted anew every time. */
  const written = new Set<string>();
  let timer: NodeJS.Timeout | undefined;
  let running: Promise<unknown> = Promise.resolve();
  let isStopped = false;

  const runOnce = async (): Promise<readonly string[]> => {
    if (schedule === undefined) return [];
    const now_ms = clock.now_ms();
    const due = dueDigests(schedule, timeZone, now_ms).filter(({ id }) => !written.has(id));
    if (due.length === 0) return [];
    const workspace = await parts.openOwn();
    const ids: string[] = [];
    for (const one of due) {
      const post = await digestPost({ ...parts, workspace }, schedule, one, now_ms);
      ids.push(...(await workspace.writePosts([post], now_ms)));
      written.add(one.id);
    }
    return ids;
  };
  return {
    runOnce,
    start(every_ms) {
      const tick = () => {
        running = runOnce()
          // It is still due at the next look.
          .catch(parts.report)
          .finally(() => {
            if (!isStopped) timer = setTimeout(tick, every_ms).unref();
          });
      };
      timer = setTimeout(tick, every_ms).unref();
    },
    async stop() {
      isStopped = true;
      clearTimeout(timer);
      await running;
    },
  };
}
