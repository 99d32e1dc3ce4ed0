import type { Card } from "../messages/card.ts";

/** Cards of the latest deliveries that save nothing, so that one which comes again is answered the same. */
export interface KeptCards {
  find(delivery: string): Card | undefined;
  keep(delivery: string, card: Card): void;
}

/** @param most so many are kept; beyond them the oldest is forgotten */
export function keepCards(most: number): KeptCards {
  const kept = new Map<string, Card>();
  return {
    find: (delivery) => kept.get(delivery),
    keep(delivery, card) {
      kept.set(delivery, card);
      const [oldest] = kept.keys();
      if (kept.size > most && oldest !== undefined) kept.delete(oldest);
    },
  };
}
