import { describe, expect, test } from "vitest";
import { letterButtons, renderText } from "../../adapters/terminal/render-text.ts";
import { wrapText } from "../../adapters/terminal/wrap-text.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

const cards = Object.entries(SAMPLE_CARDS);
// biome-ignore lint/suspicious/noControlCharactersInRegex: these must not be printed
const CONTROL = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/;

describe.each([40, 78, 200])("at %i columns", (columns) => {
  test.each(cards)("no line of %s is wider than the screen", (_, card) => {
    const lines = renderText(card, columns).split("\n");
    expect(lines.filter((line) => [...line].length > Math.min(78, columns))).toEqual([]);
  });

  test.each(cards)("%s prints no control or reordering character", (_, card) => {
    expect(renderText(card, columns)).not.toMatch(CONTROL);
  });
});

test("every word of the texts of a card is printed", () => {
  for (const [name, card] of cards) {
    const printed = squeeze(renderText(card, 78));
    for (const text of textsOf(card)) expect(printed, name).toContain(squeeze(wrapText(text, 78).join(" ")));
  }
});

test("a verdict is a word in front of the title", () => {
  const card: Card = { verdict: { kind: "no", word: "No" }, title: "Room", summary: "", blocks: [] };
  expect(renderText(card, 78)).toBe("[No] Room");
});

test("a severity is a word in capitals", () => {
  const block = { kind: "caution", severity: "stop", word: "Stop", text: "Hot.", cites: "A, 1" } as const;
  expect(renderText({ title: "T", summary: "", blocks: [block] }, 78)).toBe("T\n\n! STOP: Hot.\n  (A, 1)");
});

test("a table that is too wide becomes one list a row", () => {
  const table = {
    kind: "table",
    caption: "C",
    columns: ["Model", "Cost a year"],
    rows: [["M".repeat(30), "$300"]],
  } as const;
  const card: Card = { title: "T", summary: "", blocks: [table] };
  expect(renderText(card, 40)).toBe(`T\n\nC\n- ${"M".repeat(30)}\n  Cost a year: $300`);
});

test("buttons get letters in the order shown, and go on after z", () => {
  const buttons = Array.from({ length: 28 }, (_, index) => ({ label: `${index}`, say: `${index}` }));
  const card: Card = { title: "T", summary: "", blocks: [{ kind: "buttons", buttons }] };
  expect([...letterButtons(card).values()].filter((_, at) => [0, 25, 26, 27].includes(at))).toEqual([
    "a",
    "z",
    "aa",
    "ab",
  ]);
});

function squeeze(text: string): string {
  return text.replace(/\s+/g, "");
}

function textsOf(card: Card): string[] {
  return card.blocks.flatMap(textsOfBlock);
}

function textsOfBlock(block: Block): string[] {
  switch (block.kind) {
    case "headline":
    case "text":
    case "progress":
      return [block.text];
    case "caution":
      return [block.text, block.show ?? "", block.cites];
    case "rows":
      return block.rows.flatMap((row) => [row.label, row.value, row.note ?? ""]);
    case "question":
      return [block.prompt, block.help ?? ""];
    case "buttons":
      return block.buttons.map((button) => button.label);
    case "table":
      return [block.caption, ...block.rows.flat()];
    case "form":
      return block.fields.flatMap((field) => [field.label, field.value ?? "", field.problem ?? ""]);
    case "chart":
      return [block.title, block.alt];
    case "file":
      return [block.text, block.file.name];
  }
}
