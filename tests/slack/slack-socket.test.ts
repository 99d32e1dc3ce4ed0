import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { openSlackDoor, type SlackDoor } from "../../adapters/slack/open-slack-door.ts";
import { withinTime } from "../../adapters/slack/wait.ts";
import type { Card } from "../../src/messages/card.ts";
import { type FakeSlack, openFakeSlack } from "./fake-slack.ts";
import { type FakeSocket, openFakeSocket } from "./fake-socket.ts";
import { type FakeDesk, fakeDesk, fixture, type Json, plainCard, sample, slash } from "./slack-harness.ts";

let slack: FakeSlack;
let socket: FakeSocket;
let door: SlackDoor | undefined;
beforeEach(async () => {
  [slack, socket] = [await openFakeSlack(), await openFakeSocket()];
  slack.script("apps.connections.open", () => ({ body: { ok: true, url: socket.url } }));
});
afterEach(async () => {
  await door?.close();
  door = undefined;
  await socket.close();
  await slack.close();
});

const logged: string[] = [];
const note = (_: object, message: string) => {
  logged.push(message);
};
async function opened(answer?: FakeDesk["answer"]): Promise<{ readonly door: SlackDoor; readonly desk: FakeDesk }> {
  logged.length = 0;
  const desk = fakeDesk(answer);
  const settings = {
    appToken: "xapp-invented",
    botToken: "xoxb-invented",
    host: "127.0.0.1",
    port: 0,
    apiUrl: slack.apiUrl,
    pace: { progressAfter_ms: 0, drain_ms: 2_000, call_ms: 2_000 },
  };
  door = await openSlackDoor({ desk, settings, log: { info: note, warn: note, error: note } });
  return { door, desk };
}
/** What is sent about a slash command, a press or a form. */
const command = (changes: Json = {}) => ({
  envelope_id: "e1",
  type: "slash_commands",
  accepts_response_payload: true,
  payload: slash(slack, changes),
});
const event = (payload: Json, more: Json = {}) => ({ envelope_id: "e2", type: "events_api", payload, ...more });
const interactive = (payload: Json) => ({ envelope_id: "e3", type: "interactive", payload });
const healthOf = async ({ url }: SlackDoor): Promise<unknown> => (await fetch(`${url}/slack/health`)).json();

describe("a door over a socket", () => {
  test("connects with the app's token, and answers a command as one over https", async () => {
    const { desk } = await opened();
    expect((await slack.call("apps.connections.open")).token).toBe("Bearer xapp-invented");
    socket.send(command());
    expect(await socket.ack("e1")).toEqual({ envelope_id: "e1", payload: {} });
    expect((await slack.call("/respond/slash")).body["text"]).toBe("expansion 80 gal 50F to 140F");
    expect(desk.asked).toMatchObject([{ conversation: "T1/C1", delivery: "trigger/1.2.slash" }]);
  });

  test("an event that is sent again on another envelope is acknowledged and answered once", async () => {
    const { desk } = await opened();
    socket.send(event(fixture("app-mention")));
    await socket.ack("e2");
    socket.send(event(fixture("app-mention"), { envelope_id: "e2b", retry_attempt: 1, retry_reason: "timeout" }));
    await socket.ack("e2b");
    await slack.call("chat.postMessage");
    expect(desk.asked).toHaveLength(1);
    expect((await slack.call("chat.postMessage")).token).toBe("Bearer xoxb-invented");
  });

  test("a form with a mistake is acknowledged with what is wrong", async () => {
    await opened(() => sample("form"));
    socket.send(interactive(fixture("view-submission")));
    expect(await socket.ack("e3")).toMatchObject({ payload: { response_action: "errors" } });
  });

  test.each([
    ["something not yet invented", { type: "wobble", team: { id: "T1" }, user: { id: "U1" } }],
    ["an unknown view", fixture("view-submission", { view: { callback_id: "other" } })],
    ["a shortcut", { type: "shortcut", callback_id: "x", team: { id: "T1" }, user: { id: "U1" }, trigger_id: "1" }],
  ])("%s is acknowledged, though no listener does", async (_, payload) => {
    await opened();
    socket.send(interactive(payload));
    expect(await socket.ack("e3")).toMatchObject({ envelope_id: "e3" });
  });

  test("what failed is not acknowledged, so that Slack sends it again, and the next one is heard", async () => {
    await opened();
    socket.send(interactive(fixture("button-in-thread", { user: null })));
    socket.send(command());
    await socket.ack("e1");
    await slack.call("/respond/slash");
    expect(socket.acks("e3")).toBe(0);
    expect(logged).toContain("a request failed");
  });

  test("needs no signing secret, and takes nothing over https", async () => {
    const { door: open, desk } = await opened();
    const sent = await fetch(`${open.url}/slack/events`, { method: "POST", body: "command=%2Foldhand" });
    expect([sent.status, desk.asked]).toEqual([404, []]);
  });
});

describe("a connection that is lost", () => {
  test("because Slack renews it is opened again well within the 5 s that the library would wait", async () => {
    const { door: open } = await opened();
    socket.send({ type: "disconnect", reason: "refresh_requested" });
    expect(
      await withinTime(
        socket.connected(2).then(() => "again"),
        2_500,
      ),
    ).toBe("again");
    socket.send(command());
    await socket.ack("e1");
    expect(await healthOf(open)).toMatchObject({ socket: "open" });
  });

  test("because Slack renews it and says no farewell is cut and opened again", async () => {
    await opened();
    socket.manners.saysFarewell = false;
    socket.send({ type: "disconnect", reason: "refresh_requested" });
    expect(
      await withinTime(
        socket.connected(2).then(() => "again"),
        3_500,
      ),
    ).toBe("again");
  });

  test("without a word is opened again", async () => {
    await opened();
    socket.cut();
    await socket.connected(2);
    socket.send(command());
    expect(await socket.ack("e1")).toMatchObject({ envelope_id: "e1" });
  });

  test("while Slack gives no new one is tried for again, the program lives on, and health tells", async () => {
    const { door: open } = await opened();
    let isDown = true;
    slack.script("apps.connections.open", () =>
      isDown ? { status: 503, body: "down" } : { body: { ok: true, url: socket.url } },
    );
    socket.cut();
    await slack.call("apps.connections.open", 1);
    expect(await healthOf(open)).toEqual({ door: "slack", working: 0, socket: "connecting" });
    isDown = false;
    await socket.connected(2);
    expect(logged).toContain("Slack cannot be connected; trying again");
  });

  test("before the acknowledgement does not lose the answer", async () => {
    let finish: (card: Card) => void = () => {};
    let heard = () => {};
    const isHeard = new Promise<void>((resolve) => {
      heard = resolve;
    });
    await opened(() => {
      heard();
      return new Promise((resolve) => (finish = resolve));
    });
    socket.send(interactive(fixture("view-submission")));
    await isHeard;
    slack.script("apps.connections.open", () => ({ status: 503, body: "down" }));
    socket.cut();
    await slack.call("apps.connections.open", 1);
    finish(plainCard("all the same"));
    expect((await slack.call("chat.postMessage")).body["text"]).toBe("all the same");
  });
});

describe("the start and the end", () => {
  test("a token that Slack refuses keeps the door shut and says what to do", async () => {
    slack.script("apps.connections.open", () => ({ body: { ok: false, error: "invalid_auth" } }));
    await expect(opened()).rejects.toThrow(/Slack refuses SLACK_APP_TOKEN; make a new app-level token/);
  });

  test("a Slack that is away does not keep the door shut", async () => {
    let isDown = true;
    slack.script("apps.connections.open", () =>
      isDown ? { status: 503, body: "down" } : { body: { ok: true, url: socket.url } },
    );
    const { door: open } = await opened();
    expect(await healthOf(open)).toMatchObject({ socket: "connecting" });
    isDown = false;
    await socket.connected(1);
  });

  test("closing waits for what goes on, sends its answer, takes nothing more and connects no more", async () => {
    let finish: (card: Card) => void = () => {};
    const { door: open, desk } = await opened(() => new Promise((resolve) => (finish = resolve)));
    socket.send(command());
    await socket.ack("e1");
    const closing = open.close();
    socket.send({ ...command({ trigger_id: "9.9" }), envelope_id: "late" });
    expect(await withinTime(closing, 50)).toBeUndefined();
    finish(plainCard("just in time"));
    await closing;
    door = undefined;
    expect((await slack.call("/respond/slash")).body["text"]).toBe("just in time");
    expect([desk.asked.length, socket.acks("late"), socket.connections()]).toEqual([1, 0, 1]);
  });
});
