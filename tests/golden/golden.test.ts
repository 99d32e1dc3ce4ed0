import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { renderCard } from "../../adapters/slack/render-card.ts";
import { renderAdaptive } from "../../adapters/teams/render-adaptive.ts";
import { renderText } from "../../adapters/terminal/render-text.ts";
import { renderHtml } from "../../adapters/web/render-html.ts";
import type { Books } from "../../src/books/books.ts";
import type { CrewEvent } from "../../src/crew/crew-event.ts";
import { answerToJson } from "../../src/messages/answer-json.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Reader } from "../../src/messages/voice.ts";
import { library, say } from "../support/ask-library.ts";
import { GOLDEN_CASES, type GoldenCase } from "./cases.ts";
import { recordCases } from "./record-cases.ts";

const FOLDER = new URL(".", import.meta.url).pathname;
const isUpdating = process.env["UPDATE_GOLDEN"] === "1";
const books = await loadBooks(new URL("../../seeds", import.meta.url).pathname, library.cautions, library.faults);
/** The day of the demo company on which somebody in particular asks. */
const TODAY = "2026-11-25";
/** What was said of the crew since the books; the cards of everybody but history do not change by it. */
const SAID: readonly CrewEvent[] = [
  {
    number: 1,
    change: { kind: "off", person: "wren", from: "2026-12-03", to: "2026-12-04" },
    by: "Lupe Harrastegui",
    said_by: "lupe",
    at_ms: Date.UTC(2026, 10, 25, 15),
    door: "slack",
  },
  {
    number: 2,
    change: { kind: "stock", truck: "truck-2", part: "mixing-valve", how: "add", amount: 2 },
    by: "Marisol Vantreaux",
    said_by: "marisol",
    at_ms: Date.UTC(2026, 10, 25, 16),
    door: "teams",
  },
  {
    number: 3,
    change: { kind: "withdrawn" },
    amends: 1,
    by: "Tobias Quillmark",
    said_by: "tobias",
    at_ms: Date.UTC(2026, 10, 25, 17),
    door: "web",
  },
];

function booksFor({ by }: GoldenCase): Books {
  const asker = books.people.find(({ id }) => id === by);
  return asker === undefined ? books : { ...books, today: TODAY, asker, crewEvents: SAID };
}

const json = (value: unknown) => `${JSON.stringify(value, null, 2)}\n`;

/** The same card as every door shows it. */
function doorsOf(card: Card, { language }: Reader): Readonly<Record<string, string>> {
  return {
    "slack.json": json(renderCard(card).messages),
    "teams.json": json(renderAdaptive(card, { language })),
    "web.html": `${renderHtml(card, { id: "c1", language })}\n`,
    "terminal.txt": `${renderText(card, 78)}\n`,
  };
}

/** A card in all its renderings, beside what a script reads. */
interface Kept {
  readonly topic: string;
  readonly name: string;
  readonly make: () => Readonly<Record<string, string>>;
}
const asked = GOLDEN_CASES.map(
  (one): Kept => ({
    ...one,
    make: () => {
      const { card, answered } = say(one.text, one.reader, booksFor(one));
      const read = answered && { "answer.json": json(answerToJson(answered, library, one.reader)) };
      return { ...doorsOf(card, one.reader), ...read };
    },
  }),
);
const records = recordCases(books).map(
  ({ name, reader, card, json: read }): Kept => ({
    topic: "record",
    name,
    make: () => ({ ...doorsOf(card, reader), ...(read !== undefined && { "record.json": json(read) }) }),
  }),
);
const KEPT = [...asked, ...records];

describe.each(KEPT)("$topic/$name", ({ topic, name, make }) => {
  const made = make();
  test.each(Object.keys(made))("%s is as reviewed", (kind) => {
    const file = `${FOLDER}${topic}/${name}.${kind}`;
    if (isUpdating) {
      mkdirSync(dirname(file), { recursive: true });
      writeFileSync(file, made[kind] ?? "");
    }
    expect(existsSync(file), "missing: write it with UPDATE_GOLDEN=1 and read the diff").toBe(true);
    expect(made[kind]).toBe(readFileSync(file, "utf8"));
  });
});

test("no golden file is without its case", () => {
  const expected = new Set(
    KEPT.flatMap(({ topic, name, make }) => Object.keys(make()).map((kind) => `${topic}/${name}.${kind}`)),
  );
  const kept = readdirSync(FOLDER, { recursive: true, encoding: "utf8" }).filter((name) =>
    /\.(json|html|txt)$/.test(name),
  );
  expect(kept.filter((name) => !expected.has(name))).toEqual([]);
});
