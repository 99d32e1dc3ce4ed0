/** Characters that phones and word processors put where a plain one was meant, and that Unicode would fold wrongly. */
const PLAIN: Readonly<Record<string, string>> = {
  "‘": "'",
  "’": "'",
  "‚": "'",
  "‛": "'",
  "′": "'",
  "‵": "'",
  ʹ: "'",
  ʼ: "'",
  ʻ: "'",
  "`": "'",
  "´": "'",
  "“": '"',
  "”": '"',
  "„": '"',
  "‟": '"',
  "″": '"',
  "‶": '"',
  "‴": "'\"",
  ʺ: '"',
  "«": '"',
  "»": '"',
  º: "°",
  "˚": "°",
  "×": "x",
  "✕": "x",
  "✖": "x",
  "⨯": "x",
  "‐": "-",
  "‑": "-",
  "‒": "-",
  "–": "-",
  "—": "-",
  "―": "-",
  "−": "-",
  "⁄": "/",
  "∕": "/",
  "∙": "·",
  "⋅": "·",
  "，": ",",
};
const TO_PLAIN = new RegExp(`[${Object.keys(PLAIN).join("")}]`, "gu");
/** Characters that are not seen: controls, zero-width and direction marks, variation selectors, broken halves. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Cs}\p{Co}]|[\uFE00-\uFE0F]|[\u115F\u1160\u3164\uFFA0]/gu;
const LINE_ENDS = /\r\n?|[\u2028\u2029\u0085\v\f]/gu;

/**
 * Makes text from any keyboard plain: straight quotes, ordinary spaces, fractions as 1/2, ° and x, nothing unseen.
 * Line ends stay, because they part sentences.
 */
export function normaliseText(text: string): string {
  const lines = text.replace(LINE_ENDS, "\n").split("\n").map(normaliseLine);
  return lines.filter((line) => line !== "").join("\n");
}

function normaliseLine(line: string): string {
  const seen = toPlain(line.replace(/\t/g, " ").replace(UNSEEN, ""));
  // A superscript after a letter is the 3 of ft³; after a digit it is a power, and 7² must not turn into 72.
  const powers = seen.replace(/(\d)([²³])/gu, "$1^$2");
  // ½ is written as digits, fraction slash, digits; a number before it keeps its distance: 1½ is 1 1/2, not 11/2.
  const parted = powers.replace(/(\d)(?=[¼-¾⅐-⅞])/gu, "$1 ");
  const folded = toPlain(parted.normalize("NFKC").replace(UNSEEN, ""));
  return folded.replace(/''/g, '"').replace(/ {2,}/g, " ").trim();
}

function toPlain(text: string): string {
  return text.replace(TO_PLAIN, (character) => PLAIN[character] ?? character);
}
