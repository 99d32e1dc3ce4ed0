import { describe, expect, test } from "vitest";
import { buildFindingHazard } from "../../src/messages/build-hazard-block.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import { isDetail } from "../../src/messages/gather-folds.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { lowerFirst } from "../../src/messages/lower-first.ts";
import { speakOf, voiceFor } from "../../src/messages/voice.ts";
import { library, say } from "../support/ask-library.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const CIRCUIT = "circuit 4500W at 208V 60 ft";
const textIn = (blocks: readonly Block[]) => JSON.stringify(blocks);
const cardOf = (text: string, language: (typeof LANGUAGES)[number] = "en"): Card =>
  say(text, { language, units: "us" }, seedBooks).card;

describe("what the first screen can do without", () => {
  test.each(LANGUAGES)("in %s is still on the card, once, after everything else", (language) => {
    const { card, answered } = say(CIRCUIT, { language, units: "us" }, seedBooks);
    const result = answered?.result;
    const labels = library.texts[language].topics.get("circuit")?.results ?? {};
    const rows = card.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
    const ids = result?.kind === "answer" ? result.results.map(({ id }) => id) : [];
    expect(ids.length).toBeGreaterThan(8);
    for (const id of ids) expect(rows.filter(({ label }) => label === labels[id])).toHaveLength(1);
    const firstDetail = card.blocks.findIndex(isDetail);
    expect(firstDetail).toBeGreaterThan(0);
    expect(card.blocks.slice(firstDetail).every(isDetail)).toBe(true);
  });
  test("breaker and conductor stay in sight, the element's resistance does not", () => {
    const { blocks } = cardOf(CIRCUIT);
    const open = textIn(blocks.filter((block) => !isDetail(block)));
    const labels = library.texts.en.topics.get("circuit")?.results ?? {};
    expect(open).toContain(labels["breaker_range"]);
    expect(open).toContain(labels["conductor"]);
    expect(open).not.toContain(labels["element_resistance"]);
  });
  test("a few assumed facts stay open, many are folded with their buttons", () => {
    const few = cardOf("mix 135 to 120 with 50 in").blocks;
    expect(few.filter(isDetail)).toEqual([]);
    const many = cardOf(CIRCUIT).blocks.filter(isDetail);
    expect(many.at(-1)?.kind).toBe("buttons");
    expect(textIn(many)).toContain("Assumed");
  });
  test("no caution, question or headline can be a detail, and no topic calls a danger one", () => {
    const said = [...library.topics.values()].flatMap(({ asides }) => asides?.findings ?? []);
    expect(said.length).toBeGreaterThan(10);
    // Findings that speak of scald, shock, gas, weight or pressure in the names that the topics give them.
    expect(said.filter((code) => /valve|combustion|stop|^first_|electrician|weigh|drain|plate/.test(code))).toEqual([]);
  });
});

test("a sentence goes on with a name whose units and letters stay as they are", () => {
  expect(lowerFirst("Supply at 208 V or sagging")).toBe("supply at 208 V or sagging");
});

describe("what must not be done before a remedy", () => {
  test.each([
    ["en", "Stop"],
    ["es", "Alto"],
  ] as const)("in %s is a stop caution that says its word once", (language, word) => {
    const voice = speakOf(voiceFor(library, { language, units: "us" }), "fault");
    const block = buildFindingHazard(voice, { code: "stop_before_loose_connection", data: {} });
    expect(block).toMatchObject({ kind: "caution", severity: "stop", word });
    expect(block?.text).toMatch(/^\p{Lu}/u);
    expect(block?.text.startsWith(word)).toBe(false);
    expect(buildFindingHazard(voice, { code: "remedy_loose_connection", data: {} })).toBeUndefined();
  });
});

describe("a step of a guided walk", () => {
  const { state } = say("fault no hot water since this morning", { language: "en", units: "us" }, seedBooks);
  const walk = ["Heat pump on the tank", "Up to 6 years", "Nothing"].reduce(
    (said, text) => say(text, { language: "en", units: "us" }, seedBooks, said.state),
    { state, card: undefined as Card | undefined },
  );
  test("shows the likeliest causes, and folds what each answer would mean", () => {
    const tables = walk.card?.blocks.filter(({ kind }) => kind === "table") ?? [];
    expect(tables.map(isDetail)).toEqual([false, true]);
  });
  test("says beside how a check is done what it shows when all is well", () => {
    const asked = walk.card?.blocks.find((block) => block.kind === "question");
    expect(asked?.help).toMatch(/^In order: .+\.$/);
  });
});
