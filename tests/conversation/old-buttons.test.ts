import { expect, test } from "vitest";
import { buttonOf, buttonsOf, headlineOf, promptOf, startTalk, textsOf } from "../support/talk.ts";

const FULL = "barrel 55 gal drum, hose 5 gpm";

test("a button of an earlier question changes that answer and the open question stays", () => {
  const talk = startTalk();
  const first = talk.say("barrel");
  talk.press(buttonOf(first, "55 gal"));
  talk.say("5 gpm");
  const card = talk.press(buttonOf(first, "30 gal"));
  expect(textsOf(card)).toEqual(["Changed: Drum, 55 gal → 30 gal."]);
  expect(promptOf(card)).toBe("How cold is the water?");
});

test("don't know of an earlier question takes its default after all", () => {
  const talk = startTalk();
  talk.say("barrel");
  talk.say("55 gal");
  const cold = talk.say("5 gpm");
  talk.say("45F");
  talk.press(buttonOf(cold, "Don't know (take 50 °F)"));
  expect(talk.state.walk?.facts["cold"]).toBeUndefined();
  expect(talk.state.walk?.toAsk).toEqual(["lined"]);
});

test("back of an earlier question is refused and the open question asked again", () => {
  const talk = startTalk();
  talk.say("barrel");
  const second = talk.say("55 gal");
  talk.say("5 gpm");
  const card = talk.press(buttonOf(second, "Back"));
  expect(textsOf(card)).toEqual(["That button belongs to an earlier question."]);
  expect(promptOf(card)).toBe("How cold is the water?");
});

test("a button of a walk that was set aside returns to it, and undo puts both back", () => {
  const talk = startTalk();
  const first = talk.say("barrel");
  talk.say("ramp");
  const before = talk.state;
  const card = talk.press(buttonOf(first, "30 gal"));
  expect(textsOf(card)).toEqual(["Set aside: Slope of a ramp. Say resume to return to it.", "Drum: 30 gal."]);
  expect(promptOf(card)).toBe("How much does the hose give?");
  expect(talk.state.parked?.map(({ topic }) => topic)).toEqual(["ramp"]);
  talk.say("undo");
  expect(talk.state.walk).toEqual(before.walk);
  expect(talk.state.parked).toEqual(before.parked);
});

test("a button of a finished walk says so, changes nothing, and offers that answer with the change", () => {
  const talk = startTalk();
  const asked = talk.say("barrel 5 gpm");
  talk.say("55 gal");
  const before = talk.state;
  const card = talk.press(buttonOf(asked, "30 gal"));
  expect(card.summary).toBe("Drum was already answered, and so was the question: Filling a barrel.");
  expect(talk.state).toEqual(before);
  const again = talk.press(buttonOf(card, "Answer again with Drum: 30 gal"));
  expect(headlineOf(again)).toBe("Full in 6 min");
  expect(textsOf(again)).toEqual(["Changed: Drum, 55 gal → 30 gal.", "As said before. Note: The floor gets wet."]);
});

test("stop of a finished walk changes nothing", () => {
  const talk = startTalk();
  const asked = talk.say("barrel 5 gpm");
  talk.say("55 gal");
  talk.say("ramp");
  const before = talk.state;
  const card = talk.press(buttonOf(asked, "Stop"));
  expect(card.title).toBe("An older button");
  expect(talk.state).toEqual(before);
});

test("how and change of an older answer are about that answer, not the latest", () => {
  const talk = startTalk();
  const first = talk.say(FULL);
  talk.say("barrel 300 gal drum, hose 1 gpm");
  talk.say("ramp run=12ft rise=12in");
  expect(textsOf(talk.press(buttonOf(first, "How?")))[0]).toBe("Time to fill: 11 min");
  talk.press(buttonOf(first, "Change: Cold water"));
  expect(textsOf(talk.say("45F"))).toEqual([
    "Changed: Cold water, 50 °F → 45 °F.",
    "As said before. Note: The floor gets wet.",
  ]);
  expect(talk.state.last?.facts["drum"]?.typed).toBe("55 gal");
});

test("change of the last answer acts on it although another walk is open", () => {
  const talk = startTalk();
  const answer = talk.say(FULL);
  talk.say("ramp");
  const card = talk.press(buttonOf(answer, "Change: Cold water"));
  expect(promptOf(card)).toBe("How cold is the water?");
  expect(talk.state.parked?.map(({ topic }) => topic)).toEqual(["ramp"]);
});

test("an answer more than twenty steps back can no longer be changed, and says so", () => {
  const talk = startTalk();
  const first = talk.say(FULL);
  for (let step = 0; step < 21; step++) talk.say(`barrel ${step + 10} gal drum, hose 1 gpm`);
  expect(talk.press(buttonOf(first, "How?")).summary).toBe(
    "That answer is too far back for me to change or explain. Ask the question again.",
  );
});

test("a button of a walk nobody knows is refused and offers what is open", () => {
  const talk = startTalk();
  talk.say("barrel");
  const card = talk.say("30 gal", { walk: "w9-gone", fact: "drum" });
  expect(card.summary).toBe("That button belongs to a question I no longer hold. Nothing was changed.");
  expect(buttonsOf(card).map(({ label }) => label)).toEqual(["Go on: Filling a barrel", "Help"]);
});

test.each(["__proto__", "constructor", "*", ""])("a fact called %j harms nothing", (fact) => {
  const talk = startTalk();
  talk.say(FULL);
  const walk = talk.state.last?.walk ?? "";
  expect(talk.say("30 gal", { walk, fact }).title).toBe("An older button");
  talk.say("barrel");
  expect(promptOf(talk.say("30 gal", { walk: talk.state.walk?.id ?? "", fact }))).toBe("How much does the hose give?");
});

test("yes from before the language turned still means yes", () => {
  const talk = startTalk();
  talk.say("barrel");
  talk.say("55 gal");
  talk.say("5 gpm");
  const lined = talk.say("50F");
  talk.say("idioma es");
  expect(headlineOf(talk.press(buttonOf(lined, "No")))).toBe("Lleno en 11 min");
  expect(talk.state.last?.facts["lined"]?.value).toBe(false);
});
