import type { RichTextElement } from "@slack/types";
import type { ProgressBlock, Row, RowsBlock } from "../../src/messages/card.ts";
import type { BlockGroup } from "./block-groups.ts";
import { chunk, jsonSize } from "./chunk.ts";
import { LIMITS } from "./limits.ts";
import { bold, plain, richParagraphs, richSection } from "./rich-text.ts";
import { fitRaw } from "./slack-text.ts";

/** One line a row, "label: value (note)", which reads well on a phone and aloud. */
export function renderRows(block: RowsBlock): BlockGroup {
  const lines = block.rows.map(renderRow);
  const parts = chunk(lines, { mostItems: block.rows.length, mostSize: LIMITS.blockSize }, jsonSize);
  const heading = block.heading === undefined ? [] : richParagraphs(block.heading, bold);
  return [...heading, ...parts.map((part) => richSection(joinLines(part)))];
}

function renderRow(row: Row): readonly RichTextElement[] {
  const note = row.note === undefined ? [] : [plain(` (${fitRaw(row.note, LIMITS.rowPart)})`)];
  return [plain(`${fitRaw(row.label, LIMITS.rowPart)}: `), bold(fitRaw(row.value, LIMITS.rowPart)), ...note];
}

function joinLines(lines: readonly (readonly RichTextElement[])[]): readonly RichTextElement[] {
  return lines.flatMap((line, index) => (index === 0 ? line : [plain("\n"), ...line]));
}

const BAR_STEPS = 10;

/** "▓▓▓░░░░░░░ 50/200 Sampled days". */
export function renderProgress({ text, done, total }: ProgressBlock): BlockGroup {
  const share = total > 0 ? Math.min(1, Math.max(0, done / total)) : 0;
  const full = Math.round(share * BAR_STEPS);
  const bar = "▓".repeat(full) + "░".repeat(BAR_STEPS - full);
  return richParagraphs(`${bar} ${done}/${total} ${text}`, plain);
}
