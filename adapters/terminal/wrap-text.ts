/** Characters that move the cursor, ring the bell or reverse the reading order must never reach a terminal. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are exactly what is removed here
const UNPRINTABLE = /[\u0000-\u0008\u000b-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** Text that is safe to print: no control characters, tabs as spaces. */
export function makePrintable(text: string): string {
  return text.replace(/\r\n?/g, "\n").replace(/\t/g, "  ").replace(UNPRINTABLE, "");
}

/**
 * Breaks text into lines no longer than `columns`, at spaces where there are any.
 * @param columns width [characters], at least 20
 * @param hang spaces in front of every line after the first
 */
export function wrapText(text: string, columns: number, hang = 0): readonly string[] {
  return makePrintable(text)
    .split("\n")
    .flatMap((line) => wrapLine(line, Math.max(20, columns), hang));
}

function wrapLine(line: string, columns: number, hang: number): string[] {
  const indent = /^ */.exec(line)?.[0] ?? "";
  const lines: string[] = [];
  let current = indent;
  let isFresh = true;
  for (const word of line
    .trimStart()
    .split(" ")
    .flatMap((part) => cutLongWord(part, columns - hang))) {
    const joined = isFresh ? current + word : `${current} ${word}`;
    if (isFresh || joined.length <= columns) {
      current = joined;
    } else {
      lines.push(current);
      current = " ".repeat(hang) + word;
    }
    isFresh = false;
  }
  return [...lines, current];
}

function cutLongWord(word: string, columns: number): string[] {
  const characters = [...word];
  if (characters.length <= columns) return [word];
  const parts: string[] = [];
  for (let at = 0; at < characters.length; at += columns) parts.push(characters.slice(at, at + columns).join(""));
  return parts;
}
