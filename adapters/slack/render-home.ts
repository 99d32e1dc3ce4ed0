import type { HomeView, KnownBlock } from "@slack/types";
import type { Block, Card, TableBlock } from "../../src/messages/card.ts";
import { chunk, jsonSize } from "./chunk.ts";
import { LIMITS } from "./limits.ts";
import { renderAll, renderTitle } from "./render-card.ts";
import { plainObject } from "./rich-text.ts";

/** A card as the home tab of one person; where its buttons are answered comes back in `metadata`. */
export function renderHome(card: Card, metadata: string): HomeView {
  const shown = card.blocks.flatMap(forView).flatMap(withoutAims);
  const blocks = [renderTitle(card), ...renderAll(shown, card.title).groups.flat()];
  return { type: "home", private_metadata: metadata, blocks: [...capBlocks(blocks)] };
}

/** Tables stand in messages alone; in a view they are lines. */
export function forView(block: Block): readonly Block[] {
  if (block.kind === "chart") return [block, asLines(block.table)];
  return [block.kind === "table" ? asLines(block) : block];
}

function asLines({ caption, columns, rows }: TableBlock): Block {
  const [, ...names] = columns;
  const name = (column: number) => (names.length > 1 && names[column] ? `${names[column]} ` : "");
  const lines = rows.map(([label = "", ...cells]) => ({
    label,
    value: cells.flatMap((cell, column) => (cell.trim() === "" ? [] : [name(column) + cell])).join(" · "),
  }));
  return { kind: "rows", heading: caption, rows: lines };
}

/** An answer is shown anew each time the tab is opened: what asks about one answer is offered under messages only. */
function withoutAims(block: Block): readonly Block[] {
  if (block.kind !== "buttons") return [block];
  const buttons = block.buttons.filter(({ aim }) => aim === undefined);
  return buttons.length === 0 ? [] : [{ ...block, buttons }];
}

/** What is beyond the limits of a view is counted instead of making Slack refuse the whole. */
function capBlocks(blocks: readonly KnownBlock[]): readonly KnownBlock[] {
  const room = { mostItems: LIMITS.viewBlocks - 1, mostSize: LIMITS.homeSize };
  const [kept = []] = chunk(blocks, room, jsonSize);
  if (kept.length === blocks.length) return kept;
  const more = plainObject(`… +${blocks.length - kept.length}`, LIMITS.contextText);
  return [...kept, { type: "context", elements: [more] }];
}
