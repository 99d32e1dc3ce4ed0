import { ANY_NAME, type CellKind, type Column } from "./book-columns.ts";

/** A line of a table as the book's schema takes it: groups inside groups, empty cells left out. */
export type Entry = Readonly<Record<string, unknown>>;

const YES = /^(yes|true|sí|si)$/i;
const NO = /^(no|false)$/i;

/** The columns of a table that are not known, so that a slip of the pen is told once and not for every line. */
export function unknownColumns(names: readonly string[], columns: readonly Column[]): readonly string[] {
  return names.filter((name) => findColumn(name, columns) === undefined);
}

/**
 * Puts the cells of one line where their columns' names say.
 * @param cells text by column name; a cell of blanks counts as left out
 * @param columns the columns of the book
 * @returns the entry; what a cell holds is left to the schema to judge, in its own words
 */
export function readCells(cells: Readonly<Record<string, string>>, columns: readonly Column[]): Entry {
  const entry: Record<string, unknown> = {};
  for (const [name, text] of Object.entries(cells)) {
    const column = findColumn(name, columns);
    if (column === undefined || text.trim() === "") continue;
    place(entry, pathOf(name, column), readCell(text.trim(), column.holds));
  }
  return entry;
}

function findColumn(name: string, columns: readonly Column[]): Column | undefined {
  return columns.find((column) => {
    if (!column.name.endsWith(`.${ANY_NAME}`)) return column.name === name;
    const group = column.name.slice(0, -ANY_NAME.length);
    return name.startsWith(group) && name.length > group.length;
  });
}

/** A free name may hold dots of its own, so only the group before it is taken apart. */
function pathOf(name: string, column: Column): readonly string[] {
  if (!column.name.endsWith(`.${ANY_NAME}`)) return name.split(".");
  const group = column.name.slice(0, -ANY_NAME.length - 1);
  return [...group.split("."), name.slice(group.length + 1)];
}

function readCell(text: string, holds: CellKind): unknown {
  if (holds === "texts") return parts(text);
  if (holds === "numbers") return parts(text).map(readNumber);
  if (holds === "number") return readNumber(text);
  if (holds === "flag" && YES.test(text)) return true;
  return holds === "flag" && NO.test(text) ? false : text;
}

function parts(text: string): readonly string[] {
  return text.split(";").map((part) => part.trim());
}

/** A cell that is no number stays text, so that the schema says what to write instead. */
function readNumber(text: string): number | string {
  const value = Number(text);
  return text === "" || !Number.isFinite(value) ? text : value;
}

function place(entry: Record<string, unknown>, [first = "", ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    entry[first] = value;
    return;
  }
  const group = entry[first];
  const inside: Record<string, unknown> = typeof group === "object" ? { ...group } : {};
  place(inside, rest, value);
  entry[first] = inside;
}
