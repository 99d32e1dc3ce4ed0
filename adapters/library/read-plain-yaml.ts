type Plain = string | number | readonly Plain[] | { readonly [key: string]: Plain };
interface Line {
  readonly indent: number;
  readonly text: string;
}
interface Cursor {
  readonly lines: Line[];
  at: number;
}

const KEY = /^([a-z][a-z0-9_]*):(?: (.*))?$/;
const NUMBER = /^-?(0|[1-9]\d*)(\.\d+)?$/;
/** Starts with a letter and holds nothing that YAML gives a meaning to. */
const WORDS = /^\p{L}(?!.*(: | #|:$))[^\t]*$/u;
const WORD_OF_LIST = /^\p{L}[^,:#[\]{}"'&*!|>%@`\t]*$/u;
/** Plain words that YAML does not take for text. */
const NOT_TEXT = /^(true|false|null|yes|no|on|off)$/i;

/**
 * Reads the plain part of YAML that the fault knowledge is written in: maps and lists by indentation, one-line maps and
 * lists, text, numbers. It is many times quicker than the whole language, which counts where every start reads some 180
 * files.
 * @param text of the file
 * @returns what the whole language would make of it, or nothing where it needs the whole language
 */
export function readPlainYaml(text: string): unknown {
  const written = text.split("\n").map((line) => line.trimEnd());
  const lines = written.flatMap((line): Line[] => {
    const start = line.trimStart();
    return start === "" || start.startsWith("#") ? [] : [{ indent: line.length - start.length, text: start }];
  });
  const cursor = { lines, at: 0 };
  const value = readBlock(cursor, 0);
  return cursor.at === lines.length ? value : undefined;
}

function readBlock(cursor: Cursor, indent: number): Plain | undefined {
  const first = cursor.lines[cursor.at];
  if (first?.indent !== indent) return undefined;
  return first.text.startsWith("- ") ? readList(cursor, indent) : readMap(cursor, indent);
}

function readMap(cursor: Cursor, indent: number): Plain | undefined {
  const map: Record<string, Plain> = {};
  for (let line = cursor.lines[cursor.at]; line?.indent === indent; line = cursor.lines[cursor.at]) {
    const [, key, rest] = KEY.exec(line.text) ?? [];
    if (key === undefined || Object.hasOwn(map, key)) return undefined;
    cursor.at += 1;
    const value = rest ? readValue(rest) : readBlock(cursor, cursor.lines[cursor.at]?.indent ?? 0);
    if (value === undefined || (!rest && (cursor.lines[cursor.at - 1]?.indent ?? 0) <= indent)) return undefined;
    map[key] = value;
  }
  return map;
}

function readList(cursor: Cursor, indent: number): Plain | undefined {
  const list: Plain[] = [];
  for (let line = cursor.lines[cursor.at]; line?.indent === indent; line = cursor.lines[cursor.at]) {
    if (!line.text.startsWith("- ")) return undefined;
    const text = line.text.slice(2);
    const value = KEY.test(text) ? readMapOfList(cursor, indent + 2, text) : readValue(text);
    if (value === undefined) return undefined;
    if (!KEY.test(text)) cursor.at += 1;
    list.push(value);
  }
  return list;
}

/** The first line of a map in a list stands behind the dash, as if it were indented like the others. */
function readMapOfList(cursor: Cursor, indent: number, text: string): Plain | undefined {
  cursor.lines[cursor.at] = { indent, text };
  return readMap(cursor, indent);
}

function readValue(text: string): Plain | undefined {
  if (text.startsWith('"')) return readQuoted(text);
  if (text.startsWith("[") && text.endsWith("]")) return readParts(text, readWord);
  if (text.startsWith("{") && text.endsWith("}")) return readPairs(text);
  if (NUMBER.test(text)) return Number(text);
  return WORDS.test(text) && !NOT_TEXT.test(text) ? text : undefined;
}

function readQuoted(text: string): string | undefined {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "string" ? value : undefined;
  } catch {
    return undefined;
  }
}

function readParts<T>(text: string, read: (part: string) => T | undefined): readonly T[] | undefined {
  const inside = text.slice(1, -1).trim();
  const parts = inside === "" ? [] : inside.split(",").map((part) => read(part.trim()));
  const good = parts.filter((part) => part !== undefined);
  return good.length === parts.length ? good : undefined;
}

function readPairs(text: string): Plain | undefined {
  const pairs = readParts(text, (part) => {
    const [, key, rest] = KEY.exec(part) ?? [];
    const value = rest === undefined ? undefined : readWord(rest);
    return key === undefined || value === undefined ? undefined : ([key, value] as const);
  });
  const keys = new Set(pairs?.map(([key]) => key));
  return pairs && keys.size === pairs.length ? Object.fromEntries(pairs) : undefined;
}

function readWord(text: string): string | number | undefined {
  if (NUMBER.test(text)) return Number(text);
  return WORD_OF_LIST.test(text) && !NOT_TEXT.test(text) ? text : undefined;
}
