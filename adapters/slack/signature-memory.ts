/** Signatures of requests that were let in, so that none is let in twice. */
export interface SignatureMemory {
  /** @returns false when this signature was let in before, or is being looked at right now */
  begin(signature: string): boolean;
  /** The request was genuine: its signature is good for nothing any more. */
  accept(signature: string): void;
  /** The request was refused or failed: the genuine one may still come. */
  forget(signature: string): void;
}

/** Bolt takes signatures of the last 5 minutes, the guard takes clocks that are 1 minute ahead [ms]. */
const LIFETIME_ms = 6 * 60_000;
/** Enough for 130 requests a second. Beyond that the oldest is forgotten, and the desk's own memory must do. */
const MOST_KEPT = 50_000;

/** @param now_ms time of day [ms] */
export function rememberSignatures(now_ms: () => number, mostKept = MOST_KEPT): SignatureMemory {
  /** When each may be forgotten; the order of entries is the order of these times. */
  const kept = new Map<string, number>();
  const pending = new Set<string>();
  const clear = (now: number) => {
    for (const [signature, until] of kept) {
      if (until > now && kept.size <= mostKept) return;
      kept.delete(signature);
    }
  };
  return {
    begin(signature) {
      clear(now_ms());
      if (kept.has(signature) || pending.has(signature)) return false;
      pending.add(signature);
      return true;
    },
    accept(signature) {
      pending.delete(signature);
      kept.set(signature, now_ms() + LIFETIME_ms);
    },
    forget(signature) {
      pending.delete(signature);
    },
  };
}
