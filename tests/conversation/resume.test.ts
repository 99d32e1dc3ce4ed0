import { expect, test } from "vitest";
import { fixtureLibrary } from "../support/fixture-library.ts";
import { buttonOf, promptOf, startTalk, textsOf } from "../support/talk.ts";

test("resume brings an open walk over from another conversation and leaves it there no longer", () => {
  const there = startTalk();
  there.say("barrel");
  there.say("55 gal");
  const here = startTalk();
  here.elsewhere = { conversation: "there", state: there.state };
  const card = here.say("resume");
  expect(textsOf(card)).toEqual(["Brought over from your other conversation: Filling a barrel."]);
  expect(promptOf(card)).toBe("How much does the hose give?");
  expect(here.state.walk).toEqual(there.state.walk);
  const { walk: _, ...left } = there.state;
  expect(here.carriedFrom).toEqual({ conversation: "there", state: left });
});

test("a walk that was brought over is not lost by undo", () => {
  const there = startTalk();
  there.say("barrel");
  const here = startTalk();
  here.elsewhere = { conversation: "there", state: there.state };
  here.say("resume");
  here.say("undo");
  expect(here.state.walk).toBeUndefined();
  delete here.elsewhere;
  expect(promptOf(here.say("resume"))).toBe("How large is the drum?");
});

test("a greeting offers the walk that is open elsewhere, and anything else leaves it there", () => {
  const there = startTalk();
  there.say("barrel");
  const here = startTalk();
  here.elsewhere = { conversation: "there", state: there.state };
  expect(promptOf(here.press(buttonOf(here.say("hi"), "Go on: Filling a barrel")))).toBe("How large is the drum?");
  const other = startTalk();
  other.elsewhere = { conversation: "there", state: there.state };
  other.say("ramp run=12ft rise=12in");
  expect(other.carriedFrom).toBeUndefined();
});

test("of several walks set aside the newest comes first, and one can be named", () => {
  const talk = startTalk();
  talk.say("barrel");
  talk.say("ramp");
  talk.say("stop");
  expect(promptOf(talk.say("resume"))).toBe("How long is the ramp?");
  expect(promptOf(talk.say("resume filling a barrel"))).toBe("How large is the drum?");
  expect(talk.state.parked?.map(({ topic }) => topic)).toEqual(["ramp"]);
});

test("a topic that is gone from the library takes its walks and answers with it, and the rest goes on", () => {
  const talk = startTalk();
  talk.say("ramp run=12ft rise=12in");
  talk.say("ramp");
  talk.say("barrel");
  const smaller = { ...fixtureLibrary, topics: new Map([...fixtureLibrary.topics].filter(([id]) => id === "barrel")) };
  const later = startTalk(talk.reader, smaller);
  later.state = talk.state;
  expect(promptOf(later.say("resume"))).toBe("How large is the drum?");
  expect(later.state.parked).toEqual([]);
  expect(later.state.last).toBeUndefined();
  expect(later.say("undo").title).toBe("Undo");
});
