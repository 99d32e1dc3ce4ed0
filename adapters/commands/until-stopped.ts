/** The part of a process that says when to stop. */
export interface Stoppable {
  once(signal: "SIGINT" | "SIGTERM", heard: () => void): unknown;
}

/** Resolves with the first signal to stop. */
export function untilStopped(process: Stoppable): Promise<"SIGINT" | "SIGTERM"> {
  return new Promise((resolve) => {
    process.once("SIGINT", () => resolve("SIGINT"));
    process.once("SIGTERM", () => resolve("SIGTERM"));
  });
}

/**
 * Shuts everything in turn, one after the other, whatever becomes of each.
 * @returns what could not be shut, as it was thrown
 */
export async function shutInTurn(shut: readonly (() => Promise<void>)[]): Promise<readonly unknown[]> {
  const failed: unknown[] = [];
  for (const one of shut) await one().catch((error: unknown) => failed.push(error));
  return failed;
}
