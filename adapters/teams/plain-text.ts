import type { AdaptiveRichText, AdaptiveRun } from "./adaptive-card.ts";

/** Control characters but for the line break, invisible spaces, and marks that turn the direction of what follows. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that are taken out
const UNSEEN = /[\u0000-\u0009\u000B-\u001F\u007F-\u009F\u200B\u2060\uFEFF\u202A-\u202E\u2066-\u2069]/g;
const LONE_SURROGATE = /[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;
/** Cards turn `{{DATE(…)}}` into a date wherever it stands; a word joiner between the braces keeps it a text. */
const MACRO = /\{(?=\{)/g;
/** Everything that Card Markdown gives a meaning, list marks at the start of a line included. */
const MARKDOWN = /[*_[\]\\`~#<>&|]|^\s*(?:[-+]|\d+[.)])\s/m;

/** A word that may be wider than a phone. Our own choice. */
const LONG_WORD = /\S{20,}/g;

/** Characters much wider than others, and by how much. Our own choice, seen in a browser. */
const WIDE_CHARACTER = /[mwMW@%—]|[\u1100-\uD7FF\uF900-\uFFFF]/g;
const EXTRA_WIDTH = 0.5;

/** A character as a person sees it: with its accents, skin tone, and what is joined to it; a flag is a pair. */
const CHARACTER = /(?:[\u{1F1E6}-\u{1F1FF}]{2}|.)(?:\p{M}|[\u{1F3FB}-\u{1F3FF}]|\u200D.)*/gsu;
/** Twelve of them, the longest piece of a long word. Our own choice. */
const PIECE = new RegExp(`(?:${CHARACTER.source}){1,12}`, "gsu");

/** The text with nothing in it that a card would not show as it stands. Line breaks stay. */
export function plainText(text: string): string {
  return text
    .replace(/\r\n?|[\u0085\u2028\u2029]/g, "\n")
    .replace(/\t/g, " ")
    .replace(UNSEEN, "")
    .replace(LONE_SURROGATE, "\uFFFD")
    .replace(MACRO, "{\u2060");
}

/** The text on one line. */
export function plainLine(text: string): string {
  return plainText(text).replace(/\s+/g, " ").trim();
}

/** True when Card Markdown would show the text as it stands. */
export function isFreeOfMarkdown(text: string): boolean {
  return !MARKDOWN.test(text) && !text.includes("\n");
}

/** The start of a text, cut between two characters as a person sees them, with an ellipsis when something is left out. */
export function cutText(text: string, most: number): string {
  if (text.length <= most) return text;
  return `${takeStart(text, most - 1).trimEnd()}…`;
}

/** The longest start of a text that ends between two characters as a person sees them. */
export function takeStart(text: string, most: number): string {
  let end = 0;
  for (const [character] of text.slice(0, most * 2).matchAll(CHARACTER)) {
    if (end + character.length > most) break;
    end += character.length;
  }
  if (end > 0) return text.slice(0, end);
  const splitsPair = /[\uD800-\uDBFF]/.test(text.charAt(most - 1));
  return text.slice(0, splitsPair ? most + 1 : most);
}

export type Look = Omit<AdaptiveRun, "type" | "text">;

/** Each line of a text as a paragraph of its own, because a run of text has no line breaks. */
export function paragraphs(text: string, look: Look = {}, spacing?: AdaptiveRichText["spacing"]): AdaptiveRichText[] {
  return plainText(text)
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line, index) => ({
      type: "RichTextBlock",
      inlines: [run(line, look)],
      ...(spacing && index === 0 && { spacing }),
    }));
}

export function run(text: string, look: Look = {}): AdaptiveRun {
  return { type: "TextRun", text: breakLongWords(text), ...look };
}

/** The same text with invisible places where a phone may break a word that is wider than its screen. */
export function breakLongWords(text: string): string {
  return text.replace(LONG_WORD, (word) => (word.match(PIECE) ?? [word]).join("\u200B"));
}

/** Room that a text takes on one line, in characters of usual width. */
export function widthOf(text: string): number {
  return text.length + (text.match(WIDE_CHARACTER) ?? []).length * EXTRA_WIDTH;
}

/** The start of a text that takes up this much room on one line. */
export function cutToWidth(text: string, most: number): string {
  const width = widthOf(text);
  return width <= most ? text : cutText(text, Math.floor((most * text.length) / width));
}

/** Characters of the longest word of a text. */
export function longestWord(text: string): number {
  return Math.max(...text.split(/\s/).map((word) => word.length));
}
