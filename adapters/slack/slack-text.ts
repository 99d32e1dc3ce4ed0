const ELLIPSIS = "…";
/** Where Slack refuses an empty text. */
const NOTHING = "–";
/** One grapheme of more than this many characters is cut inside: nobody writes such a one, but anybody can send it. */
const LONGEST_GRAPHEME = 64;

const LINE_ENDS = /\r\n?/g;
const LONE_SURROGATES = /\p{Cs}/gu;
/** All control characters but the line feed. */
const CONTROLS = /[^\P{Cc}\n]/gu;
/** Characters that turn the reading direction of everything after them; single marks and joiners stay. */
const DIRECTION_OVERRIDES = /[\u202A-\u202E\u2066-\u2069]/gu;

const graphemes = new Intl.Segmenter("en", { granularity: "grapheme" });

/** Drops what could garble a message: control characters, direction overrides, halves of characters. */
export function cleanText(text: string): string {
  return text
    .replace(LINE_ENDS, "\n")
    .replaceAll("\t", " ")
    .replace(LONE_SURROGATES, "\uFFFD")
    .replace(CONTROLS, "")
    .replace(DIRECTION_OVERRIDES, "");
}

/** Escapes for text objects and for the text of a message, which Slack decodes once. Never apply it twice. */
export function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** Undoes `escapeText`: what a person typed as Slack hands it over. */
export function unescapeText(text: string): string {
  return text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
}

/**
 * Text for a text object (plain_text, mrkdwn) or a message: clean, escaped once and cut to fit, never inside an entity
 * or a character.
 * @param most longest result [UTF-16 characters], >= 5
 */
export function fitEscaped(text: string, most: number): string {
  return cutToFit(text, most, true);
}

/**
 * Text for fields that Slack takes as data and does not decode (rich_text and table cells, input values): clean and
 * cut to fit, not escaped.
 * @param most longest result [UTF-16 characters], >= 5
 */
export function fitRaw(text: string, most: number): string {
  return cutToFit(text, most, false);
}

function cutToFit(text: string, most: number, isEscaped: boolean): string {
  const clean = cleanText(text);
  if (clean.trim() === "") return NOTHING;
  const encode = isEscaped ? escapeText : (part: string) => part;
  if (roomEnd(clean, 0, most, isEscaped) === clean.length) return encode(clean);
  const end = boundaryBefore(clean, 0, roomEnd(clean, 0, most - ELLIPSIS.length, isEscaped));
  return encode(clean.slice(0, end).trimEnd()) + ELLIPSIS;
}

/**
 * Cuts a text into clean, unescaped pieces, at a line end or a space where there is one in the last half of a piece.
 * @param most longest piece [UTF-16 characters], >= 5; counted as escaped when `isEscapedLater`
 */
export function splitText(text: string, most: number, isEscapedLater: boolean): readonly string[] {
  const clean = cleanText(text).trim();
  if (clean === "") return [NOTHING];
  const pieces: string[] = [];
  let from = 0;
  while (from < clean.length) {
    const end = roomEnd(clean, from, most, isEscapedLater);
    const cut = end === clean.length ? end : breakPoint(clean, from, boundaryBefore(clean, from, end));
    pieces.push(clean.slice(from, cut).trim());
    from = cut;
  }
  return pieces.filter((piece) => piece !== "");
}

/** Where the characters from `from` on have filled `most`. */
function roomEnd(text: string, from: number, most: number, isEscaped: boolean): number {
  let left = most;
  let end = from;
  while (end < text.length) {
    left -= isEscaped ? (ESCAPED_LENGTH[text.charAt(end)] ?? 1) : 1;
    if (left < 0) return end;
    end += 1;
  }
  return end;
}
const ESCAPED_LENGTH: Readonly<Record<string, number>> = { "&": 5, "<": 4, ">": 4 };

/** The last place at or before `end` that is not inside a character as people see them. */
function boundaryBefore(text: string, from: number, end: number): number {
  const { index } = graphemes.segment(text.slice(from, end + LONGEST_GRAPHEME)).containing(end - from) ?? { index: 0 };
  const start = from + index;
  if (start > from && end - start <= LONGEST_GRAPHEME) return start;
  return isLowSurrogate(text.charCodeAt(end)) ? end - 1 : end;
}

function isLowSurrogate(unit: number): boolean {
  return unit >= 0xdc00 && unit <= 0xdfff;
}

function breakPoint(text: string, from: number, end: number): number {
  const half = from + (end - from) / 2;
  const line = text.lastIndexOf("\n", end);
  if (line > half) return line;
  const space = text.lastIndexOf(" ", end);
  return space > half ? space : end;
}
