import type { KnownBlock } from "@slack/types";
import type { Button } from "../../src/messages/card.ts";

/** Blocks that belong together: a caption and its table, a caution and what it cites. Split only when it must be. */
export type BlockGroup = readonly KnownBlock[];

/** What one block of a card becomes. `refused` holds buttons that Slack would not take. */
export interface Rendered {
  readonly groups: readonly BlockGroup[];
  readonly refused: readonly Button[];
}

export function rendered(...groups: readonly BlockGroup[]): Rendered {
  return { groups: groups.filter((group) => group.length > 0), refused: [] };
}
