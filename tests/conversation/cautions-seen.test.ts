import { describe, expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import type { Block, Card } from "../../src/messages/card.ts";
import { buttonOf, buttonsOf, startTalk, textsOf } from "../support/talk.ts";

const library = await loadLibrary();
const US = { language: "en", units: "us" } as const;
/** 140 °F without a mixing valve is a stop, 85 psi a must. */
const RISKY = "caution set to 140F, no mixing valve, 85 psi, soft water";
const OTHER = "wait 3/4 copper 20 ft 2 gpm";

function talkAfter(...said: readonly string[]) {
  const talk = startTalk(US, library);
  for (const text of said) talk.say(text);
  return talk;
}

function cautionsOf({ blocks }: Card): readonly string[] {
  return blocks.flatMap((block) => (block.kind === "caution" ? [block.severity] : []));
}

function firstOf({ blocks }: Card): Block | undefined {
  return blocks[0];
}

describe("seen, done", () => {
  test("every caution of an answer is followed by its button", () => {
    const { blocks } = startTalk(US, library).say(RISKY);
    const places = blocks.flatMap(({ kind }, place) => (kind === "caution" ? [place] : []));
    expect(places.length).toBeGreaterThanOrEqual(2);
    for (const place of places)
      expect(blocks[place + 1]).toMatchObject({ kind: "buttons", buttons: [{ label: "Seen, done" }] });
  });

  test("is recorded with name and time, and shown as one quiet line from then on", () => {
    const talk = talkAfter(RISKY);
    const card = talk.say("seen line_pressure_high");
    expect(card.summary).toMatch(/^Recorded as seen and done by Ebbe Tarnowell, 25 Nov 12:02: Must: 85 psi/);
    expect(talk.marks).toMatchObject([{ caution: "line_pressure_high", act: "seen", by: "Ebbe Tarnowell" }]);
    const again = talk.say("again");
    expect(cautionsOf(again)).not.toContain("must");
    expect(textsOf(again)).toContainEqual(
      expect.stringMatching(/^Seen by Ebbe Tarnowell, 25 Nov 12:02\. Must: 85 psi/),
    );
  });

  test("holds only for the numbers that were seen: a higher pressure is shown in full", () => {
    const talk = talkAfter(RISKY, "seen line_pressure_high");
    expect(cautionsOf(talk.say("change line_pressure to 95 psi"))).toContain("must");
  });

  test("the button of an earlier answer speaks of the numbers it stood beside", () => {
    const talk = startTalk(US, library);
    const first = talk.say(RISKY);
    const button = buttonsOf(first).find(({ say }) => say === "seen line_pressure_high");
    talk.say("change line_pressure to 95 psi");
    if (button === undefined) throw new Error("no button for the pressure");
    expect(talk.press(button).summary).toContain("85 psi");
    expect(cautionsOf(talk.say("again"))).toContain("must");
  });

  test.each(["undo", "unsee line_pressure_high"])("is taken back by %s", (words) => {
    const talk = talkAfter(RISKY, "seen line_pressure_high");
    talk.say(words);
    expect(talk.marks[0]).toMatchObject({ caution: "line_pressure_high", act: "unseen" });
    expect(cautionsOf(talk.say("again"))).toContain("must");
  });

  test("said without an id asks which, when several wait", () => {
    const talk = talkAfter(RISKY);
    expect(buttonsOf(talk.say("seen")).length).toBeGreaterThanOrEqual(2);
    expect(talk.marks).toEqual([]);
  });

  test.each([
    ["seen nonsense", /I know no caution called “nonsense”/],
    ["seen smell_of_gas", /have not shown you the caution smell_of_gas/],
  ])("%s records nothing and says why", (words, said) => {
    const talk = talkAfter(RISKY);
    expect(talk.say(words).summary).toMatch(said);
    expect(talk.marks).toEqual([]);
  });

  test("with nothing shown there is nothing to see", () => {
    expect(startTalk(US, library).say("seen").summary).toBe("No caution is waiting here.");
  });

  test("works in Spanish", () => {
    const talk = startTalk({ language: "es", units: "us" }, library);
    const card = talk.say("advertencias puesto a 140F, sin válvula mezcladora");
    expect(talk.press(buttonOf(card, "Visto, hecho")).summary).toMatch(
      /^Anotado como visto y hecho por Ebbe Tarnowell, 25 nov/,
    );
    expect(talk.marks).toMatchObject([{ act: "seen" }]);
  });
});

describe("a stop", () => {
  const opening = /^Stop, not acknowledged yet: Stored at 140 °F without a mixing valve/;

  test("opens every following answer with one line and its button until it is acknowledged", () => {
    const talk = talkAfter(RISKY);
    for (const said of [OTHER, "how", "again"]) {
      const { blocks } = talk.say(said);
      expect(blocks[0]).toMatchObject({ kind: "text", tone: "problem", text: expect.stringMatching(opening) });
      expect(blocks[1]).toMatchObject({ kind: "buttons", buttons: [{ label: "Seen, done" }] });
    }
    talk.say("seen hot_storage_without_mixing_valve");
    const { blocks } = talk.say(OTHER.replace("20", "30"));
    expect(blocks[0]).toMatchObject({ tone: "quiet", text: expect.stringMatching(/^Seen by Ebbe Tarnowell/) });
  });

  test("outlives undo of the answer that raised it", () => {
    const talk = talkAfter(RISKY, "undo");
    expect(firstOf(talk.say(OTHER))).toMatchObject({ text: expect.stringMatching(opening) });
  });

  test("no longer stands once its own answer is put right", () => {
    const talk = talkAfter(RISKY, "change mixing_valve to yes");
    expect(textsOf(talk.say(OTHER)).filter((text) => opening.test(text))).toEqual([]);
  });

  test("is said once, not twice, by an answer that raises it itself", () => {
    const talk = talkAfter(RISKY);
    const card = talk.say("mix 140F to 110F no mixing valve");
    expect(cautionsOf(card).filter((severity) => severity === "stop")).toHaveLength(1);
    expect(textsOf(card).filter((text) => opening.test(text))).toEqual([]);
  });

  test.each([
    "skip hot_storage_without_mixing_valve",
    "skip hot_storage_without_mixing_valve because",
    "skip hot_storage_without_mixing_valve because 12!",
  ])("is not skipped without words: %s", (words) => {
    const talk = talkAfter(RISKY);
    expect(talk.say(words).summary).toMatch(/skipped only with a reason/);
    expect(talk.marks).toEqual([]);
  });

  test("that is skipped says on every answer who skipped it and why", () => {
    const talk = talkAfter(RISKY, "skip hot_storage_without_mixing_valve because the valve comes Monday");
    expect(talk.marks).toMatchObject([{ act: "skipped", because: "the valve comes Monday" }]);
    expect(firstOf(talk.say(OTHER))).toMatchObject({
      text: expect.stringMatching(/^Skipped by Ebbe Tarnowell, 25 Nov 12:02, because “the valve comes Monday”\. Stop:/),
    });
  });
});

describe("said once", () => {
  const MILD = "caution softener, 85 psi";

  test("a should or a note with the same numbers is one line the second time; a must stays whole until it is seen", () => {
    const talk = startTalk(US, library);
    const first = cautionsOf(talk.say(MILD));
    expect(first).toContain("must");
    expect(first.some((severity) => severity === "should" || severity === "note")).toBe(true);
    const second = talk.say(`${MILD}, tank 50 gal`);
    expect(cautionsOf(second)).toEqual(["must"]);
    expect(textsOf(second)).toContainEqual(expect.stringMatching(/^As said before\. (Should|Note): /));
  });

  test("somebody who asks for the answer again reads all of it", () => {
    const talk = startTalk(US, library);
    const first = cautionsOf(talk.say(MILD));
    expect(cautionsOf(talk.say("again"))).toEqual(first);
  });
});

test("skip alone still answers a guided question", () => {
  const talk = talkAfter("caution");
  expect(talk.state.walk?.toAsk[0]).toBe("room");
  talk.say("skip");
  expect(talk.state.walk?.toAsk[0]).toBe("setpoint");
});
