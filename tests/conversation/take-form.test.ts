import { expect, test } from "vitest";
import type { Card, FormBlock } from "../../src/messages/card.ts";
import { headlineOf, startTalk, textsOf } from "../support/talk.ts";

function formOf(card: Card): FormBlock | undefined {
  return card.blocks.find((block) => block.kind === "form");
}

test("a form that is filled in is answered; empty fields are assumed", () => {
  const talk = startTalk();
  const card = talk.send({
    topic: "barrel",
    fields: { drum: "55 gal", hose: "5", cold: "", lined: "No", metal: "steel" },
  });
  expect(headlineOf(card)).toBe("Full in 11 min");
  expect(talk.state.last?.facts).toEqual({
    drum: { value: expect.closeTo(208.198, 3), from: "asked", typed: "55 gal" },
    hose: { value: expect.closeTo(0.315, 3), from: "asked", typed: "5" },
    lined: { value: false, from: "asked", typed: "No" },
    metal: { value: "steel", from: "asked", typed: "steel" },
  });
});

test("what is wrong stands beside its field, what was typed stays, and nothing changes", () => {
  const talk = startTalk();
  const before = talk.state;
  const card = talk.send({ topic: "barrel", fields: { hose: "900 gpm", cold: "banana", helpers: "2.5" } });
  const problems = Object.fromEntries(formOf(card)?.fields.map(({ fact, problem }) => [fact, problem]) ?? []);
  expect(problems).toEqual({
    drum: "This is needed. Type, for example, 30 gal.",
    hose: "Hose: 900 gpm is outside what I can work with. Type a value from 0.1 gpm to 50 gpm, for example 0.1 gpm.",
    cold: "I cannot read “banana” as Cold water. Type, for example, 50 °F.",
    helpers: "Helpers is a whole number, so “2.5” does not fit. Type, for example, 2.",
  });
  expect(formOf(card)?.fields.find(({ fact }) => fact === "cold")?.value).toBe("banana");
  expect(talk.state).toEqual(before);
});

test("the form of an open walk holds what was said, and sending it closes the walk", () => {
  const talk = startTalk();
  talk.say("barrel");
  talk.say("55 gal");
  expect(formOf(talk.say("form"))?.fields[0]).toMatchObject({ fact: "drum", value: "55 gal" });
  talk.send({ topic: "barrel", fields: { drum: "55 gal", hose: "5 gpm" } });
  expect(talk.state.walk).toBeUndefined();
  expect(talk.state.parked).toBeUndefined();
});

test("a form of another topic sets the open walk aside and says so", () => {
  const talk = startTalk();
  talk.say("barrel");
  const card = talk.send({ topic: "ramp", fields: { run: "12 ft", rise: "12 in" } });
  expect(textsOf(card)).toEqual(["Set aside: Filling a barrel. Say resume to return to it."]);
});

test("a second form of the same topic says what changed", () => {
  const talk = startTalk();
  talk.say("barrel 55 gal drum, hose 5 gpm");
  const card = talk.send({ topic: "barrel", fields: { drum: "30 gal", hose: "5 gpm" } });
  expect(textsOf(card)).toEqual(["Changed: Drum, 55 gal → 30 gal.", "As said before. Note: The floor gets wet."]);
});

test.each(["nothing", "__proto__"])("a form of the unknown topic %s is not understood", (topic) => {
  expect(startTalk().send({ topic, fields: {} }).title).toBe("I did not follow that");
});

test("a field of 2,001 characters is refused", () => {
  expect(startTalk().send({ topic: "barrel", fields: { drum: "1".repeat(2001) } }).summary).toContain("too long");
});
