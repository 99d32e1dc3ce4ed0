/** Does work one after the other for each key, in the order it came; different keys do not wait for each other. */
export interface Turns {
  take<T>(key: string, work: () => Promise<T>): Promise<T>;
  /** Number of keys with work that goes on or waits. */
  busy(): number;
}

/** A queue for each key that lives only as long as something is in it. */
export function createTurns(): Turns {
  const tails = new Map<string, Promise<unknown>>();
  return {
    take(key, work) {
      const done = (tails.get(key) ?? Promise.resolve()).then(work);
      const tail = done.then(ignore, ignore).then(() => {
        if (tails.get(key) === tail) tails.delete(key);
      });
      tails.set(key, tail);
      return done;
    },
    busy: () => tails.size,
  };
}

function ignore(): void {}
