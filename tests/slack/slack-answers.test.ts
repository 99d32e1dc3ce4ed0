import { afterEach, describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { judgeMessage } from "./block-kit-judge.ts";
import type { FakeSlack } from "./fake-slack.ts";
import {
  closeOpened,
  type FakeDesk,
  fixture,
  type Json,
  opened,
  press,
  sample,
  sendEvent,
  sendForm,
  sendPayload,
  slash,
} from "./slack-harness.ts";

afterEach(closeOpened);

describe("where answers go", () => {
  test("a command's answer goes into the channel by the response address, unfurling nothing", async () => {
    const { door, slack } = await opened(() => sample("answer"));
    await sendForm(door, slash(slack));
    const { body, token } = await slack.call("/respond/slash");
    expect(judgeMessage(body)).toEqual([]);
    expect(token).toBeUndefined();
    expect(body).toMatchObject({
      response_type: "in_channel",
      replace_original: false,
      unfurl_links: false,
      unfurl_media: false,
      text: "Check first: the water grows by 1.3 gal; a 4.5 gal expansion tank at 60 psi takes it.",
    });
  });

  test("a private card and a question of a command are for the asker only", async () => {
    const { door, slack } = await opened(({ text }) => sample(text));
    for (const text of ["problem", "question"]) await sendForm(door, slash(slack, { text, trigger_id: text }));
    const kinds = [await slack.call("/respond/slash", 0), await slack.call("/respond/slash", 1)];
    expect(kinds.map(({ body }) => body["response_type"])).toEqual(["ephemeral", "ephemeral"]);
  });

  test("a mention is answered in its thread with the bot's token, unfurling nothing", async () => {
    const { door, slack } = await opened(() => sample("answer"));
    await sendEvent(door, fixture("app-mention"));
    const { body, token } = await slack.call("chat.postMessage");
    expect(judgeMessage(body)).toEqual([]);
    expect(token).toBe("Bearer xoxb-invented");
    expect(body).toMatchObject({
      channel: "C1",
      thread_ts: "1767225600.000100",
      unfurl_links: false,
      unfurl_media: false,
    });
  });

  test("a private card for a mention is whispered in the thread; in a direct message it is a message", async () => {
    const { door, slack } = await opened(() => sample("problem"));
    await sendEvent(door, fixture("app-mention"));
    await sendEvent(door, fixture("message-im"));
    const { body } = await slack.call("chat.postEphemeral");
    expect(body).toMatchObject({ channel: "C1", user: "U1", thread_ts: "1767225600.000100" });
    expect((await slack.call("chat.postMessage")).body).toMatchObject({ channel: "D1" });
  });

  test("what follows a whispered question takes its place; an answer for all is posted and the question removed", async () => {
    const { door, slack } = await opened(({ text }) => sample(text === "50F" ? "question" : "answer"));
    await sendPayload(door, press(slack, "button-whispered"));
    const next = await slack.call("/respond/press", 0);
    expect(next.body).toMatchObject({ response_type: "ephemeral", replace_original: true });
    const value = JSON.stringify({ say: "60 psi", aim: { walk: "w3", fact: "line" } });
    const [action] = fixture("button-whispered")["actions"] as Json[];
    await sendPayload(door, press(slack, "button-whispered", { trigger_id: "1.3", actions: [{ ...action, value }] }));
    expect((await slack.call("/respond/press", 1)).body).toMatchObject({ response_type: "in_channel" });
    expect((await slack.call("/respond/press", 2)).body).toEqual({ delete_original: true });
  });

  test("a press in a whispered card that asks nothing leaves that card", async () => {
    const { door, slack } = await opened(() => sample("problem"));
    const [action] = fixture("button-whispered")["actions"] as Json[];
    await sendPayload(door, press(slack, "button-whispered", { actions: [{ ...action, action_id: "say_0" }] }));
    expect((await slack.call("/respond/press")).body).toMatchObject({ replace_original: false });
  });

  test("a press in a thread is answered in the thread", async () => {
    const { door, slack } = await opened(() => sample("question"));
    await sendPayload(door, press(slack));
    expect((await slack.call("/respond/press")).body).toMatchObject({
      response_type: "in_channel",
      replace_original: false,
      thread_ts: "1767225600.000100",
    });
  });

  test("an expired response address falls back to a message for the asker only", async () => {
    const { door, slack } = await opened();
    slack.script("/respond/slash", () => ({ status: 404, body: "used_url" }));
    await sendForm(door, slash(slack));
    const { body } = await slack.call("chat.postEphemeral");
    expect(body).toMatchObject({ channel: "C1", user: "U1", text: "expansion 80 gal 50F to 140F" });
  });

  test("where the bot may not speak, the answer comes as a direct message", async () => {
    const { door, slack } = await opened();
    slack.script("/respond/slash", () => ({ status: 404, body: "expired_url" }));
    slack.script("chat.postEphemeral", () => ({ body: { ok: false, error: "not_in_channel" } }));
    await sendForm(door, slash(slack));
    expect((await slack.call("chat.postMessage")).body).toMatchObject({ channel: "U1" });
  });

  test("blocks that Slack refuses are sent again as plain text", async () => {
    const { door, slack } = await opened(() => sample("answer"));
    slack.script("chat.postMessage", (_, nth) =>
      nth === 0 ? { body: { ok: false, error: "invalid_blocks" } } : undefined,
    );
    await sendEvent(door, fixture("app-mention"));
    const { body } = await slack.call("chat.postMessage", 1);
    expect(body["blocks"]).toBeUndefined();
    expect(body["text"]).toContain("4.5 gal expansion tank, precharged to 60 psi");
  });

  test("a long card comes in several messages, in order, each within the limits", async () => {
    const { door, slack } = await opened(() => sample("big"));
    await sendEvent(door, fixture("app-mention"));
    const texts: unknown[] = [];
    for (let nth = 0; nth < 7; nth += 1) {
      const { body } = await slack.call("chat.postMessage", nth);
      expect(judgeMessage(body)).toEqual([]);
      texts.push(body["text"]);
    }
    expect(texts[6]).toMatch(/\(7\/\d+\)$/);
  });

  test("a response address is used 5 times at most; what is left is whispered", async () => {
    const { door, slack } = await opened(() => sample("big"));
    await sendForm(door, slash(slack));
    await slack.call("chat.postEphemeral", 1);
    expect(slack.count("/respond/slash")).toBe(5);
  });

  test("no mention, link or broadcast in what people typed becomes a live one", async () => {
    const { door, slack } = await opened(() => sample("nasty-channelMention"));
    await sendEvent(door, fixture("app-mention"));
    const { body } = await slack.call("chat.postMessage");
    expect(judgeMessage(body)).toEqual([]);
    expect(body["text"]).toBe("&lt;!channel&gt; &lt;!here&gt; &lt;!everyone&gt; wake up");
    expect(body).toMatchObject({ parse: "none", link_names: false });
  });
});

describe("progress", () => {
  const working = (done: number): Card => ({
    title: "Working",
    summary: `Working: ${done}`,
    blocks: [{ kind: "progress", text: "days", done, total: 200 }],
  });
  const inSteps =
    (slack: () => FakeSlack, method: string): FakeDesk["answer"] =>
    async (_, show) => {
      show(working(1));
      await slack().call(method, 0);
      show(working(2));
      return sample("answer");
    };

  test("of a mention is one message that is updated and becomes the answer", async () => {
    const harness = await opened((inbound, show, signal) =>
      inSteps(() => harness.slack, "chat.postMessage")(inbound, show, signal),
    );
    await sendEvent(harness.door, fixture("app-mention"));
    expect((await harness.slack.call("chat.postMessage")).body["text"]).toBe("Working: 1");
    let update = await harness.slack.call("chat.update");
    if (update.body["text"] === "Working: 2") update = await harness.slack.call("chat.update", 1);
    expect(update.body).toMatchObject({ channel: "C1", ts: "1767229000.000001" });
    expect(update.body["text"]).toContain("Check first");
    expect(judgeMessage(update.body)).toEqual([]);
    expect(harness.slack.count("chat.postMessage")).toBe(1);
  });

  test("that somebody deleted meanwhile does not take the answer along", async () => {
    const harness = await opened((inbound, show, signal) =>
      inSteps(() => harness.slack, "chat.postMessage")(inbound, show, signal),
    );
    harness.slack.script("chat.update", () => ({ body: { ok: false, error: "message_not_found" } }));
    await sendEvent(harness.door, fixture("app-mention"));
    expect((await harness.slack.call("chat.postMessage", 1)).body["text"]).toContain("Check first");
  });

  test("in a channel is removed when the answer is for the asker only", async () => {
    const harness = await opened(async (_, show) => {
      show(working(1));
      await harness.slack.call("chat.postMessage");
      return sample("problem");
    });
    await sendEvent(harness.door, fixture("app-mention"));
    expect((await harness.slack.call("chat.delete")).body).toMatchObject({ channel: "C1", ts: "1767229000.000001" });
    expect((await harness.slack.call("chat.postEphemeral")).body).toMatchObject({ user: "U1" });
  });

  test("of a command is whispered once, and the answer follows", async () => {
    const harness = await opened((inbound, show, signal) =>
      inSteps(() => harness.slack, "/respond/slash")(inbound, show, signal),
    );
    await sendForm(harness.door, slash(harness.slack));
    expect((await harness.slack.call("/respond/slash", 0)).body["response_type"]).toBe("ephemeral");
    expect((await harness.slack.call("/respond/slash", 1)).body["response_type"]).toBe("in_channel");
  });

  test("that cannot be shown does not keep the answer back", async () => {
    const harness = await opened((inbound, show, signal) =>
      inSteps(() => harness.slack, "chat.postMessage")(inbound, show, signal),
    );
    harness.slack.script("chat.postMessage", (_, nth) =>
      nth === 0 ? { body: { ok: false, error: "fatal_error" } } : undefined,
    );
    harness.slack.script("chat.postEphemeral", () => ({ body: { ok: false, error: "fatal_error" } }));
    await sendEvent(harness.door, fixture("app-mention"));
    for (let nth = 0; ; nth += 1) {
      const { body } = await harness.slack.call("chat.postMessage", nth);
      if (String(body["text"]).startsWith("Check first")) break;
    }
    expect(harness.logged.filter((line) => line.level === "error")).toEqual([]);
  });

  test("of work that is quicker than the wait is not shown", async () => {
    const { door, slack } = await opened(
      (_, show) => {
        show(working(1));
        return sample("answer");
      },
      { progressAfter_ms: 60_000 },
    );
    await sendEvent(door, fixture("app-mention"));
    expect((await slack.call("chat.postMessage")).body["text"]).toContain("Check first");
  });
});
