import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Reply } from "../../src/desk.ts";
import { buildFaultCard } from "../../src/messages/build-link-card.ts";
import type { Card } from "../../src/messages/card.ts";
import { COMMON } from "../../src/messages/voice.ts";
import { messageActivity, OUTBOUND_TOKEN, TENANT_ID } from "./fake-platform.ts";
import { echoCard, openTestDoor, pauseForever, type TestDoor } from "./open-test-door.ts";

let door: TestDoor;
beforeEach(async () => {
  door = await openTestDoor();
});
afterEach(async () => {
  await door.close();
});

const AIM = { walk: "w1", fact: "cold" };
const question: Card = {
  title: "Expansion tank",
  summary: "How cold is the incoming water?",
  blocks: [
    { kind: "question", prompt: "How cold is the incoming water?", progress: "2 of 5" },
    {
      kind: "buttons",
      buttons: [
        { label: "50 °F", say: "50F", aim: AIM },
        { label: "60 °F", say: "60F", aim: AIM },
        { label: "Stop", say: "stop" },
      ],
    },
  ],
};
const form: Card = {
  title: "Electric circuit",
  summary: "Form: electric circuit",
  blocks: [
    {
      kind: "form",
      topic: "circuit",
      title: "Electric circuit",
      submit: "Work it out",
      fields: [
        { fact: "element", label: "Element power", required: true, input: { type: "text" } },
        {
          fact: "supply",
          label: "Supply",
          required: true,
          input: { type: "choice", options: [{ value: "240", label: "240 V" }] },
        },
      ],
    },
  ],
};
const reply = (card: Card): Reply => ({ card, isRepeat: false });

/** Every text of a card's elements, in order. */
function textsOf(value: unknown): string[] {
  if (Array.isArray(value)) return value.flatMap(textsOf);
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    typeof inner === "string" && ["text", "title", "label"].includes(key) ? [inner] : textsOf(inner),
  );
}
function cardOf(sent: { readonly body: { attachments: readonly { content: { body: unknown[] } }[] } } | undefined) {
  return sent?.body.attachments[0]?.content ?? { body: [] };
}
/** What the platform sends when the button or form of this title is used on a card that was sent. */
function pressOn(sent: TestDoor["platform"]["sent"][number] | undefined, title: string, typed: object = {}) {
  const action = (function find(value: unknown): { data?: object } | undefined {
    if (typeof value !== "object" || value === null) return undefined;
    if (Reflect.get(value, "type") === "Action.Submit" && Reflect.get(value, "title") === title) return value;
    return Object.values(value)
      .map(find)
      .find((found) => found !== undefined);
  })(cardOf(sent).body);
  if (action === undefined) throw new Error(`no button ${title}`);
  return { text: undefined, replyToId: sent?.id, value: { ...action.data, ...typed } };
}

describe("messages", () => {
  test("reach the desk with who, where and what, and are answered with a card in the same conversation", async () => {
    expect(await door.say()).toMatchObject({ status: 200, body: "" });
    expect(door.desk.received).toEqual([
      {
        caller: { door: "teams", organisation: TENANT_ID, user: "ana-object", name: "Ana" },
        conversation: "19:chat",
        channel: "19:chat",
        delivery: "19:chat 1700000000001",
        text: "expansion 80 gal",
      },
    ]);
    const [sent] = door.platform.sent;
    expect(sent).toMatchObject({ method: "POST", path: "/v3/conversations/19%3Achat/activities" });
    expect(sent?.headers.authorization).toBe(`Bearer ${OUTBOUND_TOKEN}`);
    expect(sent?.body).toMatchObject({
      type: "message",
      summary: "echo expansion 80 gal",
      from: { id: "28:oldhand" },
      recipient: { id: "29:ana" },
    });
    expect(textsOf(cardOf(sent).body)).toEqual(["Echo", "echo expansion 80 gal"]);
  });

  test.each([
    { name: "a mention", text: "<at>Oldhand</at> mix 135", mention: "<at>Oldhand</at>" },
    { name: "a mention and a hard space", text: "<at>Oldhand</at>&nbsp;mix 135", mention: "<at>Oldhand</at>" },
  ])("lose $name of the bot", async ({ text, mention }) => {
    const entities = [{ type: "mention", text: mention, mentioned: { id: "28:oldhand", name: "Oldhand" } }];
    await door.say({ text, entities });
    expect(door.desk.received.map((inbound) => inbound.text)).toEqual(["mix 135"]);
  });

  test("that only mention the bot say nothing, which is welcomed", async () => {
    await door.say({ text: "<at>Oldhand</at> " });
    expect(door.desk.received.map(({ text }) => text)).toEqual([""]);
  });

  test.each([
    { name: "the bot itself", changes: { from: { id: "28:oldhand" } } },
    { name: "another bot", changes: { from: { id: "28:other-bot" } } },
    { name: "a sender that says it is a bot", changes: { from: { id: "29:x", role: "bot" } } },
    { name: "nobody", changes: { from: undefined } },
    { name: "a reaction", changes: { type: "messageReaction", reactionsAdded: [{ type: "like" }] } },
    { name: "an edit", changes: { type: "messageUpdate" } },
    { name: "an installation notice", changes: { type: "installationUpdate", action: "add" } },
    { name: "a card of another app", changes: { text: undefined, value: { verb: "approve" } } },
    { name: "no text", changes: { text: undefined } },
    { name: "a number for a text", changes: { text: 5 } },
    { name: "no id", changes: { id: undefined } },
  ])("of $name are taken and not answered", async ({ changes }) => {
    expect(await door.say(changes)).toMatchObject({ status: 200, body: "" });
    expect([door.desk.received, door.platform.sent]).toEqual([[], []]);
  });

  test("delivered twice are answered once, also at the same time", async () => {
    await Promise.all([door.say(), door.say()]);
    await door.say();
    expect([door.desk.received.length, door.platform.sent.length]).toEqual([1, 1]);
  });

  test("of the same id in two conversations are both answered", async () => {
    await door.say();
    await door.say({ conversation: { id: "19:other", conversationType: "personal", tenantId: TENANT_ID } });
    expect(door.desk.received.map(({ delivery }) => delivery)).toEqual([
      "19:chat 1700000000001",
      "19:other 1700000000001",
    ]);
  });

  test("that a door before a restart answered are answered again, because the answer may have been lost", async () => {
    door.desk.answer = async () => ({ card: echoCard("as before"), isRepeat: true });
    await door.say();
    expect(door.platform.messages.map(({ body }) => body.summary)).toEqual(["echo as before"]);
  });

  test("in a channel are answered in their thread", async () => {
    await door.say({
      conversation: { id: "19:x@thread.tacv2;messageid=1700", conversationType: "channel", tenantId: TENANT_ID },
    });
    expect(door.platform.sent[0]?.path).toBe("/v3/conversations/19%3Ax%40thread.tacv2%3Bmessageid%3D1700/activities");
  });

  test("that the desk fails on are answered with a number that is in the log, and may be sent again", async () => {
    door.desk.answer = async () => {
      throw new Error("disk full at 19:chat");
    };
    await door.say({ locale: "es-MX" });
    const text = textsOf(cardOf(door.platform.sent[0]).body).join();
    const [, id] = /Algo falló de mi lado.*reporte ([0-9a-f]{8})/.exec(text) ?? [];
    expect(text).not.toContain("disk full");
    expect(door.log).toEqual([
      { level: "error", text: "a message was not answered", data: expect.objectContaining({ id }) },
    ]);
    door.desk.answer = async ({ text: said }) => reply(echoCard(said));
    await door.say();
    expect(door.platform.messages.at(-1)?.body.summary).toBe("echo expansion 80 gal");
  });
});

describe("being added", () => {
  const added = (ids: readonly string[]) => ({
    type: "conversationUpdate",
    text: undefined,
    membersAdded: ids.map((id) => ({ id })),
  });

  test("is welcomed once for a conversation", async () => {
    await door.say({ ...added(["28:oldhand", "29:ana"]), id: "1" });
    await door.say({ ...added(["28:oldhand"]), id: "2" });
    await door.say({ ...added(["28:oldhand"]), id: undefined });
    expect(door.desk.received).toMatchObject([{ text: "", delivery: "welcome 19:chat" }]);
    expect(door.platform.sent).toHaveLength(1);
  });

  test("is not when somebody else is added or removed", async () => {
    await door.say(added(["29:ben"]));
    await door.say({ type: "conversationUpdate", text: undefined, membersRemoved: [{ id: "28:oldhand" }] });
    expect(door.platform.sent).toEqual([]);
  });
});

describe("buttons", () => {
  test("say what could have been typed, with the question they belong to", async () => {
    door.desk.answer = async () => reply(question);
    await door.say();
    await door.say({ id: "2", ...pressOn(door.platform.sent[0], "50 °F") });
    expect(door.desk.received[1]).toMatchObject({ text: "50F", aim: AIM, conversation: "19:chat" });
  });

  test("of an answered question are taken away, and the answer stands in their place", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    await door.say();
    await door.say({ id: "2", ...pressOn(door.platform.sent[0], "50 °F") });
    const closed = door.platform.sent[2];
    expect(door.platform.sent.map(({ method }) => method)).toEqual(["POST", "POST", "PUT"]);
    expect(closed?.path).toBe("/v3/conversations/19%3Achat/activities/sent-1");
    expect(textsOf(cardOf(closed).body)).toEqual([
      "Expansion tank",
      "2 of 5",
      "How cold is the incoming water?",
      "✓ 50 °F",
    ]);
    expect(JSON.stringify(closed?.body)).not.toContain("Action.Submit");
  });

  test("pressed twice under two ids are answered once", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    await door.say();
    const press = pressOn(door.platform.sent[0], "50 °F");
    await Promise.all([door.say({ id: "2", ...press }), door.say({ id: "3", ...press })]);
    await door.say({ id: "4", ...press });
    expect([door.desk.received.length, door.platform.sent.length]).toEqual([2, 3]);
  });

  test("pressed after another one leave the answer that counted on the card", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    await door.say();
    await door.say({ id: "2", ...pressOn(door.platform.sent[0], "50 °F") });
    await door.say({ id: "3", ...pressOn(door.platform.sent[0], "60 °F") });
    expect(door.desk.received.map(({ text }) => text)).toEqual(["expansion 80 gal", "50F", "60F"]);
    const updates = door.platform.sent.filter(({ method }) => method === "PUT");
    expect(updates.map((sent) => textsOf(cardOf(sent).body).at(-1))).toEqual(["✓ 50 °F"]);
  });

  test("without a question may be pressed again, and their card stays", async () => {
    door.desk.answer = async () => reply(question);
    await door.say();
    const press = pressOn(door.platform.sent[0], "Stop");
    await door.say({ id: "2", ...press });
    await door.say({ id: "3", ...press });
    expect(door.desk.received.map(({ text }) => text)).toEqual(["expansion 80 gal", "stop", "stop"]);
    expect(door.platform.sent.filter(({ method }) => method === "PUT")).toEqual([]);
  });

  test("of an answer may be pressed again, and their card stays", async () => {
    const buttons = [{ label: "How?", say: "how", aim: AIM }];
    door.desk.answer = async () => reply({ ...echoCard("4.5 gal"), blocks: [{ kind: "buttons", buttons }] });
    await door.say();
    const press = pressOn(door.platform.sent[0], "How?");
    await door.say({ id: "2", ...press });
    await door.say({ id: "3", ...press });
    expect(door.desk.received.slice(1)).toMatchObject([
      { text: "how", aim: AIM },
      { text: "how", aim: AIM },
    ]);
    expect(door.platform.sent.filter(({ method }) => method === "PUT")).toEqual([]);
  });

  test("that the desk fails on stay, and may be pressed again", async () => {
    door.desk.answer = async () => reply(question);
    await door.say();
    const press = pressOn(door.platform.sent[0], "50 °F");
    door.desk.answer = async () => reply(buildFaultCard(COMMON.en, "12345678"));
    await door.say({ id: "2", ...press });
    expect(door.platform.sent.filter(({ method }) => method === "PUT")).toEqual([]);
    door.desk.answer = async () => reply(echoCard("next"));
    await door.say({ id: "3", ...press });
    expect(door.desk.received).toHaveLength(3);
    expect(door.platform.sent.filter(({ method }) => method === "PUT")).toHaveLength(1);
  });

  test("pressed after a restart still close their question", async () => {
    door.desk.answer = async () => reply(question);
    await door.say();
    const press = pressOn(door.platform.sent[0], "50 °F");
    const restarted = await openTestDoor({ platform: door.platform });
    await restarted.say({ id: "2", ...press });
    await restarted.close();
    const closed = door.platform.sent.find(({ method }) => method === "PUT");
    expect(textsOf(cardOf(closed).body)).toEqual(["How cold is the incoming water?", "✓ 50 °F"]);
  });

  test("pressed after a restart leave a card that says more than its question", async () => {
    const verdict = { kind: "caution", word: "Check first" } as const;
    door.desk.answer = async () => reply({ ...question, verdict });
    await door.say();
    const press = pressOn(door.platform.sent[0], "50 °F");
    const restarted = await openTestDoor({ platform: door.platform });
    await restarted.say({ id: "2", ...press });
    await restarted.close();
    expect(door.platform.sent.filter(({ method }) => method === "PUT")).toEqual([]);
  });

  test("of a question that cannot be changed any more are still answered", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    await door.say();
    const press = pressOn(door.platform.sent[0], "50 °F");
    door.platform.refusals = [{ status: 201 }, { status: 404 }];
    expect(await door.say({ id: "2", ...press })).toMatchObject({ status: 200 });
    expect(door.log).toEqual([
      { level: "warn", text: "an answered card was not closed", data: expect.objectContaining({ status: 404 }) },
    ]);
  });

  test("of the newer kind are answered in the conversation and taken in the answer to the request", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    await door.say();
    const { value, replyToId } = pressOn(door.platform.sent[0], "50 °F");
    const action = { type: "Action.Execute", verb: "", data: value };
    const answer = await door.say({
      id: "2",
      type: "invoke",
      name: "adaptiveCard/action",
      text: undefined,
      replyToId,
      value: { action },
    });
    expect({ ...answer, body: JSON.parse(answer.body) }).toMatchObject({
      status: 200,
      body: { statusCode: 200, type: "application/vnd.microsoft.activity.message" },
    });
    expect(door.desk.received[1]).toMatchObject({ text: "50F", aim: AIM });
  });

  test.each([
    { name: "another invoke", changes: { name: "composeExtension/query", value: {} } },
    {
      name: "an action of another app",
      changes: { name: "adaptiveCard/action", value: { action: { data: { a: 1 } } } },
    },
    { name: "an action without data", changes: { name: "adaptiveCard/action", value: null } },
  ])("answer $name with 501 and an empty body", async ({ changes }) => {
    const answer = await door.say({ type: "invoke", text: undefined, ...changes });
    expect(answer).toMatchObject({ status: 501, body: "" });
    expect(door.desk.received).toEqual([]);
  });

  test("of a group answer only the person who was asked", async () => {
    door.desk.answer = async ({ aim }) => reply(aim ? echoCard("next") : question);
    const group = { conversation: { id: "19:group", conversationType: "groupChat", tenantId: TENANT_ID } };
    await door.say(group);
    const press = pressOn(door.platform.sent[0], "50 °F");
    await door.say({ ...group, id: "2", ...press, from: { id: "29:ben", name: "Ben", aadObjectId: "ben-object" } });
    expect(textsOf(cardOf(door.platform.sent[1]).body)).toEqual([
      "▲ This question is for Ana. Ask me your own and I will answer you.",
    ]);
    expect([door.desk.received.length, door.platform.sent.length]).toEqual([1, 2]);
    await door.say({ ...group, id: "3", ...press });
    expect(door.desk.received[1]).toMatchObject({ text: "50F", aim: AIM, caller: { user: "ana-object" } });
  });
});

describe("forms", () => {
  test("bring what stands in each field, and are replaced by it", async () => {
    door.desk.answer = async ({ form: sent }) => reply(sent ? echoCard("worked out") : form);
    await door.say();
    const press = pressOn(door.platform.sent[0], "Work it out", { f0_element: "4500 W", f0_supply: "240", other: "x" });
    await door.say({ id: "2", ...press });
    expect(door.desk.received[1]).toMatchObject({
      text: "",
      form: { topic: "circuit", fields: { element: "4500 W", supply: "240" } },
    });
    expect(Object.keys(door.desk.received[1]?.form?.fields ?? {})).toEqual(["element", "supply"]);
    const closed = door.platform.sent.find(({ method }) => method === "PUT");
    expect(textsOf(cardOf(closed).body)).toEqual([
      "Electric circuit",
      "Electric circuit",
      "Element power: ",
      "4500 W",
      "Supply: ",
      "240 V",
    ]);
    expect(JSON.stringify(closed?.body)).not.toContain("Input.");
  });

  test("sent twice under two ids are answered once, and changed ones again", async () => {
    door.desk.answer = async ({ form: sent }) => reply(sent ? echoCard("worked out") : form);
    await door.say();
    const press = pressOn(door.platform.sent[0], "Work it out", { f0_element: "4500 W" });
    await Promise.all([door.say({ id: "2", ...press }), door.say({ id: "3", ...press })]);
    await door.say({ id: "4", ...pressOn(door.platform.sent[0], "Work it out", { f0_element: "5500 W" }) });
    expect(door.desk.received.map(({ form: sent }) => sent?.fields["element"])).toEqual([
      undefined,
      "4500 W",
      "5500 W",
    ]);
  });
});

describe("long work", () => {
  test("shows that it goes on, then how far it is, then the answer in the same message", async () => {
    await door.close();
    // Only the first pauses end by themselves; the later ones last until the work is done.
    const ended: number[] = [];
    door = await openTestDoor({
      pause: (ms, signal) => {
        if (ms === 10_000 || ended.includes(ms)) return pauseForever(ms, signal);
        ended.push(ms);
        return Promise.resolve();
      },
    });
    const { platform } = door;
    const progress = (done: number): Card => ({
      title: "Will it keep up?",
      summary: `${done} of 200`,
      blocks: [{ kind: "progress", text: "Sampled days", done, total: 200 }],
    });
    door.desk.answer = async (_inbound, show) => {
      await platform.until((sent) => sent.some(({ body }) => body.type === "typing"));
      show(progress(50));
      await platform.until((sent) => sent.some(({ body }) => body.summary === "50 of 200"));
      show(progress(100));
      await platform.until((sent) => sent.some(({ body }) => body.summary === "100 of 200"));
      return reply(echoCard("done"));
    };
    await door.say();
    const kinds = platform.messages.map(({ method, path, body }) => [method, path.split("/").at(-1), body.summary]);
    const id = platform.messages[0]?.id;
    expect(kinds).toEqual([
      ["POST", "activities", "50 of 200"],
      ["PUT", id, "100 of 200"],
      ["PUT", id, "echo done"],
    ]);
    expect(platform.sent[0]?.body.type).toBe("typing");
  });

  test("that ends soon shows neither", async () => {
    door.desk.answer = async (_inbound, show) => {
      show(echoCard("half"));
      return reply(echoCard("done"));
    };
    await door.say();
    expect(door.platform.sent.map(({ body }) => body.summary)).toEqual(["echo done"]);
  });

  test("gives the answer a message of its own when the progress message was deleted", async () => {
    await door.close();
    door = await openTestDoor({ pause: (ms, signal) => (ms === 1_500 ? Promise.resolve() : pauseForever(ms, signal)) });
    const { platform } = door;
    door.desk.answer = async (_inbound, show) => {
      show(echoCard("half"));
      await platform.until((sent) => sent.length === 1);
      platform.refusals = [{ status: 404 }];
      return reply(echoCard("done"));
    };
    await door.say();
    expect(platform.messages.map(({ method, body }) => [method, body.summary])).toEqual([
      ["POST", "echo half"],
      ["PUT", "echo done"],
      ["POST", "echo done"],
    ]);
  });

  test("does not hold up the request: it is answered by the conversation when the turn has ended", async () => {
    await door.close();
    door = await openTestDoor({
      pause: (ms, signal) => (ms === 10_000 ? Promise.resolve() : pauseForever(ms, signal)),
    });
    const { platform, desk } = door;
    let finish: (answer: Reply) => void = () => {};
    desk.answer = () =>
      new Promise((resolve) => {
        finish = resolve;
      });
    expect(await door.say()).toMatchObject({ status: 200, body: "" });
    expect(platform.sent).toEqual([]);
    finish(reply(echoCard("late")));
    await platform.until((sent) => sent.length === 1);
    expect(platform.sent[0]).toMatchObject({
      path: "/v3/conversations/19%3Achat/activities",
      body: { summary: "echo late" },
    });
  });

  test("does not hold up other messages of the same person", async () => {
    const { desk } = door;
    let finish: (answer: Reply) => void = () => {};
    desk.answer = ({ text }) =>
      text === "stop"
        ? Promise.resolve(reply(echoCard("stopped")))
        : new Promise((resolve) => {
            finish = resolve;
          });
    const long = door.say();
    await door.say({ id: "2", text: "stop" });
    finish(reply(echoCard("done")));
    await long;
    expect(door.platform.messages.map(({ body }) => body.summary)).toEqual(["echo stopped", "echo done"]);
  });
});

test("a signed activity of odd shape is never answered with a fault", async () => {
  const odd = [null, 0, "", [], {}, [null], { id: 5 }, "19:chat"];
  const keys = [
    "from",
    "conversation",
    "recipient",
    "channelData",
    "value",
    "entities",
    "membersAdded",
    "text",
    "id",
    "replyToId",
    "locale",
  ];
  for (const key of keys)
    for (const value of odd)
      for (const type of ["message", "conversationUpdate", "invoke"]) {
        const { status } = await door.post({ ...messageActivity(door.platform), type, [key]: value });
        expect([200, 401, 501]).toContain(status);
      }
  expect(door.log.filter(({ level }) => level === "error")).toEqual([]);
});
