import fc from "fast-check";
import { expect, test } from "vitest";
import { parseConversation } from "../../src/boundary/stored-conversation.ts";
import type { Button, Card } from "../../src/messages/card.ts";
import { buttonsOf, promptOf, startTalk, type Talk } from "../support/talk.ts";

type Move =
  | { readonly do: "say"; readonly text: string }
  | { readonly do: "press"; readonly which: number }
  | { readonly do: "send"; readonly topic: string; readonly fields: Readonly<Record<string, string>> };

const COMMANDS = [
  ...["help", "help barrel", "help all", "units si", "units us", "language es", "language en", "back", "skip", "stop"],
  ...["undo", "resume", "resume ramp", "how", "how warming", "change", "change cold", "change cold to 45F", "form"],
  ...["form ramp", "again", "hi", "", "?", "atrás", "no sé", "parar", "deshacer", "seguir", "cómo", "cambiar tibia"],
];
const REQUESTS = [
  ...["barrel", "ramp", "barrel 55 gal drum, hose 5 gpm", "barrel 55 gal", "ramp run=12ft rise=12in", "ramp run=1"],
  ...[
    "barrel hose=900gpm",
    "barrel 60F",
    "barel 55",
    "barrel softener",
    "barrel drum=1gal drum=2gal",
    "what about 150F",
  ],
  ...["warm=40F", "hose=2.5gpm", "cold 45F", "lined", "not lined", "steel", "helpers=2.5", "12 in", "12,5 L"],
];
const VALUES = [
  "55",
  "55 gal",
  "5 gpm",
  "yes",
  "no",
  "60F",
  "150F",
  "1/2",
  "-3",
  "9e99",
  "6'3\"",
  "Warm water",
  "cold",
];

const word = fc.oneof(
  { weight: 6, arbitrary: fc.constantFrom(...COMMANDS) },
  { weight: 6, arbitrary: fc.constantFrom(...REQUESTS) },
  { weight: 6, arbitrary: fc.constantFrom(...VALUES) },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 30 }) },
  { weight: 1, arbitrary: fc.string({ maxLength: 40 }) },
);
const field = fc.oneof(fc.constantFrom("", ...VALUES), fc.string({ maxLength: 10 }));
const move: fc.Arbitrary<Move> = fc.oneof(
  { weight: 6, arbitrary: word.map((text): Move => ({ do: "say", text })) },
  { weight: 5, arbitrary: fc.nat({ max: 400 }).map((which): Move => ({ do: "press", which })) },
  {
    weight: 1,
    arbitrary: fc
      .record({
        topic: fc.constantFrom("barrel", "ramp", "nothing", "__proto__"),
        fields: fc.dictionary(fc.constantFrom("drum", "hose", "cold", "warm", "lined", "run", "rise", "x"), field),
      })
      .map((sent): Move => ({ do: "send", ...sent })),
  },
);
const moves = fc.array(move, { minLength: 1, maxLength: 40 });

/** Makes a move; a press takes any button that was ever shown. */
function make(talk: Talk, one: Move, shown: Button[]): Card {
  const card = cardOf(talk, one, shown);
  shown.push(...buttonsOf(card));
  return card;
}
function cardOf(talk: Talk, one: Move, shown: readonly Button[]): Card {
  if (one.do === "say") return talk.say(one.text);
  if (one.do === "send") return talk.send({ topic: one.topic, fields: one.fields });
  const pressed = shown[shown.length - 1 - (one.which % Math.max(1, shown.length))];
  return pressed === undefined ? talk.say("hi") : talk.press(pressed);
}

const MOST_STATE_CHARACTERS = 100_000;

test("any messages, buttons old and new, and forms end in a whole card, and the state stays small plain JSON", () =>
  fc.assert(
    fc.property(moves, (sequence) => {
      const talk = startTalk();
      const shown: Button[] = [];
      for (const one of sequence) {
        const card = make(talk, one, shown);
        expect(card.title).not.toBe("");
        expect(card.summary).not.toBe("");
        expect(card.blocks.length).toBeGreaterThan(0);
        for (const button of buttonsOf(card)) expect(button.label).not.toBe("");
        expect(JSON.stringify(card)).not.toMatch(/undefined|\bNaN\b|\[object|Infinity/);
        const text = JSON.stringify(talk.state);
        expect(text.length).toBeLessThan(MOST_STATE_CHARACTERS);
        expect(JSON.parse(text)).toStrictEqual(talk.state);
        expect(parseConversation(text)).toEqual({ ok: true, value: talk.state });
        expect(talk.state.past.length).toBeLessThanOrEqual(20);
      }
    }),
    { numRuns: 120 },
  ));

/** What undo must bring back: everything but the past itself and the counter that keeps ids unique. */
function restorable({ state, reader }: Talk): unknown {
  const { walk, parked, last } = state;
  return { walk, parked, last, reader };
}

test("undo brings back exactly what was there before the last step that changed anything", () =>
  fc.assert(
    fc.property(moves, (sequence) => {
      const talk = startTalk();
      const shown: Button[] = [];
      for (const one of sequence) {
        const before = restorable(talk);
        const depth = talk.state.past;
        make(talk, one, shown);
        const after = restorable(talk);
        const isUndo =
          JSON.stringify(talk.state.past) !== JSON.stringify(depth) && talk.state.past.length < depth.length;
        if (isUndo) continue;
        if (JSON.stringify(after) === JSON.stringify(before)) continue;
        const now = { state: talk.state, reader: talk.reader };
        talk.say("undo");
        expect(restorable(talk)).toEqual(before);
        Object.assign(talk, now);
      }
    }),
    { numRuns: 120 },
  ));

test("back and then the same answer lead to the same walk", () =>
  fc.assert(
    fc.property(moves, (sequence) => {
      const talk = startTalk();
      const shown: Button[] = [];
      for (const one of sequence) {
        make(talk, one, shown);
        // "55" is another answer to somebody who reads liters by now.
        if (talk.reader.units !== "us" || talk.reader.language !== "en") return;
        const { walk } = talk.state;
        const previous = walk?.asked.at(-1);
        const answer = previous === undefined ? undefined : walk?.facts[previous]?.typed;
        if (walk === undefined || answer === undefined || walk.unsettled !== undefined) continue;
        talk.say("back");
        talk.say(answer);
        expect(talk.state.walk).toEqual(walk);
      }
    }),
    { numRuns: 80 },
  ));

test("every answer button of a question is understood as the value it shows", () =>
  fc.assert(
    fc.property(moves, (sequence) => {
      const talk = startTalk();
      const shown: Button[] = [];
      for (const one of sequence) {
        const card = make(talk, one, shown);
        const fact = talk.state.walk?.toAsk[0];
        if (talk.state.walk?.unsettled !== undefined || promptOf(card) === undefined || fact === undefined) continue;
        const now = { state: talk.state, reader: talk.reader };
        for (const button of buttonsOf(card).filter(({ aim, say }) => aim?.fact === fact && /\d|yes|sí/i.test(say))) {
          const next = talk.press(button);
          expect(JSON.stringify(next)).not.toContain("I cannot read");
          const known = talk.state.walk?.facts[fact] ?? talk.state.last?.facts[fact];
          expect(known?.typed).toBe(button.say);
          Object.assign(talk, now);
        }
      }
    }),
    { numRuns: 50 },
  ));
