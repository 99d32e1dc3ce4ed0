import type { Interface } from "node:readline";

/** Lines one after the other, as they are asked for. */
interface LineQueue {
  /** The next line; nothing once there are no more. */
  next(): Promise<string | undefined>;
  /** Drops what waits; there are no more lines. */
  close(): void;
}

/**
 * Keeps lines that come while nobody asks for one.
 * @param takeAside takes a line ahead of those that wait; true when it did
 */
export function queueLines(lines: Interface, takeAside: (line: string) => boolean): LineQueue {
  const waiting: string[] = [];
  let isOver = false;
  let wake = () => {};
  lines.on("line", (line) => {
    if (isOver || takeAside(line)) return;
    waiting.push(line);
    wake();
  });
  lines.on("close", () => {
    isOver = true;
    wake();
  });
  return {
    async next() {
      while (waiting.length === 0 && !isOver)
        await new Promise<void>((resolve) => {
          wake = resolve;
        });
      return waiting.shift();
    },
    close() {
      isOver = true;
      waiting.length = 0;
      wake();
      lines.close();
    },
  };
}
