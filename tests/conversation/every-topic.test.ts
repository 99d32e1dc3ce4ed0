import { beforeAll, describe, expect, test } from "vitest";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import type { Library } from "../../src/library.ts";
import type { Card } from "../../src/messages/card.ts";
import { LANGUAGES } from "../../src/messages/language.ts";
import { COMMON, type Reader } from "../../src/messages/voice.ts";
import { buttonsOf, promptOf, startTalk, textsOf } from "../support/talk.ts";

let library: Library;
beforeAll(async () => {
  library = await loadLibrary();
});

const READERS: readonly Reader[] = LANGUAGES.flatMap((language): Reader[] => [
  { language, units: "us" },
  { language, units: "si" },
]);
const MOST_QUESTIONS = 25;

/** Answers every question by its first button for that fact; without one, takes what the question may be left to. */
function pressThrough(reader: Reader, topic: string): { readonly card: Card; readonly asked: number } {
  const talk = startTalk(reader, library);
  let card = talk.say(topic);
  let asked = 0;
  while (promptOf(card) !== undefined && asked < MOST_QUESTIONS) {
    const fact = talk.state.walk?.toAsk[0];
    const [first] = buttonsOf(card).filter(({ aim }) => aim?.fact === fact);
    if (first === undefined) throw new Error(`nothing to press for ${fact}`);
    card = talk.press(first);
    asked += 1;
  }
  return { card, asked };
}

describe.each(READERS)("in $language and $units", { timeout: 240_000 }, (reader) => {
  test("every topic asked by its bare word comes to an answer by buttons alone, or says what to type", () => {
    expect(library.topics.size).toBeGreaterThanOrEqual(4);
    for (const topic of library.topics.keys()) {
      const { card, asked } = pressThrough(reader, topic);
      const isAnswer = card.verdict !== undefined;
      expect(isAnswer || textsOf(card).length > 0, `${topic}: ${card.summary}`).toBe(true);
      expect(isAnswer, `${topic}: ${card.summary}`).toBe(true);
      expect(asked).toBeLessThan(MOST_QUESTIONS);
    }
  });

  test("every example that help offers is answered in one message, and its how, form and help open", () => {
    const { say } = COMMON[reader.language];
    for (const topic of library.topics.keys()) {
      const help = startTalk(reader, library).say(say.help(topic));
      const examples = buttonsOf(help).filter(({ label, say: text }) => label === text);
      expect(examples.length, topic).toBeGreaterThan(0);
      for (const { say: example } of examples) {
        const talk = startTalk(reader, library);
        const card = talk.say(example);
        expect(card.verdict, `${example}: ${card.summary}`).toBeDefined();
        expect(talk.state.last?.topic).toBe(topic);
        expect(talk.say(say.how()).blocks.length).toBeGreaterThan(2);
        expect(talk.say(say.form(topic)).blocks.map(({ kind }) => kind)).toContain("form");
        expect(talk.say(say.help(topic)).title).toBe(card.title);
      }
    }
  });
});
