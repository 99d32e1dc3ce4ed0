import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { CardMessage } from "../../adapters/teams/port.ts";
import { judgeMessage } from "../slack/block-kit-judge.ts";
import { CardJudge } from "../teams/card-judge.ts";

/** The reviewed cards of every topic, as the two platforms get them. */
const GOLDEN = new URL("../golden", import.meta.url).pathname;
const files = readdirSync(GOLDEN, { recursive: true, encoding: "utf8" });
const of = (kind: string) => files.filter((name) => name.endsWith(kind)).toSorted();
const read = (name: string): unknown => JSON.parse(readFileSync(join(GOLDEN, name), "utf8"));

let judge: CardJudge;
beforeAll(async () => {
  judge = await CardJudge.start();
});
afterAll(async () => {
  await judge.stop();
});

test("both platforms have a card of every topic that is reviewed, in both languages", () => {
  expect(of(".slack.json").length).toBe(of(".teams.json").length);
  const languages = of(".teams.json").map((name) => (read(name) as readonly CardMessage[])[0]?.card.lang);
  expect(new Set(languages)).toEqual(new Set(["en", "es"]));
});

test.each(of(".slack.json"))("Slack takes every message of %s", (name) => {
  const messages = read(name) as readonly unknown[];
  expect(messages.length).toBeGreaterThan(0);
  for (const message of messages) expect(judgeMessage(message)).toEqual([]);
});

describe.each([320, 640])("at %i px", (width) => {
  test.each(of(".teams.json"))("the official renderer shows all of %s", async (name) => {
    for (const { card } of read(name) as readonly CardMessage[]) {
      const { complaints, unknownProperties, cutOff, height } = await judge.judge(card, width);
      expect({ complaints, unknownProperties, cutOff }).toEqual({ complaints: [], unknownProperties: [], cutOff: [] });
      expect(height).toBeGreaterThan(20);
    }
  });
});
