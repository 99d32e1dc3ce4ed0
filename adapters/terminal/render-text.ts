import type { Block, Button, Card, RowsBlock, TableBlock } from "../../src/messages/card.ts";
import { sketchChart } from "./sketch-chart.ts";
import { makePrintable, wrapText } from "./wrap-text.ts";

const WIDEST = 78;
const INDENT = "  ";

/**
 * A card as plain text for any terminal: no colour, no cursor movement, never wider than `columns`.
 * @param fileHint says how the file of this number is had; left out where it cannot be
 */
export function renderText(card: Card, columns: number, fileHint?: (number: number) => string): string {
  const width = Math.min(WIDEST, columns);
  const letters = letterButtons(card);
  const title = card.verdict ? `[${card.verdict.word}] ${card.title}` : card.title;
  const files = card.blocks.filter((block) => block.kind === "file");
  const hints = new Map(fileHint ? files.map((block, index): [Block, string] => [block, fileHint(index + 1)]) : []);
  const parts = card.blocks.map((block) => [
    ...renderBlock(block, width, letters),
    ...wrapHint(hints.get(block), width),
  ]);
  return [...wrapText(title, width), ...parts.flatMap((lines) => ["", ...lines])].join("\n");
}

function wrapHint(hint: string | undefined, width: number): readonly string[] {
  return hint === undefined ? [] : wrapText(`${INDENT}${hint}`, width, 4);
}

/** Every button of a card with the letter that presses it, in the order in which they are shown. */
export function letterButtons(card: Card): ReadonlyMap<Button, string> {
  const buttons = card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : []));
  return new Map(buttons.map((button, index) => [button, letterAt(index)]));
}

function letterAt(index: number): string {
  const letter = String.fromCharCode("a".charCodeAt(0) + (index % 26));
  return index < 26 ? letter : letterAt(Math.floor(index / 26) - 1) + letter;
}

function renderBlock(block: Block, width: number, letters: ReadonlyMap<Button, string>): readonly string[] {
  switch (block.kind) {
    case "headline":
      return wrapText(block.text, width);
    case "text":
      return wrapText(markTone(block.tone, block.text), width, block.tone === "problem" ? 2 : 0);
    case "rows":
      return renderRows(block, width);
    case "table":
      return renderTable(block, width);
    case "caution":
      return [
        ...wrapText(`! ${block.word.toUpperCase()}: ${block.text}`, width, 2),
        ...(block.show ? wrapText(INDENT + block.show, width, 2) : []),
        ...wrapText(`${INDENT}(${block.cites})`, width, 2),
      ];
    case "question":
      return [
        ...wrapText(block.progress ? `${block.prompt} (${block.progress})` : block.prompt, width),
        ...(block.help ? wrapText(block.help, width) : []),
      ];
    case "buttons":
      return block.buttons.flatMap((button) => wrapText(`${INDENT}${letters.get(button)}) ${button.label}`, width, 5));
    case "form":
      return [
        ...wrapText(block.title, width),
        ...block.fields.flatMap((field) => [
          ...wrapText(
            `${INDENT}${field.fact}=${field.value ?? "…"}   ${field.label}${field.required ? " *" : ""}`,
            width,
            6,
          ),
          ...(field.problem ? wrapText(`${INDENT}! ${field.problem}`, width, 4) : []),
        ]),
      ];
    case "chart":
      return [...wrapText(block.title, width), ...sketchChart(block, width), ...wrapText(block.alt, width)];
    case "progress":
      return wrapText(`${block.text} (${block.done}/${block.total})`, width);
    case "file":
      return wrapText(`${block.text} [${block.file.name}]`, width);
  }
}

function markTone(tone: "plain" | "quiet" | "heading" | "problem", text: string): string {
  if (tone === "problem") return `! ${text}`;
  return tone === "heading" ? `${text}:` : text;
}

function renderRows(block: RowsBlock, width: number): readonly string[] {
  const widest = Math.max(0, ...block.rows.map((row) => makePrintable(row.label).length));
  const labels = Math.min(widest, Math.floor(width * 0.45));
  const rows = block.rows.flatMap(({ label, value, note }) => {
    const said = note ? `${value} (${note})` : value;
    const name = makePrintable(label);
    return wrapText(`${INDENT}${name.padEnd(labels)}  ${said}`, width, 4);
  });
  return block.heading ? [...wrapText(`${block.heading}:`, width), ...rows] : rows;
}

/** A table when it fits; else one small list a row, so that a narrow screen stays readable. */
function renderTable(block: TableBlock, width: number): readonly string[] {
  const cells = [block.columns, ...block.rows].map((row) => row.map(makePrintable));
  const widths = block.columns.map((_, column) => Math.max(...cells.map((row) => row[column]?.length ?? 0)));
  const total = widths.reduce((sum, one) => sum + one + 2, 0);
  const caption = wrapText(block.caption, width);
  if (total > width) return [...caption, ...block.rows.flatMap((row) => renderAsList(block.columns, row, width))];
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join("  ")
      .trimEnd();
  const [head, ...body] = cells.map(line);
  const rule = widths.map((one) => "-".repeat(one)).join("  ");
  return [...caption, head ?? "", rule, ...body];
}

function renderAsList(columns: readonly string[], row: readonly string[], width: number): readonly string[] {
  const [first = "", ...rest] = row;
  const lines = rest.flatMap((cell, index) => wrapText(`${INDENT}${columns[index + 1] ?? ""}: ${cell}`, width, 4));
  return [...wrapText(`- ${first}`, width, 2), ...lines];
}
