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
/** Where each answer decides what is asked next, a walk may be longer. */
const MOST_GUIDED = 90;
/** What only a person can say, typed where no button can offer it. */
const TYPED: Readonly<Record<string, string>> = { complaint: "no hot water", code: "A1", day: "2026-11-30" };

/** Answers every question by its first button for that fact, or types what no button can offer. */
function pressThrough(reader: Reader, topic: string): { readonly card: Card; readonly asked: number } {
  const talk = startTalk(reader, library);
  let card = talk.say(topic);
  let asked = 0;
  while (promptOf(card) !== undefined && asked < mostQuestions(topic)) {
    const fact = talk.state.walk?.toAsk[0] ?? "";
    const [first] = buttonsOf(card).filter(({ aim, say }) => aim?.fact === fact && !STEERING.includes(say));
    const typed = TYPED[fact];
    if (first === undefined && typed === undefined) throw new Error(`nothing to press or type for ${fact}`);
    card = typed === undefined && first !== undefined ? talk.press(first) : talk.say(typed ?? "");
    asked += 1;
  }
  return { card, asked };
}

function mostQuestions(topic: string): number {
  return library.topics.get(topic)?.guide === undefined ? MOST_QUESTIONS : MOST_GUIDED;
}

const STEERING = LANGUAGES.flatMap((language) => [COMMON[language].say.stop, COMMON[language].say.back]);

describe.each(READERS)("in $language and $units", { timeout: 240_000 }, (reader) => {
  test("every topic asked by its bare word comes to an answer by buttons alone, or says what to type", () => {
    expect(library.topics.size).toBeGreaterThanOrEqual(4);
    for (const topic of library.topics.keys()) {
      const { card, asked } = pressThrough(reader, topic);
      const isAnswer = card.verdict !== undefined;
      expect(isAnswer || textsOf(card).length > 0, `${topic}: ${card.summary}`).toBe(true);
      expect(isAnswer, `${topic}: ${card.summary}`).toBe(true);
      expect(asked).toBeLessThan(mostQuestions(topic));
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
        const { guide, uses, asksAnew } = library.topics.get(topic) ?? {};
        if (uses === "job" && talk.state.walk?.topic !== topic && talk.state.last?.topic !== topic) {
          // Without a job open it says which words open one.
          expect(textsOf(card).join(" "), example).toMatch(/job|trabajo/);
          continue;
        }
        if (guide !== undefined && talk.state.last?.topic !== topic) {
          // A guided topic answers with its next question.
          expect(talk.state.walk?.topic, `${example}: ${card.summary}`).toBe(topic);
          expect(promptOf(card)).toBeDefined();
          continue;
        }
        expect(card.verdict, `${example}: ${card.summary}`).toBeDefined();
        expect(talk.state.last?.topic).toBe(topic);
        // What only looks into the record computes nothing, and says so.
        expect(talk.say(say.how()).blocks.length).toBeGreaterThan(asksAnew === true ? 0 : 2);
        expect(talk.say(say.form(topic)).blocks.map(({ kind }) => kind)).toContain("form");
        expect(talk.say(say.help(topic)).title).toBe(card.title);
      }
    }
  });
});
