import type { Block } from "./card.ts";

/** Details under one title, for a door that opens them on a tap. Their title is not said again inside. */
export interface Fold {
  readonly kind: "fold";
  readonly title: string;
  readonly blocks: readonly Block[];
}

/**
 * The blocks of a card in order, with the details gathered under their titles. A detail before any title stands open,
 * because nothing would say what is under it.
 */
export function gatherFolds(blocks: readonly Block[]): readonly (Block | Fold)[] {
  const parts: (Block | Fold)[] = [];
  for (const block of blocks) {
    const title = titleOf(block);
    const open = parts.at(-1);
    if (title !== undefined) parts.push({ kind: "fold", title, blocks: withoutTitle(block) });
    else if (isDetail(block) && open?.kind === "fold")
      parts.splice(-1, 1, { ...open, blocks: [...open.blocks, block] });
    else parts.push(block);
  }
  return parts;
}

/** Whether a door may show the block folded, or after the rest. */
export function isDetail(block: Block): boolean {
  return "isDetail" in block && block.isDetail === true;
}

function titleOf(block: Block): string | undefined {
  if (!isDetail(block)) return undefined;
  if (block.kind === "text") return block.tone === "heading" ? block.text : undefined;
  if (block.kind === "rows") return block.heading;
  return block.kind === "table" ? block.caption : undefined;
}

/** A table keeps its caption, which readers that cannot see need at the table itself. */
function withoutTitle(block: Block): readonly Block[] {
  if (block.kind === "text") return [];
  if (block.kind !== "rows") return [block];
  const { heading: _, ...rest } = block;
  return [rest];
}
