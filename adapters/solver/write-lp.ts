import type { ChoiceModel, Row } from "../../src/ports/solver.ts";

/** Terms on a line: readers of the format limit its length. */
const TERMS_A_LINE = 8;

/** Writes a model in the LP format that mathematical solvers read. Rows without a term must have been dealt with. */
export function writeLp({ choices, rows }: ChoiceModel): string {
  const names = choices.map(({ name }) => name);
  return [
    "Minimize",
    ` cost: ${sum(choices.map(({ name, cost }) => [name, cost]))}`,
    "Subject To",
    ...rows.flatMap(writeRow),
    "Binary",
    ...inLines(names).map((line) => ` ${line}`),
    "End",
  ].join("\n");
}

function writeRow({ terms, min, max }: Row, index: number): readonly string[] {
  const left = sum(terms);
  return [
    ...(min === undefined ? [] : [` low${index}: ${left} >= ${min}`]),
    ...(max === undefined ? [] : [` high${index}: ${left} <= ${max}`]),
  ];
}

function sum(terms: Row["terms"]): string {
  return inLines(terms.map(([name, factor]) => `${factor < 0 ? "-" : "+"} ${Math.abs(factor)} ${name}`)).join("\n ");
}

function inLines(words: readonly string[]): readonly string[] {
  const lines: string[] = [];
  for (let at = 0; at < words.length; at += TERMS_A_LINE) lines.push(words.slice(at, at + TERMS_A_LINE).join(" "));
  return lines;
}
