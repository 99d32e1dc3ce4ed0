import type { ActionsBlock, KnownBlock, RichTextBlock, RichTextBlockElement, TableBlock } from "@slack/types";
import { readButtonValue } from "./button-value.ts";
import { LIMITS } from "./limits.ts";
import { fitEscaped, unescapeText } from "./slack-text.ts";

/**
 * The same message without blocks, for the case that Slack refuses them: nothing that a person was told gets lost.
 * @returns escaped text of at most 12,000 characters
 */
export function blocksAsText(blocks: readonly KnownBlock[]): string {
  const lines = blocks.flatMap(linesOf).filter((line) => line !== "");
  return fitEscaped(lines.join("\n"), LIMITS.plainText);
}

function linesOf(block: KnownBlock): readonly string[] {
  switch (block.type) {
    case "header":
      return [unescapeText(block.text.text)];
    case "context":
      return block.elements.flatMap((element) => ("text" in element ? [unescapeText(element.text)] : []));
    case "rich_text":
      return [richLine(block)];
    case "table":
      return tableLines(block);
    case "actions":
      return buttonLines(block);
    default:
      return [];
  }
}

function richLine(block: RichTextBlock): string {
  return block.elements.map(richPart).join("");
}

function richPart(part: RichTextBlockElement): string {
  if (part.type === "rich_text_list") return part.elements.map(richPart).join("\n");
  return part.elements.map((element) => ("text" in element ? (element.text ?? "") : "")).join("");
}

function tableLines(block: TableBlock): readonly string[] {
  return block.rows.map((row) => row.map((cell) => ("text" in cell ? cell.text : richLine(cell))).join(" | "));
}

/** A button is a text that could have been typed, so its text stands in for it. */
function buttonLines(block: ActionsBlock): readonly string[] {
  return block.elements.flatMap((element) => {
    if (element.type === "static_select") return (element.options ?? []).map(({ value }) => `› ${value ?? ""}`);
    const pressed = element.type === "button" ? readButtonValue(element.value) : undefined;
    return pressed === undefined ? [] : [`› ${pressed.say}`];
  });
}
