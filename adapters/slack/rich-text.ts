import type { ContextBlock, PlainTextElement, RichTextBlock, RichTextElement } from "@slack/types";
import { LIMITS } from "./limits.ts";
import { cleanText, fitEscaped, splitText } from "./slack-text.ts";

/*
 * Rich text and table cells carry text as data: nothing in them becomes a mention, a link or formatting, and Slack does
 * not decode entities there. Text objects are decoded once, so they are escaped once.
 */

export function plain(text: string): RichTextElement {
  return { type: "text", text: cleanText(text) };
}

export function bold(text: string): RichTextElement {
  return { type: "text", text: cleanText(text), style: { bold: true } };
}

export function richSection(elements: readonly RichTextElement[]): RichTextBlock {
  return { type: "rich_text", elements: [{ type: "rich_text_section", elements: [...elements] }] };
}

export function richQuote(elements: readonly RichTextElement[]): RichTextBlock {
  return { type: "rich_text", elements: [{ type: "rich_text_quote", elements: [...elements] }] };
}

/** One block a piece, however long the text is. */
export function richParagraphs(text: string, style: (part: string) => RichTextElement): readonly RichTextBlock[] {
  return splitText(text, LIMITS.sectionText, false).map((part) => richSection([style(part)]));
}

/** Small grey text; one context block a piece. */
export function quietBlocks(text: string): readonly ContextBlock[] {
  return splitText(text, LIMITS.contextText, true).map((part) => ({
    type: "context",
    elements: [plainObject(part, LIMITS.contextText)],
  }));
}

/** A plain text object; `emoji: false` keeps `:words:` as they were typed. */
export function plainObject(text: string, most: number): PlainTextElement {
  return { type: "plain_text", text: fitEscaped(text, most), emoji: false };
}
