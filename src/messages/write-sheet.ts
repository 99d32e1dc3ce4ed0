import type { Paper } from "../jobs/job-act.ts";

type Sheet = Pick<Extract<Paper, { readonly kind: "sheet" }>, "columns" | "rows">;

/** By this a spreadsheet program knows that the file is UTF-8. */
const BYTE_ORDER_MARK = "\uFEFF";
const LINE_END = "\r\n";
/** What a spreadsheet program takes for the beginning of a formula. @source OWASP, "CSV Injection" */
const STARTS_FORMULA = /^[\s\u200B-\u200F\u202A-\u202E\u2060-\u2069\uFEFF]*[=+\-@\uFF1D\uFF0B\uFF0D\uFF20]|^[\t\r\n]/;
const IS_NUMBER = /^-?\d+(\.\d+)?$/;

/**
 * Rows as a file for spreadsheet programs. Numbers stay numbers; any other cell that a program would take for a formula
 * begins with an apostrophe, so that it is read as words.
 * @source RFC 4180, section 2 (lines, quotes)
 */
export function writeSheet({ columns, rows }: Sheet): string {
  const lines = [columns, ...rows].map((cells) => cells.map(writeCell).join(","));
  return `${BYTE_ORDER_MARK}${lines.join(LINE_END)}${LINE_END}`;
}

function writeCell(cell: string): string {
  const harmless = !IS_NUMBER.test(cell) && STARTS_FORMULA.test(cell) ? `'${cell}` : cell;
  return /[",\r\n]/.test(harmless) ? `"${harmless.replaceAll('"', '""')}"` : harmless;
}
