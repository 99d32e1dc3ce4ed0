/** Deliveries kept in mind, so that one that comes twice at the same time is worked on once. */
const MOST_KEPT = 1_000;

export interface Delivered<T> {
  readonly isFirst: boolean;
  readonly result: Promise<T>;
}
export interface Deliveries<T> {
  /** The work on this delivery: started now, or what the first of the same id came to. */
  once(delivery: string, start: () => Promise<T>): Delivered<T>;
}

/**
 * The desk answers a delivery once and remembers it for good; this keeps the copies of the last minutes from being
 * posted twice. Work that failed is forgotten, so that it can be sent again.
 */
export function rememberDeliveries<T>(): Deliveries<T> {
  const kept = new Map<string, Promise<T>>();
  return {
    once(delivery, start) {
      const known = kept.get(delivery);
      if (known !== undefined) return { isFirst: false, result: known };
      const result = start();
      kept.set(delivery, result);
      result.catch(() => kept.delete(delivery));
      const [oldest] = kept.keys();
      if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
      return { isFirst: true, result };
    },
  };
}
