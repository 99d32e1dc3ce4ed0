/** What Teams takes, and what Oldhand allows itself of it. */

/**
 * Most bytes of one activity as UTF-8.
 * @source Microsoft Teams, "Format your bot messages": about 100 KB in all and 80 KB advised, in earlier editions 40 KB;
 * incoming webhooks and workflows 28 KB. The smallest of them is kept everywhere.
 */
export const MOST_ACTIVITY_BYTES = 28 * 1024;
/** Most bytes of one activity as UTF-16, which is how Teams counts; the smallest figure of the same page, 40 KB. */
export const MOST_ACTIVITY_UTF16_BYTES = 40 * 1024;
/** Kept free for what the library writes around a card: addresses, names and ids. Our own choice. */
export const ENVELOPE_BYTES = 3 * 1024;

/**
 * Most buttons of one row; Teams hides what is beyond.
 * @source Microsoft Teams, "Designing Adaptive Cards for your app", anatomy: one to three primary actions, up to six
 */
export const MOST_BUTTONS_IN_A_ROW = 6;
/** Characters of all labels of one row that stand side by side on a phone 320 px wide. Our own choice, seen in a browser. */
export const MOST_ROW_CHARACTERS = 36;
/** Characters that a button takes up besides its label. Our own choice, seen in a browser. */
export const BUTTON_EDGE_CHARACTERS = 5;
/** Longest label of a button that a phone shows whole; a longer one stands above its button too. Our own choice. */
export const MOST_LABEL_CHARACTERS = 30;
/** More answers than this become a list that opens, so that a phone need not scroll past them. Our own choice. */
export const MANY_ANSWERS = 15;
/** Longest word of weight, verdict or progress, which are words of the catalogues. Our own choice. */
export const MOST_CATALOGUE_WORD_CHARACTERS = 80;
/** Longest text that a button may say for a person; a longer one is shown to be typed. Our own choice. */
export const MOST_SAY_CHARACTERS = 2000;
/** Longest fallback text, spoken text and notification line. Our own choice. */
export const MOST_SUMMARY_CHARACTERS = 300;
/** Longest text of a picture for screen readers. Our own choice. */
export const MOST_PICTURE_TEXT_CHARACTERS = 1000;
/** Longest title that stays one heading; the rest follows as text. Our own choice. */
export const MOST_TITLE_CHARACTERS = 200;
/** Longest word of a label, and of a value, that fit side by side on a phone. Our own choice. */
export const MOST_FACT_LABEL_WORD_CHARACTERS = 16;
export const MOST_FACT_VALUE_WORD_CHARACTERS = 12;
/** Letters of the longest words of all columns beside each other that fit a phone 320 px wide. Our own choice. */
export const MOST_TABLE_WORD_CHARACTERS = 26;

/**
 * The length of one activity in the measure of both limits at once, in bytes of the first.
 * The measure of two texts together is never more than the sum of theirs.
 */
export function measureJson(json: string): number {
  const utf16_B = json.length * 2;
  const asUtf8_B = Math.ceil(utf16_B * (MOST_ACTIVITY_BYTES / MOST_ACTIVITY_UTF16_BYTES));
  return Math.max(Buffer.byteLength(json), asUtf8_B);
}
