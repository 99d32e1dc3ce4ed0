import type { CautionBlock, HeadlineBlock, ProgressBlock, QuestionBlock, TextBlock } from "../../src/messages/card.ts";
import type { AdaptiveElement } from "./adaptive-card.ts";
import { MOST_CATALOGUE_WORD_CHARACTERS } from "./limits.ts";
import { cutText, isFreeOfMarkdown, type Look, paragraphs, plainLine, plainText, run } from "./plain-text.ts";
import { PROBLEM_SIGN, SEVERITY_SIGNS } from "./signs.ts";

const TONES: Readonly<Record<Exclude<TextBlock["tone"], "heading">, Look>> = {
  plain: {},
  quiet: { isSubtle: true, size: "small" },
  problem: { color: "attention", weight: "bolder" },
};
/** Squares of a full progress bar. Our own choice. */
const BAR_SQUARES = 10;

/** A heading that screen readers find; one with Markdown characters is only set like a heading, so that it stays as typed. */
export function headingElements(text: string, size: "medium" | "large" = "medium"): AdaptiveElement[] {
  const line = plainLine(text);
  if (line === "") return [];
  if (!isFreeOfMarkdown(line)) return paragraphs(text, { size, weight: "bolder" }, "medium");
  return [{ type: "TextBlock", text: line, wrap: true, style: "heading", size, weight: "bolder", spacing: "medium" }];
}

/** The sentence that answers the question. */
export function renderHeadline(block: HeadlineBlock): AdaptiveElement[] {
  return paragraphs(block.text, { size: "large", weight: "bolder" });
}

/** A paragraph. */
export function renderTextBlock(block: TextBlock): AdaptiveElement[] {
  if (block.tone === "heading") return headingElements(block.text);
  const text = block.tone === "problem" ? `${PROBLEM_SIGN} ${block.text}` : block.text;
  return paragraphs(text, TONES[block.tone]);
}

/** A caution: its weight as a sign and a word, what it says, how to show that it is met, and who says so. */
export function renderCaution(block: CautionBlock): AdaptiveElement[] {
  const { shape, style } = SEVERITY_SIGNS[block.severity];
  const word = cutText(plainLine(block.word), MOST_CATALOGUE_WORD_CHARACTERS);
  return [
    {
      type: "Container",
      style,
      spacing: "medium",
      items: [
        { type: "RichTextBlock", inlines: [run(`${shape} ${word}`, { weight: "bolder" })] },
        ...paragraphs(block.text, {}, "small"),
        ...(block.show ? paragraphs(`→ ${block.show}`, {}, "small") : []),
        ...paragraphs(block.cites, { isSubtle: true, size: "small" }, "small"),
      ],
    },
  ];
}

/** A guided question. */
export function renderQuestion(block: QuestionBlock): AdaptiveElement[] {
  const quiet: Look = { isSubtle: true, size: "small" };
  return [
    ...(block.progress ? paragraphs(cutText(plainLine(block.progress), MOST_CATALOGUE_WORD_CHARACTERS), quiet) : []),
    ...headingElements(block.prompt),
    ...(block.help ? paragraphs(block.help, quiet, "small") : []),
  ];
}

/** How far long work has come, in squares and in figures. */
export function renderProgress(block: ProgressBlock): AdaptiveElement[] {
  const share = block.total > 0 ? Math.min(Math.max(block.done / block.total, 0), 1) : 0;
  const full = Math.floor(share * BAR_SQUARES);
  const bar = `${"■".repeat(full)}${"□".repeat(BAR_SQUARES - full)}`;
  const text = plainText(block.text);
  return [...paragraphs(text), { type: "RichTextBlock", inlines: [run(`${bar} ${block.done} / ${block.total}`)] }];
}
