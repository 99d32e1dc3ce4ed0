import { describe, expect, test } from "vitest";
import type { FormBlock } from "../../src/messages/card.ts";
import { library } from "../support/ask-library.ts";
import { buttonOf, promptOf, startTalk, textsOf } from "../support/talk.ts";

const READER = { language: "en", units: "us" } as const;
const TANK = "How much water does the tank hold?";
const MODEL = "Which model of the catalogue?";

function startSize(said: string) {
  const talk = startTalk(READER, library);
  return { talk, card: talk.say(said) };
}

describe("a named model makes the tank needless", () => {
  test("asked in turn, the model's answer takes the tank off the list", () => {
    const { talk } = startSize("size");
    expect(talk.state.walk?.toAsk).toEqual(["people", "model", "tank", "setpoint", "mixing_valve"]);
    expect(promptOf(talk.say("4"))).toBe(MODEL);
    const next = talk.say("hollin-80");
    expect(talk.state.walk?.toAsk).toEqual(["setpoint", "mixing_valve"]);
    expect(promptOf(next)).toBe("What is the tank set to?");
  });

  test("skipped, it leaves the tank to be asked", () => {
    const { talk } = startSize("size");
    const asked = talk.say("4");
    expect(promptOf(talk.press(buttonOf(asked, "Skip")))).toBe(TANK);
  });

  test("taken back and skipped, it brings the tank's question back", () => {
    const { talk } = startSize("size");
    talk.say("4");
    talk.say("hollin-80");
    expect(promptOf(talk.say("back"))).toBe(MODEL);
    expect(promptOf(talk.say("skip"))).toBe(TANK);
  });

  test("said instead of the tank, when the tank is on the table, it goes on without the tank", () => {
    const { talk, card } = startSize("size people=4");
    expect(promptOf(card)).toBe(TANK);
    const next = talk.say("model hollin-80");
    expect(promptOf(next)).toBe("What is the tank set to?");
    expect(talk.state.walk?.toAsk).toEqual(["setpoint"]);
  });

  test("given in one line, nothing asks for a tank", () => {
    const { talk } = startSize("size people=4 model=hollin-80");
    expect(talk.state.walk?.toAsk).toEqual(["setpoint"]);
  });

  test("the tank itself cannot be skipped while no model is named", () => {
    const { talk } = startSize("size people=4 setpoint=125F");
    expect(textsOf(talk.say("skip"))[0]).toMatch(/^I cannot answer without this: Tank/);
  });
});

describe("in a form", () => {
  const formOf = (blocks: readonly { readonly kind: string }[]) =>
    blocks.find((block): block is FormBlock => block.kind === "form");

  test("the tank's field may be sent empty, the tank temperature's may not", () => {
    const { card } = startSize("form size");
    const required = formOf(card.blocks)
      ?.fields.filter((field) => field.required)
      .map(({ fact }) => fact);
    expect(required).toEqual(["setpoint"]);
  });

  test("sent with neither tank nor model it asks for the tank; with a model it does not", () => {
    const { talk } = startSize("form size");
    const fields = { people: "4", setpoint: "125F", days: "20" };
    const problems = (card: ReturnType<typeof talk.send>) =>
      formOf(card.blocks)
        ?.fields.filter(({ problem }) => problem !== undefined)
        .map(({ fact }) => fact);
    expect(problems(talk.send({ topic: "size", fields }))).toEqual(["tank"]);
    expect(problems(talk.send({ topic: "size", fields: { ...fields, model: "hollin-80" } }))).toBeUndefined();
  });
});

test("help says what excuses a fact", () => {
  const { card } = startSize("help size");
  const rows = card.blocks.flatMap((block) => (block.kind === "rows" ? block.rows : []));
  expect(rows.find(({ label }) => label === "Tank")?.note).toMatch(/I ask if neither it nor this is said: Model\.$/);
});
