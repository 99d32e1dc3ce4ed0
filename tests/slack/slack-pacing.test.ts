import { Agent } from "node:http";
import { afterEach, describe, expect, test } from "vitest";
import { withinTime } from "../../adapters/slack/wait.ts";
import type { Card } from "../../src/messages/card.ts";
import {
  closeOpened,
  fixture,
  opened,
  plainCard,
  sample,
  sendEvent,
  sendForm,
  sendPayload,
  slash,
} from "./slack-harness.ts";

afterEach(closeOpened);

describe("too many calls", () => {
  test("429 on one channel does not hold up another, and the first is sent after the wait", async () => {
    const { door, slack } = await opened();
    slack.script("chat.postMessage", ({ body }, nth) =>
      body["channel"] === "C1" && nth === 0 ? { status: 429, headers: { "retry-after": "1" } } : undefined,
    );
    await sendEvent(door, fixture("app-mention"));
    await slack.call("chat.postMessage", 0);
    await sendEvent(door, fixture("app-mention", { event: { channel: "C2", ts: "2.2" } }));
    const channels = [];
    for (let nth = 0; nth < 3; nth += 1) channels.push((await slack.call("chat.postMessage", nth)).body["channel"]);
    expect(channels).toEqual(["C1", "C2", "C1"]);
  });

  test("429 that does not say how long is waited for as well", async () => {
    const { door, slack } = await opened();
    slack.script("chat.postMessage", (_, nth) => (nth === 0 ? { status: 429, body: "slow down" } : undefined));
    await sendEvent(door, fixture("app-mention"));
    expect((await slack.call("chat.postMessage", 1)).body["channel"]).toBe("C1");
  });

  test("429 of a response address is waited for and does not use up the fallback", async () => {
    const { door, slack } = await opened();
    slack.script("/respond/slash", (_, nth) =>
      nth === 0 ? { status: 429, headers: { "retry-after": "0" } } : undefined,
    );
    await sendForm(door, slash(slack));
    await slack.call("/respond/slash", 1);
    expect(slack.count("chat.postEphemeral")).toBe(0);
  });
});

describe("duplicates", () => {
  test("an event that Slack sends again is answered once", async () => {
    const { door, desk, slack } = await opened();
    await sendEvent(door, fixture("app-mention"), { age_s: 3 });
    const headers = { "x-slack-retry-num": "1", "x-slack-retry-reason": "http_timeout" };
    expect((await sendEvent(door, fixture("app-mention"), { headers })).status).toBe(200);
    await sendEvent(door, fixture("app-mention", { event: { ts: "9.9" } }));
    await slack.call("chat.postMessage", 1);
    expect(desk.asked.map((inbound) => inbound.delivery)).toEqual(["message/C1/1767225600.000100", "message/C1/9.9"]);
    expect(slack.count("chat.postMessage")).toBe(2);
  });

  test("a first delivery that arrives as a retry is answered", async () => {
    const { door, slack } = await opened();
    await sendEvent(door, fixture("app-mention"), { headers: { "x-slack-retry-num": "2" } });
    expect((await slack.call("chat.postMessage")).body["channel"]).toBe("C1");
  });

  test("a command that comes twice is answered once", async () => {
    const { door, desk, slack } = await opened();
    await sendForm(door, slash(slack), { age_s: 2 });
    expect((await sendForm(door, slash(slack))).status).toBe(200);
    await sendForm(door, slash(slack, { trigger_id: "2.3" }));
    await slack.call("/respond/slash", 1);
    expect(desk.asked).toHaveLength(2);
  });

  test("what the desk answered before, perhaps in another process, is not posted again", async () => {
    const { door, desk, slack } = await opened();
    desk.isRepeat = true;
    await sendForm(door, slash(slack));
    desk.isRepeat = false;
    await sendForm(door, slash(slack, { trigger_id: "2.3", text: "next" }));
    expect((await slack.call("/respond/slash", 0)).body["text"]).toBe("next");
  });

  test("a delivery on which the desk failed may be sent again", async () => {
    let isBroken = true;
    const { door, slack } = await opened(() => {
      if (isBroken) throw new Error("invented fault");
      return plainCard("well now");
    });
    await sendForm(door, slash(slack), { age_s: 2 });
    await slack.call("/respond/slash", 0);
    isBroken = false;
    await sendForm(door, slash(slack));
    expect((await slack.call("/respond/slash", 1)).body["text"]).toBe("well now");
  });
});

describe("the end", () => {
  /** Node keeps an idle connection for 5 s; a server that waits for it takes longer than this. */
  const LONG_ms = 3_000;

  test("does not wait for a client that keeps its connection, with a request under way at that moment", async () => {
    let finish: (card: Card) => void = () => {};
    let heard = () => {};
    const isHeard = new Promise<void>((resolve) => {
      heard = resolve;
    });
    const { door } = await opened(() => {
      heard();
      return new Promise((resolve) => (finish = resolve));
    });
    const agent = new Agent({ keepAlive: true });
    const sending = sendPayload(door, fixture("view-submission"), { agent });
    await isHeard;
    const closing = door.close().then(() => "closed");
    finish(sample("form"));
    expect((await sending).status).toBe(200);
    expect(await withinTime(closing, LONG_ms)).toBe("closed");
    agent.destroy();
  });

  test("waits for work that goes on, and its answer is sent", async () => {
    let finish: (card: Card) => void = () => {};
    const { door, slack } = await opened(() => new Promise((resolve) => (finish = resolve)));
    await sendForm(door, slash(slack));
    let isClosed = false;
    const closing = door.close().then(() => {
      isClosed = true;
    });
    expect(await withinTime(closing, 50)).toBeUndefined();
    expect(isClosed).toBe(false);
    finish(plainCard("just in time"));
    await closing;
    expect(slack.calls.map((call) => call.body["text"])).toEqual(["just in time"]);
  });

  test("tells work that takes too long to end", async () => {
    const { door, slack } = await opened(
      (_inbound, _show, signal) =>
        new Promise((resolve) => signal.addEventListener("abort", () => resolve(plainCard("given up")))),
      { drain_ms: 20 },
    );
    await sendForm(door, slash(slack));
    expect(
      await withinTime(
        door.close().then(() => "closed"),
        LONG_ms,
      ),
    ).toBe("closed");
  });

  test("takes no new request", async () => {
    const { door, slack } = await opened();
    await door.close();
    await expect(sendForm(door, slash(slack))).rejects.toThrow(/ECONNREFUSED/);
  });
});
