/** Counts wrong tries of each key, so that a short code cannot be guessed by trying them all. */
export interface TryLimit {
  isOver(key: string, now_ms: number): boolean;
  countWrong(key: string, now_ms: number): void;
}

/**
 * Allows `most` wrong tries within `window_ms`; older ones are forgotten.
 * @param window_ms time that a wrong try counts [ms]
 */
export function createTryLimit(most: number, window_ms: number): TryLimit {
  const tries = new Map<string, readonly number[]>();
  const recent = (key: string, now_ms: number) => (tries.get(key) ?? []).filter((at_ms) => now_ms - at_ms < window_ms);
  return {
    isOver: (key, now_ms) => recent(key, now_ms).length >= most,
    countWrong(key, now_ms) {
      for (const [old] of tries) if (recent(old, now_ms).length === 0) tries.delete(old);
      tries.set(key, [...recent(key, now_ms), now_ms]);
    },
  };
}
