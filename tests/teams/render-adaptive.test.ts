import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { AdaptiveCard } from "../../adapters/teams/adaptive-card.ts";
import { MOST_ACTIVITY_BYTES, MOST_ACTIVITY_UTF16_BYTES } from "../../adapters/teams/limits.ts";
import type { CardMessage } from "../../adapters/teams/port.ts";
import { renderAdaptive } from "../../adapters/teams/render-adaptive.ts";
import { readSubmit } from "../../adapters/teams/submit-data.ts";
import type { Card } from "../../src/messages/card.ts";
import { cardFullOf, NASTY_TEXTS, SAMPLE_CARDS } from "../support/sample-cards.ts";
import { CardJudge } from "./card-judge.ts";
import { anyCard } from "./random-cards.ts";

let judge: CardJudge;
beforeAll(async () => {
  judge = await CardJudge.start();
});
afterAll(async () => {
  await judge.stop();
});

const SAMPLES = Object.entries(SAMPLE_CARDS).map(([name, card]) => ({ name, card }));
const render = (card: Card) => renderAdaptive(card, { language: "en" });
const ENVELOPE = {
  type: "message",
  channelId: "msteams",
  from: { id: "28:11111111-2222-4333-8444-555555555555", name: "n".repeat(60) },
  recipient: { id: `29:${"r".repeat(60)}`, name: "n".repeat(200), aadObjectId: "a".repeat(36) },
  conversation: { id: "c".repeat(200), tenantId: "t".repeat(36), conversationType: "groupChat", isGroup: true },
  replyToId: "1".repeat(40),
};
/** The activity as it goes out, with an envelope as long as they get. */
function activityOf({ card, summary }: CardMessage): string {
  const attachments = [{ contentType: "application/vnd.microsoft.card.adaptive", content: card }];
  return JSON.stringify({ ...ENVELOPE, summary, attachments });
}
/** All messages of a card of usual size; of one with dozens of messages that look alike, some from start to end. */
function everyFewOf(messages: readonly CardMessage[]): readonly CardMessage[] {
  const step = Math.ceil(messages.length / 8);
  return messages.filter((_, index) => index % step === 0);
}
/** Every string that a person may see, anywhere in a card. */
function stringsIn(value: unknown): string[] {
  if (typeof value === "string") return [value];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => (key === "data" ? [] : stringsIn(inner)));
}
/** A text as it should be seen: without what is invisible, spaces and breaks aside. */
function visible(text: string): string {
  return text
    .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, "\uFFFD")
    .replace(/[\p{Cc}\s\u200B\u2060\uFEFF\u202A-\u202E\u2066-\u2069\u200E\u200F]/gu, "");
}

describe.each([320, 640])("at %i px", (width) => {
  test.each(SAMPLES)(
    "the official renderer has nothing to say against $name, and nothing is cut off",
    async ({ card }) => {
      for (const message of everyFewOf(render(card))) {
        const { complaints, unknownProperties, cutOff, height } = await judge.judge(message.card, width);
        expect({ complaints, unknownProperties, cutOff }).toEqual({
          complaints: [],
          unknownProperties: [],
          cutOff: [],
        });
        expect(height).toBeGreaterThan(20);
      }
    },
  );
});

test("the judge refuses what it must: an unknown element, a misspelt property, a wrong colour, and what sticks out", async () => {
  const [{ card }] = render(SAMPLE_CARDS["bare"] ?? { title: "", summary: "", blocks: [] });
  const bad = (body: object) => JSON.parse(JSON.stringify({ ...card, body: [body] }));
  const word = { type: "RichTextBlock", inlines: [{ type: "TextRun", text: "w".repeat(100) }] };
  const judged = await Promise.all([
    judge.judge(bad({ type: "Wobble" }), 320),
    judge.judge(bad({ type: "TextBlock", text: "a", colour: "good" }), 320),
    judge.judge(bad({ type: "TextBlock", text: "a", color: "gigantic" }), 320),
    judge.judge(bad(word), 320),
    judge.judge(bad({ type: "Input.Text", label: "a" }), 320),
  ]);
  expect(judged.map(({ complaints }) => complaints.length)).toEqual([1, 0, 1, 0, 1]);
  expect(judged.map(({ unknownProperties }) => unknownProperties.length)).toEqual([1, 1, 0, 0, 0]);
  expect(judged[3]?.cutOff.length).toBeGreaterThan(0);
});

describe.each(Object.entries(NASTY_TEXTS).filter(([, text]) => text.length < 1_000))("the text %s", (_, text) => {
  test("is seen as it was typed, and nothing of it goes through Markdown", async () => {
    const messages = render(cardFullOf(text));
    const judged = await Promise.all(messages.map(({ card }) => judge.judge(card, 640)));
    for (const { markdownTexts } of judged)
      for (const given of markdownTexts) expect(given).not.toMatch(/[*_[\]\\`~#<>|&]/);
    const seen = visible(judged.map((one) => one.text).join(""));
    const lines = text
      .split(/[\r\n]+/)
      .map(visible)
      .filter((line) => line !== "");
    // Verdict, title, headline, four texts, heading, row with note, table, caution, question, fields and chart at the least.
    for (const line of lines) expect(seen.split(line).length - 1).toBeGreaterThanOrEqual(20);
  });
});

test("a text that looks like a date for cards stays a text", async () => {
  const text = "{{DATE(2026-01-01T00:00:00Z,SHORT)}}";
  const [{ card }] = render({ title: text, summary: "s", blocks: [{ kind: "text", tone: "plain", text }] });
  expect(visible((await judge.judge(card, 640)).text)).toBe(text + text);
  // Without the guard the official renderer makes a date of it.
  const unguarded = JSON.parse(JSON.stringify(card).replace(/[\u2060\u200B]/g, ""));
  expect((await judge.judge(unguarded, 640)).text).not.toContain("DATE");
});

test("no markup of a person becomes an element of the page", async () => {
  for (const { card } of render(cardFullOf(NASTY_TEXTS["html"] ?? ""))) {
    await judge.judge(card, 640);
    const page = await judge.page(640);
    expect(await page.locator("#card img, #card script").count()).toBe(0);
  }
});

test("verdict and caution are told by a shape and a word, each of its own", () => {
  const verdicts = (["good", "caution", "no", "info"] as const).map((kind) =>
    stringsIn(render({ title: "", summary: "s", verdict: { kind, word: "Word" }, blocks: [] })[0].card.body).find(
      (text) => text.endsWith("Word"),
    ),
  );
  expect(verdicts).toEqual(["✓ Word", "▲ Word", "✕ Word", "● Word"]);
  const cautions = (["stop", "must", "should", "note"] as const).map((severity) =>
    stringsIn(
      render({
        title: "",
        summary: "s",
        blocks: [{ kind: "caution", severity, word: "Word", text: "t", cites: "c" }],
      })[0].card.body,
    ).find((text) => text.endsWith("Word")),
  );
  expect(cautions).toEqual(["■ Word", "▲ Word", "◆ Word", "○ Word"]);
});

test("the summary stands for the card where it cannot be shown or is read aloud, and the language is named", () => {
  const card: Card = { title: "Mix", summary: "Good: 71 % <hot> & cold", blocks: [] };
  const [{ card: adaptive, summary }] = renderAdaptive(card, { language: "es" });
  expect(adaptive).toMatchObject({ version: "1.5", lang: "es", fallbackText: card.summary });
  expect(adaptive.speak).toBe("Good: 71 %  hot    cold");
  expect(summary).toBe(card.summary);
});

describe("a form", () => {
  const form = SAMPLE_CARDS["form"] ?? { title: "", summary: "", blocks: [] };
  const [{ card }] = render(form);

  test("is held back while a needed field is empty, with the hint beside it", async () => {
    expect(await judge.press(card, "Work it out")).toBeUndefined();
    const page = await judge.page(320);
    expect(await page.locator("#card").textContent()).toContain("▲ On the plate by the lower cover.");
  });

  test("sends what stands in each field", async () => {
    const sent = await judge.press(card, "Work it out", { "Element power": "4500 W", Conductor: "10 AWG copper" });
    expect(readSubmit(sent)).toEqual({
      kind: "form",
      topic: "circuit",
      fields: { element: "4500 W", supply: "240", run: "60 apples", due: "2026-12-01", circuits: "2", conductor: "10" },
      ask: { title: "Electric circuit for the water heater" },
    });
  });
});

describe("a button", () => {
  const [{ card }] = render(SAMPLE_CARDS["question"] ?? { title: "", summary: "", blocks: [] });

  test.each([
    {
      label: "50 °F",
      sent: {
        kind: "button",
        say: "50F",
        label: "50 °F",
        aim: { walk: "w3", fact: "cold" },
        ask: { title: "How cold is the incoming water?" },
      },
    },
    { label: "Stop", sent: { kind: "button", say: "stop", label: "Stop" } },
  ])("$label sends what could have been typed", async ({ label, sent }) => {
    expect(readSubmit(await judge.press(card, label))).toEqual(sent);
  });

  test("of a card with a form does not wait for its fields", async () => {
    const blocks = [
      ...(SAMPLE_CARDS["form"]?.blocks ?? []),
      { kind: "buttons", buttons: [{ label: "Stop", say: "stop" }] } as const,
    ];
    const [{ card: both }] = render({ title: "t", summary: "s", blocks });
    expect(readSubmit(await judge.press(both, "Stop"))).toEqual({ kind: "button", say: "stop", label: "Stop" });
  });

  test("with a long label shows the whole of it above", async () => {
    const label = "Change the temperature of the incoming water to something else";
    const [message] = render({
      title: "t",
      summary: "s",
      blocks: [
        {
          kind: "buttons",
          buttons: [
            { label, say: "a" },
            { label: "Stop", say: "stop" },
          ],
        },
      ],
    });
    const { text, buttons } = await judge.judge(message.card, 320);
    expect(text).toContain(label);
    expect(buttons).toEqual(["Change the temperature of th…", "Stop"]);
  });

  test("that would say more than 2,000 characters is a text to type", async () => {
    const say = `size ${"people=4 ".repeat(300)}`;
    const [message] = render({
      title: "t",
      summary: "s",
      blocks: [{ kind: "buttons", buttons: [{ label: "Again", say }] }],
    });
    const { text, buttons } = await judge.judge(message.card, 640);
    expect([visible(text).includes(visible(say)), buttons]).toEqual([true, []]);
  });
});

test("a table too wide for a phone is a list under each row, and a narrow one stays a table", () => {
  const table = (columns: readonly string[]): Card => ({
    title: "t",
    summary: "s",
    blocks: [{ kind: "table", caption: "c", columns, rows: [columns.map((_, i) => `${i} gal`)] }],
  });
  const typesOf = (card: Card) => render(card)[0].card.body.map(({ type }) => type);
  expect(typesOf(table(["Size", "Takes", "Enough"]))).toEqual(["TextBlock", "TextBlock", "Table"]);
  expect(typesOf(table(["Manufacturer", "Acceptance", "Recommended"]))).toEqual([
    "TextBlock",
    "TextBlock",
    "Container",
  ]);
});

describe("size", () => {
  test.each(SAMPLES)("$name stays within the limits, in as many messages as it takes", ({ card }) => {
    for (const message of render(card)) {
      const activity = activityOf(message);
      expect(Buffer.byteLength(activity)).toBeLessThanOrEqual(MOST_ACTIVITY_BYTES);
      expect(Buffer.byteLength(activity, "utf16le")).toBeLessThanOrEqual(MOST_ACTIVITY_UTF16_BYTES);
    }
  });

  test("the limits are 28 KB and, as UTF-16, 40 KB", () => {
    expect([MOST_ACTIVITY_BYTES, MOST_ACTIVITY_UTF16_BYTES]).toEqual([28_672, 40_960]);
  });

  test("a card of ordinary size is one message, and the long one several", () => {
    const counts = ["answer", "question", "form", "chart", "big"].map(
      (name) => SAMPLE_CARDS[name] && render(SAMPLE_CARDS[name]).length,
    );
    expect(counts.slice(0, 4)).toEqual([1, 1, 1, 1]);
    expect(counts[4]).toBeGreaterThan(2);
  });

  test("what is parted is not lost: every word of the long card comes, in order", () => {
    const words = (value: unknown) =>
      stringsIn(value)
        .map(visible)
        .join(" ")
        .match(/Paragraph\d+|Label\d+|Model\d+|Choice\d+/g) ?? [];
    const card = SAMPLE_CARDS["big"];
    const seen = render(card ?? { title: "", summary: "", blocks: [] }).flatMap(({ card: part }) => words(part.body));
    const inOrder = [...new Set(seen)];
    const numbered = (name: string, count: number) => Array.from({ length: count }, (_, i) => `${name}${i + 1}`);
    expect(inOrder).toEqual([
      ...numbered("Paragraph", 60),
      ...numbered("Label", 45),
      ...numbered("Model", 150),
      ...numbered("Choice", 30),
    ]);
  });

  test("a question stays with its answers when it moves to the next message", () => {
    const filler = { kind: "text", tone: "plain", text: "x ".repeat(7_500) } as const;
    const question = SAMPLE_CARDS["question"];
    const parts = render({ title: "t", summary: "s", blocks: [filler, ...(question?.blocks ?? [])] });
    expect(parts).toHaveLength(1);
    const long = { ...filler, text: "x ".repeat(8_500) };
    const moved = render({ title: "t", summary: "s", blocks: [long, ...(question?.blocks ?? [])] });
    expect(moved.map(({ card }) => card.body.some(({ type }) => type === "ActionSet"))).toEqual([false, true]);
    expect(stringsIn(moved[1]?.card.body)).toContain("How cold is the incoming water?");
  });

  test("a form of 400 fields, too large for one message, is a list to type from", () => {
    const fields = Array.from({ length: 400 }, (_, i) => ({
      fact: `fact_${i}`,
      label: `Fact number ${i} of a very long form`,
      help: "Somewhere on the plate.",
      required: false,
      input: { type: "text" } as const,
    }));
    const parts = render({
      title: "t",
      summary: "s",
      blocks: [{ kind: "form", topic: "survey", title: "f", submit: "ok", fields }],
    });
    const texts = parts.flatMap(({ card }) => stringsIn(card.body));
    expect(texts.filter((text) => /^survey fact_\d+=…$/.test(text))).toHaveLength(400);
  });
});

describe("any card", () => {
  test("is within the limits", () => {
    fc.assert(
      fc.property(anyCard, (card) => {
        for (const message of renderAdaptive(card, {
          language: "en",
          asker: { id: "a".repeat(36), name: "b".repeat(500) },
        })) {
          const activity = activityOf(message);
          expect(Buffer.byteLength(activity)).toBeLessThanOrEqual(MOST_ACTIVITY_BYTES);
          expect(Buffer.byteLength(activity, "utf16le")).toBeLessThanOrEqual(MOST_ACTIVITY_UTF16_BYTES);
        }
      }),
      { numRuns: 200 },
    );
  }, 120_000);

  test("pleases the official renderer on a phone", async () => {
    const cards: AdaptiveCard[] = fc
      .sample(anyCard, { numRuns: 40, seed: 20_260_115 })
      .flatMap((card) => render(card).map((message) => message.card));
    for (const card of cards) {
      const { complaints, unknownProperties, cutOff } = await judge.judge(card, 320);
      expect({
        complaints,
        unknownProperties,
        cutOff,
        card: complaints.length + cutOff.length > 0 ? card : undefined,
      }).toEqual({
        complaints: [],
        unknownProperties: [],
        cutOff: [],
        card: undefined,
      });
    }
  }, 120_000);
});
