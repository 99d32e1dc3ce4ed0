import { canPrint } from "./fonts.ts";

/** Marks that turn the direction of text, join letters invisibly or pick a coloured form: on paper they only disturb. */
const UNSEEN = /\p{Cf}|\p{Variation_Selector}|\u20E3/gu;
const CONTROLS = /[^\P{Cc}\n]/gu;
const LONE_HALVES = /\p{Cs}/gu;
/** Letters and signs that every paper font has. */
const PLAIN = /^[\n -~\u00A1-\u017F]*$/;
/** Stands for what the fonts have no picture of, such as most emoji: it is left out where everybody sees it. */
const LEFT_OUT = "[…]";
/** Common signs of phones that have a plain likeness. */
const ALIKE: Readonly<Record<string, string>> = {
  "✅": "✔",
  "❎": "✘",
  "❌": "✘",
  "❗": "!",
  "❓": "?",
  "➕": "+",
  "➖": "−",
};
/** Scripts that are read from the right. */
const FROM_RIGHT = "[\\p{Script=Hebrew}\\p{Script=Arabic}][\\p{Script=Hebrew}\\p{Script=Arabic}\\p{M}]*";
const WORDS_FROM_RIGHT = new RegExp(`${FROM_RIGHT}(?: +${FROM_RIGHT})*`, "gu");

/**
 * What somebody wrote, as it can be set in lines: line ends stay, everything that is not seen goes, and what cannot be
 * printed has a mark in its place.
 */
export function tidyText(text: string): string {
  if (PLAIN.test(text)) return text;
  const seen = text
    .replace(/\r\n?/g, "\n")
    .replace(/\t/g, " ")
    .replace(UNSEEN, "")
    .replace(CONTROLS, "")
    .replace(LONE_HALVES, "\uFFFD");
  return orderFromRight(markLeftOut(seen));
}

/** True where something of it cannot be printed. */
export function leavesOut(text: string): boolean {
  return !PLAIN.test(text) && tidyText(text).split(LEFT_OUT).length > text.split(LEFT_OUT).length;
}

/** One mark for however much cannot be printed in a row. */
function markLeftOut(text: string): string {
  let shown = "";
  for (const sign of text) {
    const likeness = ALIKE[sign] ?? sign;
    const isThere = sign === "\n" || canPrint(likeness.codePointAt(0) ?? 0);
    if (isThere) shown += likeness;
    else if (!shown.endsWith(LEFT_OUT)) shown += LEFT_OUT;
  }
  return shown;
}

/**
 * The library sets each word with the blank behind it in the word's own direction, and words from the left. So words that
 * are read from the right are put in the order in which they are seen, right as far as they stand in one line. What follows
 * them begins a word of its own, or it would be turned with them; so does what stands before.
 */
function orderFromRight(text: string): string {
  return text.replace(WORDS_FROM_RIGHT, (words, at: number) => {
    const before = at === 0 || /\s/.test(text[at - 1] ?? "") ? "" : " ";
    const after = at + words.length === text.length || text[at + words.length] === "\n" ? "" : " ";
    return before + words.split(/ +/).toReversed().join(" ") + after;
  });
}
