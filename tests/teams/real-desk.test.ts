import { randomUUID } from "node:crypto";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from "vitest";
import { parse } from "yaml";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { readCompany } from "../../src/boundary/company-books.ts";
import { createDesk } from "../../src/desk.ts";
import { fixtureBooks } from "../support/fixture-books.ts";
import { createMemoryStore, type MemoryStore } from "../support/memory-store.ts";
import { CardJudge } from "./card-judge.ts";
import { FakePlatform, TENANT_ID } from "./fake-platform.ts";
import { openTestDoor, type TestDoor } from "./open-test-door.ts";

const library = await loadLibrary();
let judge: CardJudge;
let platform: FakePlatform;
let store: MemoryStore;
let door: TestDoor;
const faults: unknown[] = [];

beforeAll(async () => {
  judge = await CardJudge.start();
});
afterAll(async () => {
  await judge.stop();
});
beforeEach(async () => {
  platform = await FakePlatform.start();
  store = createMemoryStore();
  door = await openDoor();
});
afterEach(async () => {
  await door.close();
  await platform.stop();
  expect(faults).toEqual([]);
});

/** The real desk with the real topics, as after a start of the program. */
async function openDoor(): Promise<TestDoor> {
  const desk = createDesk({
    library,
    books: fixtureBooks,
    store,
    runner: createInlineRunner(library, fixtureBooks),
    clock: { now_ms: () => 1_000_000 },
    newId: randomUUID,
    newCode: () => "123456",
    faults: { report: (fault) => faults.push(fault) },
  });
  return await openTestDoor({ desk, platform });
}

let messages = 0;
async function say(text: string, changes: object = {}) {
  messages++;
  const before = platform.sent.length;
  const { status } = await door.say({ id: `message-${messages}`, text, ...changes });
  expect(status).toBe(200);
  return platform.sent.slice(before);
}
function cardOf(sent: FakePlatform["sent"][number] | undefined) {
  const card = sent?.body.attachments?.[0]?.content;
  if (card === undefined) throw new Error("no card was sent");
  return card;
}
async function seenIn(sent: FakePlatform["sent"][number] | undefined) {
  const judged = await judge.judge(cardOf(sent), 320);
  const { complaints, unknownProperties, cutOff } = judged;
  expect({ complaints, unknownProperties, cutOff }).toEqual({ complaints: [], unknownProperties: [], cutOff: [] });
  return judged;
}
/** Presses this button of a card in the browser, and sends on what the card sends. */
async function press(sent: FakePlatform["sent"][number] | undefined, label: string) {
  const value = await judge.press(cardOf(sent), label);
  return await say("", { text: undefined, value, replyToId: sent?.id });
}

/** Fills in a form in the browser, and sends on what it sends. */
async function send(sent: FakePlatform["sent"][number] | undefined, typed: Readonly<Record<string, string>>) {
  const value = await judge.press(cardOf(sent), "Work it out", typed);
  return await say("", { text: undefined, value, replyToId: sent?.id });
}

test("a whole question is answered with a number and its cautions", async () => {
  const [sent] = await say("<at>Oldhand</at>&nbsp;expansion 80 gal tank, 50F cold 140F hot 60 psi");
  const { text } = await seenIn(sent);
  // Growth of 80 gal from 50 to 140 degF with the densities of the IAPWS formulation: about 1.3 gal.
  expect(text).toMatch(/1\.3\d* gal/);
  expect(sent?.bytes).toBeLessThan(28_672);
});

test("being added is welcomed with questions to try", async () => {
  const [sent] = await say("", { type: "conversationUpdate", text: undefined, membersAdded: [{ id: "28:oldhand" }] });
  const { buttons, text } = await seenIn(sent);
  expect(buttons.length).toBeGreaterThan(2);
  expect(text.length).toBeGreaterThan(50);
});

test("a walk goes on by buttons and by typing, over a restart, to an answer", async () => {
  let [sent] = await say("expansion");
  const asked: string[] = [];
  for (let { buttons, text } = await seenIn(sent); buttons.includes("Stop"); { buttons, text } = await seenIn(sent)) {
    asked.push(text);
    if (asked.length === 2) {
      await door.close();
      door = await openDoor();
      [sent] = await say("130 F");
      continue;
    }
    const [reply, closed] = await press(sent, buttons[0] ?? "");
    expect([closed?.method, (await seenIn(closed)).buttons]).toEqual(["PUT", []]);
    expect((await seenIn(closed)).text).toContain(`✓ ${buttons[0]}`);
    sent = reply;
  }
  expect(asked.length).toBeGreaterThan(3);
  expect(new Set(asked).size).toBe(asked.length);
  expect((await seenIn(sent)).text).toMatch(/\d gal/);
});

test("a form with a mistake comes back with the mistake named, and then gives the answer", async () => {
  const [question] = await say("expansion");
  const [form] = await press(question, "As a form");
  const [again, closed] = await send(form, {
    Tank: "80 apples",
    "Tank temperature": "140F",
    "Line pressure": "60 psi",
  });
  const { text } = await seenIn(again);
  expect(text).toMatch(/▲.*apples/);
  expect(await seenIn(closed)).toMatchObject({ buttons: [], text: expect.stringContaining("80 apples") });
  const [answer] = await send(again, { Tank: "80 gal" });
  expect((await seenIn(answer)).text).toMatch(/1\.3\d* gal/);
});

test("a delivery that comes again after a restart gets the card that was given", async () => {
  const [first] = await say("mix 135 to 120 with 50 in");
  const id = `message-${messages}`;
  await door.close();
  door = await openDoor();
  const before = platform.sent.length;
  await door.say({ id, text: "mix 135 to 120 with 50 in" });
  expect(cardOf(platform.sent[before])).toEqual(cardOf(first));
  expect(store.commits).toHaveLength(1);
});

test("two people of a group have walks of their own", async () => {
  const group = { conversation: { id: "19:group", conversationType: "groupChat", tenantId: TENANT_ID } };
  const ben = { ...group, from: { id: "29:ben", name: "Ben", aadObjectId: "ben-object" } };
  const [ofAna] = await say("expansion", group);
  const [ofBen] = await say("mix", ben);
  expect((await seenIn(ofAna)).text).not.toBe((await seenIn(ofBen)).text);
  expect(new Set(store.commits.map(({ person }) => person.id)).size).toBe(2);
});

test("Spanish is answered in Spanish", async () => {
  await say("idioma español");
  const [sent] = await say("mezcla 135 a 120 con 50 de entrada");
  expect((await seenIn(sent)).text).toMatch(/caliente/i);
});

test("where says in a channel what to write so that the summaries come there, in both languages", async () => {
  const conversation = { id: "19:jobs@thread.tacv2;messageid=1", conversationType: "channel", tenantId: TENANT_ID };
  const [english] = await say("where", { conversation });
  const { text } = await seenIn(english);
  const [, line = ""] = /(team_channel: .*)/.exec(text) ?? [];
  // As somebody copies it from the screen, with what is not seen of it.
  const invented = "invented: true\nname: A\ntown: B\ntime_zone: UTC\nlanguage: en\nunits: us\n";
  expect(readCompany(parse(`${invented}${line}\n`))).toMatchObject({
    value: { teamChannel: { door: "teams", id: "19:jobs@thread.tacv2" } },
  });
  await say("idioma español", { conversation });
  const [spanish] = await say("¿dónde?", { conversation });
  expect((await seenIn(spanish)).text).toMatch(/Los resúmenes.*team_channel: .*19:jobs/);
});
