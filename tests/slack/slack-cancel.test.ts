import { afterEach, beforeEach, describe, expect, test } from "vitest";
import {
  CALLED_OFF,
  LONG_ANSWER,
  LONG_QUESTION,
  type LongDesk,
  openLongDesk,
  STOPPED,
  TOO_LATE,
} from "../support/long-desk.ts";
import { judgeMessage } from "./block-kit-judge.ts";
import {
  fixture,
  type Harness,
  type Json,
  openHarness,
  press,
  sendEvent,
  sendForm,
  sendPayload,
  slash,
} from "./slack-harness.ts";

let long: LongDesk;
let harness: Harness;
beforeEach(async () => {
  long = openLongDesk();
  harness = await openHarness(long.desk);
});
afterEach(() => harness.close());

/** The button of a message that was sent. */
function buttonOf(body: Json): Json {
  const actions = (body["blocks"] as Json[]).find((block) => block["type"] === "actions");
  const [button] = (actions?.["elements"] ?? []) as Json[];
  if (button === undefined) throw new Error("no button");
  return button;
}

async function askInThread(): Promise<Json> {
  await sendEvent(harness.door, fixture("app-mention", { event: { text: `<@UBOT> ${LONG_QUESTION}` } }));
  return (await harness.slack.call("chat.postMessage")).body;
}

/** Presses the button of the message, in its thread. */
function pressOn(body: Json, changes: Json = {}) {
  const { action_id, value } = buttonOf(body);
  const actions = [{ type: "button", action_id, value }];
  return sendPayload(harness.door, press(harness.slack, "button-in-thread", { actions, ...changes }));
}

describe("the button under long work", () => {
  test("is acknowledged and stops the work; the asker is told, and the message of the work goes", async () => {
    const progress = await askInThread();
    expect(judgeMessage(progress)).toEqual([]);
    expect(buttonOf(progress)).toMatchObject({ text: { text: "Cancel" } });
    expect((await pressOn(progress)).status).toBe(200);
    expect((await harness.slack.call("/respond/press")).body).toMatchObject({
      text: CALLED_OFF,
      response_type: "ephemeral",
      replace_original: false,
    });
    expect((await harness.slack.call("chat.postEphemeral")).body).toMatchObject({ text: STOPPED, user: "U1" });
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([true]);
    expect(harness.slack.count("chat.delete")).toBe(1);
    expect([long.store.commits, long.faults]).toEqual([[], []]);
  });

  test("pressed by somebody else stops nothing", async () => {
    const progress = await askInThread();
    await pressOn(progress, { user: { id: "U2", username: "ben", name: "ben", team_id: "T1" } });
    expect((await harness.slack.call("/respond/press")).body["text"]).toBe(TOO_LATE);
    expect(long.signals.map(({ aborted }) => aborted)).toEqual([false]);
    long.finish();
    const { body } = await harness.slack.call("chat.update");
    expect(JSON.stringify(body["blocks"])).toContain(LONG_ANSWER);
  });

  test("pressed twice says the same twice or that it is too late, and stops one work", async () => {
    const progress = await askInThread();
    await Promise.all([pressOn(progress), pressOn(progress, { trigger_id: "1.2.again" })]);
    await harness.slack.call("/respond/press", 1);
    const said = harness.slack.calls
      .filter(({ method }) => method === "/respond/press")
      .map(({ body }) => body["text"]);
    expect(said[0]).toBe(CALLED_OFF);
    expect([CALLED_OFF, TOO_LATE]).toContain(said[1]);
    expect(long.signals).toHaveLength(1);
  });

  test("that only the asker sees gives way to the word that it is cancelled", async () => {
    await sendForm(harness.door, slash(harness.slack, { text: LONG_QUESTION }));
    const { body } = await harness.slack.call("/respond/slash");
    expect(body["response_type"]).toBe("ephemeral");
    const { action_id, value } = buttonOf(body);
    const actions = [{ type: "button", action_id, value }];
    await sendPayload(harness.door, press(harness.slack, "button-whispered", { actions }));
    expect((await harness.slack.call("/respond/press")).body).toMatchObject({
      text: CALLED_OFF,
      replace_original: true,
    });
    expect((await harness.slack.call("/respond/slash", 1)).body["text"]).toBe(STOPPED);
  });
});

test("cancel written in the thread of the work stops it", async () => {
  await askInThread();
  const event = { text: "<@UBOT> cancel", ts: "1767225603.000100", thread_ts: "1767225600.000100" };
  await sendEvent(harness.door, fixture("app-mention", { event_id: "Ev2", event }));
  const [one, other] = [
    await harness.slack.call("chat.postEphemeral"),
    await harness.slack.call("chat.postEphemeral", 1),
  ];
  expect([one.body["text"], other.body["text"]].sort()).toEqual([CALLED_OFF, STOPPED]);
});
