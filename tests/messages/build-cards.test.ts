import { describe, expect, test } from "vitest";
import type { Answered } from "../../src/declaration/answer.ts";
import type { KnownFacts } from "../../src/declaration/facts.ts";
import { runTopic } from "../../src/declaration/run-topic.ts";
import { buildAnswerCard } from "../../src/messages/build-answer-card.ts";
import { buildFormCard } from "../../src/messages/build-form-card.ts";
import { buildHelpCard, buildTopicHelpCard } from "../../src/messages/build-help-card.ts";
import { buildHowCard } from "../../src/messages/build-how-card.ts";
import { buildProgressCard } from "../../src/messages/build-progress-card.ts";
import { buildQuestionCard } from "../../src/messages/build-question-card.ts";
import { buildWelcomeCard } from "../../src/messages/build-welcome-card.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import { type Reader, speakOf, voiceFor } from "../../src/messages/voice.ts";
import { toBase } from "../../src/units/convert.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { fixtureLibrary } from "../support/fixture-library.ts";

const EN: Reader = { language: "en", units: "us" };
const ES: Reader = { language: "es", units: "si" };

function known(value: number | string | boolean, typed?: string): KnownFacts[string] {
  return { value, from: "asked", ...(typed !== undefined && { typed }) };
}
const FACTS: KnownFacts = {
  drum: known(toBase(30, "gal"), "30"),
  hose: known(toBase(2, "gpm"), "2 gpm"),
  warm: known(toBase(158, "F"), "158F"),
};

function answerCard(facts: KnownFacts, reader: Reader, before?: Parameters<typeof buildAnswerCard>[3]["before"]): Card {
  const voice = speakOf(voiceFor(fixtureLibrary, reader), "barrel");
  const answered: Answered = runTopic(voice.topic, facts, fixtureBooks, fixtureLibrary.cautions, () => {});
  if (answered.result.kind !== "answer") throw new Error("expected an answer");
  return buildAnswerCard(voice, answered, answered.result, {
    walk: "w1",
    notes: [],
    offers: [],
    ...(before && { before }),
  });
}
function kinds(card: Card): readonly Block["kind"][] {
  return card.blocks.map((block) => block.kind);
}
function blocksOf<K extends Block["kind"]>(card: Card, kind: K): Extract<Block, { kind: K }>[] {
  return card.blocks.filter((block): block is Extract<Block, { kind: K }> => block.kind === kind);
}

describe("answer card", () => {
  const card = answerCard(FACTS, EN);

  test("verdict and headline come first, a stop caution before any number, next steps before the assumptions", () => {
    expect(card.verdict).toEqual({ kind: "good", word: "Good" });
    expect(card.summary).toBe("Good: Full in 15 min");
    expect(kinds(card)).toEqual([
      ...["headline", "caution", "rows", "table", "caution", "buttons", "rows", "chart", "rows", "buttons"],
    ]);
  });

  test("results are rows, a range is written as one and a name as it is", () => {
    expect(blocksOf(card, "rows")[0]?.rows).toEqual([
      { label: "Time to fill", value: "15 min" },
      { label: "Stirring", value: "8 to 30 s" },
      { label: "Warming", value: "108 °F" },
      { label: "Plug", value: "M8" },
    ]);
  });

  test("a bare 30 is shown as read in gallons; what has its unit is not", () => {
    expect(blocksOf(card, "rows")[1]).toEqual({
      kind: "rows",
      heading: "Counted with",
      rows: [
        { label: "Drum", value: "30 gal", note: "“30” read as 30 gal" },
        { label: "Hose", value: "2 gpm" },
        { label: "Warm water", value: "158 °F" },
      ],
    });
  });

  test("every assumed fact shows its source and can be changed by one button", () => {
    expect(blocksOf(card, "rows")[2]).toEqual({
      kind: "rows",
      heading: "Assumed",
      rows: [
        { label: "Cold water", value: "50 °F", note: "common practice" },
        { label: "Lined", value: "Yes", note: "common practice" },
      ],
    });
    expect(blocksOf(card, "buttons").at(-1)?.buttons).toEqual([
      { label: "Change: Cold water", say: "change cold", aim: { walk: "w1", fact: "cold" } },
      { label: "Change: Lined", say: "change lined", aim: { walk: "w1", fact: "lined" } },
    ]);
  });

  test("cautions say what, how to show it, who says so and who decides, worst first", () => {
    expect(blocksOf(card, "caution")).toEqual([
      {
        kind: "caution",
        severity: "stop",
        word: "Stop",
        text: "158 °F burns skin.",
        show: "Measure it.",
        cites: "Test bench notes, 2 (invented for the demo). The health authority decides.",
      },
      expect.objectContaining({ severity: "note", word: "Note" }),
    ]);
  });

  test("next steps and how are offered before what was assumed", () => {
    expect(blocksOf(card, "buttons")[0]?.buttons).toEqual([
      { label: "Half of it", say: "barrel drum=15gal hose=2gpm" },
      { label: "How?", say: "how", aim: { walk: "w1", fact: "*" } },
    ]);
  });

  test("a chart has words, a text that says the same, and its points as a table", () => {
    const [chart] = blocksOf(card, "chart");
    expect(chart?.alt).toBe("Level in the drum. Water: 0 gal to 30 gal, between 0 s and 15 min");
    expect(chart?.labels).toEqual({ x: "Time", water: "Water" });
    expect(chart?.units).toBe("us");
    expect(chart?.table).toMatchObject({
      columns: ["Time", "Water"],
      rows: [
        ["0 s", "0 gal"],
        ["15 min", "30 gal"],
      ],
    });
  });

  test("a table cell may be a sentence or a quantity", () => {
    expect(blocksOf(card, "table")[0]).toMatchObject({ columns: ["Stage", "Time"], rows: [["At 50 %", "7 min 30 s"]] });
  });

  test("the number before a change stands beside the new one, unless it reads the same", () => {
    const changed = answerCard(FACTS, EN, {
      fill_time: { kind: "time", value: 600 },
      warming: { kind: "temperature_difference", value: 60 },
    });
    expect(blocksOf(changed, "rows")[0]?.rows.map(({ label, note }) => [label, note])).toEqual([
      ["Time to fill", "was 10 min"],
      ["Stirring", undefined],
      ["Warming", undefined],
      ["Plug", undefined],
    ]);
  });

  test("bad news is calm: a No with the finding that explains it", () => {
    const slow = answerCard({ drum: known(1000), hose: known(0.01) }, EN);
    expect(slow.verdict).toEqual({ kind: "no", word: "No" });
    expect(blocksOf(slow, "text")).toEqual([{ kind: "text", tone: "plain", text: "Hose is slow: 27 h 47 min." }]);
  });

  test("in Spanish and SI the same answer reads in liters and degrees C, and 30 typed as gallons is not shown as liters", () => {
    const spanish = answerCard(FACTS, ES);
    expect(spanish.summary).toBe("Bien: Lleno en 15 min");
    expect(blocksOf(spanish, "rows")[1]?.rows[0]).toEqual({
      label: "Tambor",
      value: "114 L",
    });
    expect(blocksOf(spanish, "caution")[0]?.text).toBe("70 °C quema la piel.");
  });
});

describe("how card", () => {
  const voice = speakOf(voiceFor(fixtureLibrary, EN), "barrel");
  const answered = runTopic(voice.topic, FACTS, fixtureBooks, [], () => {});
  if (answered.result.kind !== "answer") throw new Error("expected an answer");
  const { result } = answered;

  test("all results show equation, inputs and source", () => {
    const card = buildHowCard(voice, result, "w1");
    expect(card.blocks.slice(0, 4)).toEqual([
      { kind: "text", tone: "heading", text: "Time to fill: 15 min" },
      { kind: "text", tone: "plain", text: "t = V / Q" },
      { kind: "rows", rows: [{ label: "V", value: "30 gal" }] },
      { kind: "text", tone: "quiet", text: "Test bench notes, 2 (invented for the demo)" },
    ]);
    expect(blocksOf(card, "text").filter(({ tone }) => tone === "heading")).toHaveLength(4);
  });

  test("one result alone offers the others", () => {
    const card = buildHowCard(voice, result, "w1", "warming");
    expect(blocksOf(card, "text").filter(({ tone }) => tone === "heading")).toHaveLength(1);
    expect(blocksOf(card, "buttons")[0]?.buttons.map(({ say }) => say)).toEqual([
      "how fill_time",
      "how stir_time",
      "how plug",
    ]);
  });
});

describe("question card", () => {
  const voice = speakOf(voiceFor(fixtureLibrary, EN), "barrel");
  const base = { walk: "w1", place: 2, of: 5, canGoBack: true };

  test("usual values are buttons that carry their aim; the default can be taken", () => {
    const card = buildQuestionCard(voice, { ...base, fact: "cold" }, []);
    expect(blocksOf(card, "question")).toEqual([
      { kind: "question", prompt: "How cold is the water?", progress: "2 of 5" },
    ]);
    const aim = { walk: "w1", fact: "cold" };
    expect(blocksOf(card, "buttons").map(({ buttons }) => buttons)).toEqual([
      [
        { label: "40 °F", say: "40 °F", aim },
        { label: "50 °F", say: "50 °F", aim },
      ],
      [
        { label: "Don't know (take 50 °F)", say: "skip", aim },
        { label: "Back", say: "back", aim },
        { label: "Stop", say: "stop", aim },
      ],
    ]);
  });

  test("a required fact offers no skip, the first question no back", () => {
    const card = buildQuestionCard(voice, { ...base, fact: "hose", canGoBack: false }, []);
    expect(blocksOf(card, "buttons").flatMap(({ buttons }) => buttons.map(({ label }) => label))).toEqual(["Stop"]);
  });

  test("what was said before can be kept", () => {
    const card = buildQuestionCard(voice, { ...base, fact: "metal", current: "plastic" }, []);
    expect(blocksOf(card, "buttons")[0]?.buttons.map(({ label }) => label)).toEqual(["Keep Plastic", "Steel"]);
  });
});

describe("form card", () => {
  const voice = speakOf(voiceFor(fixtureLibrary, EN), "barrel");

  test("has a field for every fact, required only where nothing can be assumed", () => {
    const [form] = blocksOf(buildFormCard(voice, { facts: { drum: known(toBase(30, "gal")) } }), "form");
    expect(form?.fields.map(({ fact, required, value }) => [fact, required, value])).toEqual([
      ["drum", true, "30 gal"],
      ["hose", true, undefined],
      ["cold", false, undefined],
      ["warm", false, undefined],
      ["lined", false, undefined],
      ["metal", false, undefined],
      ["helpers", false, undefined],
    ]);
    expect(form?.fields[2]?.help).toBe("Left empty, I take 50 °F.");
    expect(form?.fields[4]?.input).toEqual({
      type: "choice",
      options: [
        { value: "Yes", label: "Yes" },
        { value: "No", label: "No" },
      ],
    });
  });

  test("has a field for numbers where no unit could be typed, with its range", () => {
    const [form] = blocksOf(buildFormCard(voice, { facts: {} }), "form");
    expect(form?.fields.map(({ fact, input }) => [fact, input.type])).toEqual([
      ["drum", "text"],
      ["hose", "text"],
      ["cold", "text"],
      ["warm", "text"],
      ["lined", "choice"],
      ["metal", "choice"],
      ["helpers", "number"],
    ]);
    expect(form?.fields[6]?.input).toEqual({ type: "number", min: 0, max: 9, whole: true });
  });

  test("keeps what was typed beside what was wrong with it", () => {
    const [form] = blocksOf(
      buildFormCard(voice, { facts: {}, typed: { drum: "x" }, problems: { drum: "No." } }),
      "form",
    );
    expect(form?.fields[0]).toMatchObject({ value: "x", problem: "No." });
  });
});

describe("help, welcome and progress cards", () => {
  test("help names every topic with an example and leads to each", () => {
    const card = buildHelpCard(voiceFor(fixtureLibrary, EN), []);
    expect(blocksOf(card, "rows")[0]?.rows.map(({ label, note }) => [label, note])).toEqual([
      ["Filling a barrel", "barrel 55 gal drum, hose 5 gpm"],
      ["Slope of a ramp", "ramp run=12ft rise=12in"],
    ]);
    expect(blocksOf(card, "buttons")[0]?.buttons.map(({ say }) => say)).toEqual(["help barrel", "help ramp"]);
  });

  test("help for a topic names facts, words, ranges and defaults with their source", () => {
    const card = buildTopicHelpCard(speakOf(voiceFor(fixtureLibrary, EN), "barrel"), []);
    const rows = blocksOf(card, "rows")[0]?.rows ?? [];
    expect(rows[0]).toEqual({
      label: "Drum",
      value: "1 gal to 500 gal",
      note: "drum=, drum. I ask if it is not said.",
    });
    expect(rows[3]?.note).toBe("warm=, warm. If not said: 100 °F (invented for the demo).");
    expect(rows[5]).toEqual({
      label: "Material",
      value: "Steel, Plastic",
      note: "metal=, material. May be left open.",
    });
  });

  test("welcome offers questions to try, the other language and the other units, and says what is invented", () => {
    const card = buildWelcomeCard(voiceFor(fixtureLibrary, ES), fixtureBooks.company, [], []);
    expect(blocksOf(card, "buttons").flatMap(({ buttons }) => buttons.map(({ say }) => say))).toEqual([
      "barrel tambor de 55 gal, manguera 5 gpm",
      "ramp run=12ft rise=12in",
      "ayuda",
      "idioma en",
      "unidades us",
    ]);
    expect(blocksOf(card, "text").at(-1)?.text).toContain("Testbench Plumbing");
  });

  test("progress is a share that never passes 100 %", () => {
    const voice = speakOf(voiceFor(fixtureLibrary, EN), "ramp");
    expect(buildProgressCard(voice, 1, 3).summary).toBe("Working on it: Slope of a ramp, 33 %");
    expect(buildProgressCard(voice, 9, 3).summary).toContain("100 %");
    expect(buildProgressCard(voice, 0, 0).summary).toContain("0 %");
  });

  test("progress shows under the bar what can be said already", () => {
    const voice = speakOf(voiceFor(fixtureLibrary, EN), "ramp");
    const soFar = { code: "slopes", data: { slope: { kind: "share", value: 0.1 } } } as const;
    const { blocks, summary } = buildProgressCard(voice, 1, 3, undefined, soFar);
    expect(blocks.map(({ kind }) => kind)).toEqual(["progress", "text"]);
    expect(blocks[1]).toMatchObject({ text: "Slope 10 %" });
    expect(summary).not.toContain("Slope 10 %");
  });

  test("progress offers to call the work off by its id, where it has one", () => {
    const voice = speakOf(voiceFor(fixtureLibrary, EN), "ramp");
    const buttons = buildProgressCard(voice, 1, 3, "0a1b2c3d").blocks.find((block) => block.kind === "buttons");
    expect(buttons?.buttons).toEqual([{ label: "Cancel", say: "cancel 0a1b2c3d" }]);
    expect(buildProgressCard(voice, 1, 3).blocks.some((block) => block.kind === "buttons")).toBe(false);
  });
});
