import type { KnownBlock } from "@slack/types";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blocksAsText } from "../../adapters/slack/blocks-as-text.ts";
import { readButtonValue, writeButtonValue } from "../../adapters/slack/button-value.ts";
import { renderCard } from "../../adapters/slack/render-card.ts";
import { renderModal } from "../../adapters/slack/render-modal.ts";
import { cleanText, unescapeText } from "../../adapters/slack/slack-text.ts";
import type { Block, Card, FormBlock } from "../../src/messages/card.ts";
import { NASTY_TEXTS, SAMPLE_CARDS } from "../support/sample-cards.ts";
import { judgeMessage, judgeModal } from "./block-kit-judge.ts";
import { anyCard } from "./random-cards.ts";

const messagesOf = (card: Card) => renderCard(card).messages;
const blocksOf = (card: Card): readonly KnownBlock[] => messagesOf(card).flatMap((message) => message.blocks);
const oneBlock = (block: Block): Card => ({ title: "T", summary: "S", blocks: [block] });
const formOf = (card: Card): FormBlock | undefined => card.blocks.find((block) => block.kind === "form");

/** Everything that can be read in these blocks, as it looks on the screen. */
function readBlocks(blocks: readonly KnownBlock[]): string {
  const texts: string[] = [];
  JSON.stringify(blocks, (key, value: unknown) => {
    if (typeof value === "object" && value !== null && "text" in value && typeof value.text === "string") {
      const isData = "type" in value && (value.type === "text" || value.type === "raw_text");
      texts.push(isData ? value.text : unescapeText(value.text));
    }
    return key === "value" ? undefined : value;
  });
  return texts.join("\n");
}

describe("the judge", () => {
  const good = { text: "t", blocks: [{ type: "header", text: { type: "plain_text", text: "a" } }] };
  const inActions = (element: object) => ({ text: "t", blocks: [{ type: "actions", elements: [element] }] });
  const inInput = (element: object) => ({
    text: "t",
    blocks: [{ type: "input", label: { type: "plain_text", text: "a" }, block_id: "b", element }],
  });
  const FAULTY: readonly (readonly [name: string, message: unknown])[] = [
    ["51 blocks", { text: "t", blocks: Array.from({ length: 51 }, () => good.blocks[0]) }],
    [
      "a header of 151",
      { text: "t", blocks: [{ type: "header", text: { type: "plain_text", text: "a".repeat(151) } }] },
    ],
    ["a live mention", { text: "<!channel>", blocks: [] }],
    ["a cut entity", { text: "a &am", blocks: [] }],
    ["mrkdwn", { text: "t", blocks: [{ type: "context", elements: [{ type: "mrkdwn", text: "a" }] }] }],
    ["an unknown block", { text: "t", blocks: [{ type: "wobble" }] }],
    ["26 buttons", { text: "t", blocks: [{ type: "actions", elements: Array.from({ length: 26 }, () => ({})) }] }],
    ["an empty cell", { text: "t", blocks: [{ type: "table", rows: [[{ type: "raw_text", text: "" }]] }] }],
    ["no text", { text: "", blocks: [] }],
    ["a day that is none", inActions({ type: "datepicker", action_id: "a", initial_date: "2026-02-30" })],
    [
      "a number above its range",
      inInput({ type: "number_input", is_decimal_allowed: false, max_value: "3", initial_value: "4" }),
    ],
    [
      "a range with its ends in the wrong order",
      inInput({ type: "number_input", is_decimal_allowed: true, min_value: "3", max_value: "2" }),
    ],
    ["a number field that does not say whether it takes decimals", inInput({ type: "number_input" })],
    ["an input not yet known", inInput({ type: "wobble_input" })],
    [
      "a picture from outside",
      { text: "t", blocks: [{ type: "image", image_url: "https://a.test/a.png", alt_text: "a" }] },
    ],
    [
      "a picture without words",
      { text: "t", blocks: [{ type: "image", slack_file: { id: "F012345678" }, alt_text: "" }] },
    ],
  ];
  test.each(FAULTY)("refuses %s", (_, message) => {
    expect(judgeMessage(message)).not.toEqual([]);
  });
  test("lets a good message pass", () => {
    expect(judgeMessage(good)).toEqual([]);
  });
});

describe("every sample card", () => {
  test.each(Object.entries(SAMPLE_CARDS))("%s keeps all limits", (_, card) => {
    const { messages, refused } = renderCard(card);
    expect(messages.flatMap(judgeMessage)).toEqual([]);
    expect(refused).toEqual([]);
    expect(messages.length).toBeLessThanOrEqual(10);
  });
  test.each(Object.entries(SAMPLE_CARDS).filter(([, card]) => formOf(card) !== undefined))(
    "%s opens as a modal that keeps all limits",
    (_, card) => {
      const form = formOf(card);
      expect(form && judgeModal(renderModal(card, form, "{}"))).toEqual([]);
    },
  );
});

test("no random card breaks a limit, as messages or as a modal", () => {
  fc.assert(
    fc.property(anyCard, (card) => {
      const { messages } = renderCard(card);
      expect(messages.flatMap(judgeMessage)).toEqual([]);
      expect(messages.length).toBeLessThanOrEqual(10);
      const form = formOf(card);
      if (form) expect(judgeModal(renderModal(card, form, "{}"))).toEqual([]);
    }),
    { numRuns: 100 },
  );
});

test("a refused message as plain text is escaped and within what Slack takes", () => {
  fc.assert(
    fc.property(anyCard, (card) => {
      for (const { blocks } of messagesOf(card)) {
        const text = blocksAsText(blocks);
        expect(text.length).toBeGreaterThan(0);
        expect(judgeMessage({ text, blocks: [] })).toEqual([]);
      }
    }),
    { numRuns: 40 },
  );
});

test("everything of an answer is said: headline, rows, notes, caution, table, buttons", () => {
  const { answer } = SAMPLE_CARDS;
  const said = readBlocks(answer ? blocksOf(answer) : []);
  for (const words of [
    "▲ Check first: Expansion tank",
    "4.5 gal expansion tank, precharged to 60 psi",
    "Growth of the water: \n1.3 gal",
    "What I went by",
    "150 psi\n (assumed)",
    "▲ Must",
    "Where a check valve",
    "→ Look for a check valve",
    "section 1.2.3 (from memory)",
    "Stock sizes near the answer",
    "Acceptance",
    "8.5 gal",
    "The authority having jurisdiction decides.",
    "How?",
    "At 150 °F",
  ])
    expect(said).toContain(words);
});

test.each(Object.entries(NASTY_TEXTS).filter(([, text]) => text.length < 1_000))(
  "the nasty text %s reads as it was typed, in rich text and in grey text",
  (_, text) => {
    const card: Card = {
      title: "T",
      summary: text,
      blocks: [
        { kind: "text", tone: "plain", text },
        { kind: "text", tone: "quiet", text },
      ],
    };
    const [, plain, quiet] = messagesOf(card)[0].blocks;
    expect([plain, quiet].map((block) => (block ? readBlocks([block]) : ""))).toEqual([
      cleanText(text).trim(),
      cleanText(text).trim(),
    ]);
    expect(unescapeText(messagesOf(card)[0].text)).toBe(cleanText(text));
  },
);

const SHAPES: readonly (readonly [kind: "good" | "caution" | "no" | "info", header: string])[] = [
  ["good", "✓ Word: T"],
  ["caution", "▲ Word: T"],
  ["no", "✕ Word: T"],
  ["info", "○ Word: T"],
];
test.each(SHAPES)("verdict %s is a word and a shape: %s", (kind, header) => {
  const [first] = blocksOf({ title: "T", summary: "S", blocks: [], verdict: { kind, word: "Word" } });
  expect(first).toEqual({ type: "header", text: { type: "plain_text", text: header, emoji: false } });
});

test("the text of the first message is the summary, of the others the title and their number", () => {
  const { big } = SAMPLE_CARDS;
  const texts = big ? messagesOf(big).map((message) => message.text) : [];
  expect(texts[0]).toBe("A very long card.");
  expect(texts[1]).toBe(`Everything I can work out (2/${texts.length})`);
});

test("a caution of 9,000 characters is spread, not cut", () => {
  const text = "Turn the power off first. ".repeat(350).trim();
  const card = oneBlock({ kind: "caution", severity: "stop", word: "Stop", text, cites: "Invented code" });
  const solid = (said: string) => said.replace(/\s+/g, "");
  expect(solid(readBlocks(blocksOf(card)))).toContain(solid(text));
});

test("a table of 150 rows becomes tables of at most 100 with the header on each, one a message", () => {
  const rows = Array.from({ length: 150 }, (_, i) => [String(i), "x"]);
  const messages = messagesOf(oneBlock({ kind: "table", caption: "C", columns: ["A", "B"], rows }));
  const tables = messages.flatMap(({ blocks }) => blocks.filter((block) => block.type === "table"));
  expect(messages.length).toBe(tables.length);
  expect(tables.reduce((sum, table) => sum + table.rows.length - 1, 0)).toBe(150);
  for (const table of tables) expect(table.rows[0]).toEqual(["A", "B"].map((text) => ({ type: "raw_text", text })));
});

test("a table of 24 columns repeats its first column beside the last ones", () => {
  const columns = Array.from({ length: 24 }, (_, i) => `c${i}`);
  const tables = blocksOf(oneBlock({ kind: "table", caption: "C", columns, rows: [columns] })).filter(
    (block) => block.type === "table",
  );
  expect(tables.map((table) => table.rows[0]?.length)).toEqual([20, 5]);
  expect(tables[1]?.rows[0]?.[0]).toEqual({ type: "raw_text", text: "c0" });
});

test("an empty cell is a dash", () => {
  const [, , table] = blocksOf(oneBlock({ kind: "table", caption: "C", columns: ["A", "B"], rows: [["1"]] }));
  expect(table).toMatchObject({ rows: [{}, [{ text: "1" }, { text: "–" }]] });
});

test("progress is a bar and figures", () => {
  const [, bar] = blocksOf(oneBlock({ kind: "progress", text: "Sampled days", done: 50, total: 200 }));
  expect(bar && readBlocks([bar])).toBe("▓▓▓░░░░░░░ 50/200 Sampled days");
});

test("a form in a message is a button that asks for the form again", () => {
  const { form } = SAMPLE_CARDS;
  const buttons = form ? blocksOf(form).filter((block) => block.type === "actions") : [];
  expect(buttons).toMatchObject([{ elements: [{ text: { text: "Electric circuit" }, style: "primary" }] }]);
  expect(JSON.stringify(buttons)).toContain(JSON.stringify(JSON.stringify({ say: "form circuit" })));
});

test("a form as a modal has one input a fact, with what is known, chosen and wrong", () => {
  const { form: card } = SAMPLE_CARDS;
  const form = card && formOf(card);
  const view = form && renderModal(card, form, "{}");
  expect(view).toMatchObject({ title: { text: "Electric circuit" }, submit: { text: "Work it out" } });
  const inputs = view?.blocks.filter((block) => block.type === "input");
  expect(inputs).toMatchObject([
    { block_id: "element", optional: false, element: { type: "plain_text_input", placeholder: { text: "4500 W" } } },
    { block_id: "supply", element: { type: "radio_buttons", initial_option: { value: "240" } } },
    { block_id: "run", optional: true, element: { type: "plain_text_input", initial_value: "60 apples" } },
    { block_id: "due", element: { type: "datepicker", initial_date: "2026-12-01" } },
    {
      block_id: "circuits",
      element: { type: "number_input", is_decimal_allowed: false, min_value: "0", max_value: "42", initial_value: "2" },
    },
    { block_id: "conductor", element: { type: "static_select" } },
  ]);
  expect(JSON.stringify(view?.blocks)).toContain("▲ I could not read");
});

test.each([
  ["due", "tomorrow"],
  ["due", "2026-02-30"],
  ["circuits", "two"],
  ["circuits", "43"],
  ["circuits", "1.5"],
])("what was typed for %s and is no such thing (%s) stays where it can be put right", (fact, value) => {
  const { form: card } = SAMPLE_CARDS;
  const form = card && formOf(card);
  const fields = form?.fields.map((field) => (field.fact === fact ? { ...field, value } : field)) ?? [];
  const view = card && form && renderModal(card, { ...form, fields }, "{}");
  expect(judgeModal(view)).toEqual([]);
  const input = view?.blocks.find(({ block_id: id }) => id === fact);
  expect(input).toMatchObject({ element: { type: "plain_text_input", initial_value: value } });
});

test("a question for a day has a calendar that answers it", () => {
  const { dayQuestion } = SAMPLE_CARDS;
  const [, pick] = dayQuestion
    ? blocksOf(dayQuestion).filter(({ type }) => type !== "rich_text" && type !== "context")
    : [];
  expect(pick).toEqual({
    type: "actions",
    block_id: '{"walk":"w4","fact":"day"}',
    elements: [{ type: "datepicker", action_id: "answer_0", initial_date: "2026-12-01" }],
  });
});

describe("a button's value", () => {
  test("holds what to say and the question it is for", () => {
    const aim = { walk: "w3", fact: "cold" };
    const value = writeButtonValue({ say: "50F", aim });
    expect(value).toBe('{"say":"50F","aim":{"walk":"w3","fact":"cold"}}');
    expect(readButtonValue(value)).toEqual({ say: "50F", aim });
  });
  test("comes back unchanged, whatever is in it", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), fc.string(), (say, walk) => {
        const value = writeButtonValue({ say, aim: { walk, fact: "a" } });
        expect(value).not.toMatch(/[&<>]/);
        expect(readButtonValue(value)).toEqual({ say, aim: { walk, fact: "a" } });
      }),
    );
  });
  const frame = '{"say":""}'.length;
  test("of exactly 2,000 characters is taken", () => {
    expect(writeButtonValue({ say: "x".repeat(2_000 - frame) })).toHaveLength(2_000);
  });
  test("of 2,001 characters is refused, and the card goes without that button and names it", () => {
    const long = { label: "Long", say: "x".repeat(2_001 - frame) };
    expect(writeButtonValue(long)).toBeUndefined();
    const { messages, refused } = renderCard(
      oneBlock({ kind: "buttons", buttons: [{ label: "Short", say: "back" }, long] }),
    );
    expect(refused).toEqual([long]);
    expect(readBlocks(messages[0].blocks)).toBe("T\nShort");
  });
  test.each([undefined, "", "not json", "[]", "null", '{"say":1}', "{}"])("%s is none of ours", (value) => {
    expect(readButtonValue(value)).toBeUndefined();
  });
});

test("blocks as text say the same, with a button's text instead of the button", () => {
  const { question } = SAMPLE_CARDS;
  expect(blocksAsText(question ? blocksOf(question) : []).split("\n")).toEqual([
    "Expansion tank",
    "How cold is the incoming water?",
    "A thermometer under the nearest cold tap after two minutes.",
    "2 of 5",
    "› 40F",
    "› 50F",
    "› 60F",
    "› skip",
    "› back",
    "› stop",
  ]);
});
