import type { KnownBlock } from "@slack/types";
import type { BlockGroup } from "./block-groups.ts";
import { jsonSize } from "./chunk.ts";
import { LIMITS } from "./limits.ts";
import { plainObject } from "./rich-text.ts";

interface Load {
  readonly blocks: number;
  /** Characters of the budget of one message, containers included. */
  readonly cost: number;
  readonly tables: number;
}
const EMPTY: Load = { blocks: 0, cost: 0, tables: 0 };

/** Spreads groups over as few messages as the limits allow, keeping a group whole when it fits one message. */
export function splitMessages(groups: readonly BlockGroup[]): readonly (readonly KnownBlock[])[] {
  const parts = groups.flatMap((group) => (fits(loadOf(group)) ? [group] : group.map((block) => [block])));
  const messages: KnownBlock[][] = [];
  let load = EMPTY;
  for (const part of parts) {
    const more = loadOf(part);
    const open = messages.at(-1);
    if (open !== undefined && fits(add(load, more))) {
      open.push(...part);
      load = add(load, more);
    } else {
      messages.push([...part]);
      load = more;
    }
  }
  return messages;
}

function loadOf(blocks: readonly KnownBlock[]): Load {
  return blocks.map(loadOfBlock).reduce(add, EMPTY);
}

function loadOfBlock(block: KnownBlock): Load {
  return { blocks: 1, cost: jsonSize(block) + LIMITS.blockCost, tables: block.type === "table" ? 1 : 0 };
}

function add(one: Load, other: Load): Load {
  return {
    blocks: one.blocks + other.blocks,
    cost: one.cost + other.cost,
    tables: one.tables + other.tables,
  };
}

function fits(load: Load): boolean {
  return (
    load.blocks <= LIMITS.messageBlocks && load.cost <= LIMITS.messageBudget && load.tables <= LIMITS.messageTables
  );
}

/** Past the last message, the number of blocks left out is said instead of flooding the channel. */
export function capMessages(messages: readonly (readonly KnownBlock[])[]): readonly (readonly KnownBlock[])[] {
  if (messages.length <= LIMITS.cardMessages) return messages;
  const kept = messages.slice(0, LIMITS.cardMessages - 1);
  const left = messages.slice(LIMITS.cardMessages - 1).flat();
  return [...kept, [{ type: "context", elements: [plainObject(`… +${left.length}`, LIMITS.contextText)] }]];
}
