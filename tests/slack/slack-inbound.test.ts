import { afterEach, describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import {
  closeOpened,
  fixture,
  type Json,
  opened,
  plainCard,
  press,
  sendEvent,
  sendForm,
  sendPayload,
  slash,
} from "./slack-harness.ts";

afterEach(closeOpened);

describe("what the desk is asked", () => {
  test("a slash command: who, where, what, and the trigger as delivery", async () => {
    const { door, desk, slack } = await opened();
    await sendForm(door, slash(slack));
    await slack.call("/respond/slash");
    expect(desk.asked).toEqual([
      {
        caller: { door: "slack", organisation: "T1", user: "U1", name: "ann" },
        conversation: "T1/C1",
        channel: "C1",
        delivery: "trigger/1.2.slash",
        text: "expansion 80 gal 50F to 140F",
      },
    ]);
  });

  test("a mention: the thread is the conversation, the mention itself is taken out", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("app-mention"));
    await slack.call("chat.postMessage");
    expect(desk.asked).toEqual([
      {
        caller: { door: "slack", organisation: "T1", user: "U1", name: "Ann" },
        conversation: "T1/C1/1767225600.000100",
        channel: "C1",
        delivery: "message/C1/1767225600.000100",
        text: "expansion 80 gal 50F to 140F",
      },
    ]);
  });

  test("a mention inside a thread stays in that thread's conversation", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("app-mention", { event: { thread_ts: "1767000000.000100" } }));
    const { body } = await slack.call("chat.postMessage");
    expect(body).toMatchObject({ channel: "C1", thread_ts: "1767000000.000100" });
    expect(desk.asked[0]?.conversation).toBe("T1/C1/1767000000.000100");
  });

  test("a direct message: the channel is the conversation, in a thread too", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("message-im"));
    await sendEvent(door, fixture("message-im", { event: { ts: "2.1", thread_ts: "1767225700.000100" } }));
    const [first, second] = [await slack.call("chat.postMessage", 0), await slack.call("chat.postMessage", 1)];
    expect(desk.asked.map((inbound) => inbound.conversation)).toEqual(["T1/D1", "T1/D1"]);
    expect([first.body["thread_ts"], second.body["thread_ts"]]).toEqual([undefined, "1767225700.000100"]);
  });

  test("a press: what the button says, its question, and the conversation of its message", async () => {
    const { door, desk, slack } = await opened();
    await sendPayload(door, press(slack));
    await slack.call("/respond/press");
    expect(desk.asked).toEqual([
      {
        caller: { door: "slack", organisation: "T1", user: "U1", name: "ann" },
        conversation: "T1/C1/1767225600.000100",
        delivery: "trigger/1.2.press",
        text: "50F",
        aim: { walk: "w3", fact: "cold" },
      },
    ]);
  });

  test("a day picked in a calendar: the day, and the question that it answers", async () => {
    const { door, desk, slack } = await opened();
    const pick = {
      type: "datepicker",
      action_id: "answer_0",
      block_id: '{"walk":"w4","fact":"day"}',
      selected_date: "2026-12-01",
      initial_date: null,
    };
    await sendPayload(door, press(slack, "button-in-thread", { actions: [pick] }));
    await slack.call("/respond/press");
    expect(desk.asked).toMatchObject([{ text: "2026-12-01", aim: { walk: "w4", fact: "day" } }]);
  });

  test("a calendar that is emptied again says nothing", async () => {
    const { door, desk, slack } = await opened();
    const pick = {
      type: "datepicker",
      action_id: "answer_0",
      block_id: '{"walk":"w4","fact":"day"}',
      selected_date: null,
    };
    expect((await sendPayload(door, press(slack, "button-in-thread", { actions: [pick] }))).status).toBe(200);
    expect(desk.asked).toEqual([]);
  });

  test("a form with a day and a number: both as they are typed", async () => {
    const { door, desk, slack } = await opened();
    const values = {
      due: { value: { type: "datepicker", selected_date: "2026-12-01" } },
      circuits: { value: { type: "number_input", value: "2" } },
      day: { value: { type: "datepicker", selected_date: null } },
    };
    await sendPayload(door, fixture("view-submission", { view: { state: { values } } }));
    await slack.call("chat.postMessage");
    expect(desk.asked[0]?.form?.fields).toMatchObject({ due: "2026-12-01", circuits: "2", day: "" });
  });

  test("a form: its topic and what stands in every field, empty ones too", async () => {
    const { door, desk, slack } = await opened();
    await sendPayload(door, fixture("view-submission"));
    await slack.call("chat.postMessage");
    expect(desk.asked).toMatchObject([
      {
        conversation: "T1/C1",
        text: "",
        form: { topic: "circuit", fields: { element: "4500 W", supply: "240", run: "" } },
      },
    ]);
    expect(desk.asked[0]?.delivery).toMatch(/^view\/V1\/[0-9a-f]{32}$/);
  });

  test("somebody of another organisation in a shared channel is not taken for one of ours", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("app-mention", { event: { user: "U9", team: "T9", user_team: "T9" } }));
    await slack.call("chat.postMessage");
    expect(desk.asked[0]).toMatchObject({ caller: { organisation: "T9" }, conversation: "T9/C1/1767225600.000100" });
  });

  const TYPED: readonly (readonly [sent: string, typed: string])[] = [
    ["<@UBOT> wait 3/4 in &lt; 60 ft &amp; 2 gpm", "wait 3/4 in < 60 ft & 2 gpm"],
    ["wait 60 ft <@UBOT>", "wait 60 ft"],
    ["<@UBOT> ask <@U2|bob> and <@U3> in <#C2|crew>", "ask @bob and @U3 in #crew"],
    ["<@UBOT> see <https://a.test/x|a.test/x> <mailto:a@b.test|a@b.test>", "see a.test/x a@b.test"],
    ["<@UBOT> <!here> help", "@here help"],
    ["<@UBOT> `mix 135 to 120 with 50 in`", "mix 135 to 120 with 50 in"],
    ["<@UBOT>", ""],
    ["<@UBOT> &amp;lt;", "&lt;"],
  ];
  test.each(TYPED)("%s was typed as: %s", async (sent, typed) => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("app-mention", { event: { text: sent } }));
    await slack.call("chat.postMessage");
    expect(desk.asked[0]?.text).toBe(typed);
  });

  test("an empty command is an empty text, which the desk welcomes", async () => {
    const { door, desk, slack } = await opened();
    await sendForm(door, slash(slack, { text: "  " }));
    await slack.call("/respond/slash");
    expect(desk.asked[0]?.text).toBe("");
  });
});

describe("what is not for the bot", () => {
  const OTHERS: readonly (readonly [name: string, event: Json])[] = [
    ["another bot", { bot_id: "B2", subtype: "bot_message", user: undefined }],
    ["another bot that writes as a user", { bot_id: "B2" }],
    ["its own message", { user: "UBOT" }],
    ["an edit", { subtype: "message_changed", user: undefined, message: { text: "x" } }],
    ["an edited message", { edited: { user: "U1", ts: "2.2" } }],
    ["a deletion", { subtype: "message_deleted", user: undefined }],
    ["a message in a channel", { channel_type: "channel", channel: "C1" }],
    ["a join", { subtype: "channel_join" }],
  ];
  test.each(OTHERS)("%s is acknowledged and not answered", async (_, changes) => {
    const { door, desk, slack } = await opened();
    expect((await sendEvent(door, fixture("message-im", { event: changes }))).status).toBe(200);
    await sendEvent(door, fixture("message-im", { event: { ts: "9.9", text: "the next one" } }));
    await slack.call("chat.postMessage");
    expect(desk.asked.map((inbound) => inbound.text)).toEqual(["the next one"]);
  });

  test("a photo with words is heard", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("message-im", { event: { subtype: "file_share", files: [] } }));
    await slack.call("chat.postMessage");
    expect(desk.asked).toHaveLength(1);
  });
});

describe("acknowledging", () => {
  const UNKNOWN: readonly (readonly [name: string, payload: Json])[] = [
    [
      "an unknown button",
      { ...fixture("button-in-thread"), actions: [{ type: "button", action_id: "x", block_id: "b" }] },
    ],
    [
      "a button with a foreign value",
      { ...fixture("button-in-thread"), actions: [{ type: "button", action_id: "say_0", value: "x" }] },
    ],
    ["an unknown view", fixture("view-submission", { view: { callback_id: "other" } })],
    ["a form with foreign metadata", fixture("view-submission", { view: { private_metadata: "x" } })],
    ["a closed view", { ...fixture("view-submission"), type: "view_closed", is_cleared: false }],
    [
      "a global shortcut",
      { type: "shortcut", callback_id: "x", team: { id: "T1" }, user: { id: "U1" }, trigger_id: "1" },
    ],
    [
      "a message shortcut",
      {
        type: "message_action",
        callback_id: "x",
        team: { id: "T1" },
        user: { id: "U1" },
        channel: { id: "C1" },
        trigger_id: "1",
      },
    ],
    [
      "a menu that asks for options",
      { type: "block_suggestion", action_id: "x", team: { id: "T1" }, user: { id: "U1" } },
    ],
    ["something not yet invented", { type: "wobble", team: { id: "T1" }, user: { id: "U1" } }],
  ];
  test.each(UNKNOWN)("%s is acknowledged instead of hanging", async (_, payload) => {
    const { door, desk } = await opened();
    expect((await sendPayload(door, payload)).status).toBe(200);
    expect(desk.asked).toEqual([]);
  });

  test("an unknown event is acknowledged", async () => {
    const { door } = await opened();
    expect((await sendEvent(door, fixture("app-mention", { event: { type: "wobble" } }))).status).toBe(200);
  });

  test("a command of another name is answered, for a workspace may rename it", async () => {
    const { door, desk, slack } = await opened();
    await sendForm(door, slash(slack, { command: "/hand" }));
    await slack.call("/respond/slash");
    expect(desk.asked).toHaveLength(1);
  });

  test("comes before the answer: a command is acknowledged while the desk still works", async () => {
    let finish: (card: Card) => void = () => {};
    const { door, slack } = await opened(() => new Promise((resolve) => (finish = resolve)));
    const sent = await sendForm(door, slash(slack));
    expect([sent.status, sent.body, slack.calls.length]).toEqual([200, "", 0]);
    finish(plainCard("done"));
    expect((await slack.call("/respond/slash")).body["text"]).toBe("done");
  });

  test("does not wait for a Web API that never answers", async () => {
    const { door, slack } = await opened(undefined, { call_ms: 300 });
    slack.script("auth.test", () => ({ hangs: true }));
    slack.script("chat.postMessage", () => ({ hangs: true }));
    expect((await sendEvent(door, fixture("app-mention"))).status).toBe(200);
    expect((await sendForm(door, slash(slack))).status).toBe(200);
    await slack.call("/respond/slash");
    expect(slack.count("auth.test")).toBe(0);
  });

  test("a desk that throws at once is a clear sentence with a number that is in the log too", async () => {
    const { door, slack, logged } = await opened(() => {
      throw new Error("invented fault");
    });
    expect((await sendForm(door, slash(slack))).status).toBe(200);
    const { body } = await slack.call("/respond/slash");
    expect(body["response_type"]).toBe("ephemeral");
    expect(JSON.stringify(body)).not.toContain("invented fault");
    const fault = logged.find((line) => line.message === "no answer could be given");
    const [id] = /[0-9a-f]{8}/.exec(JSON.stringify(fault?.data)) ?? [];
    expect(body["text"]).toContain(id);
  });
});
