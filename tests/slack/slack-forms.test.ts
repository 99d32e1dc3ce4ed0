import { afterEach, describe, expect, test } from "vitest";
import type { Card } from "../../src/messages/card.ts";
import { judgeModal } from "./block-kit-judge.ts";
import {
  closeOpened,
  fixture,
  type Json,
  opened,
  plainCard,
  press,
  sample,
  sendEvent,
  sendForm,
  sendPayload,
  slash,
} from "./slack-harness.ts";

afterEach(closeOpened);

describe("forms", () => {
  test("a command that is answered by a form opens it", async () => {
    const { door, slack } = await opened(() => sample("form"));
    await sendForm(door, slash(slack, { text: "form circuit" }));
    const { body } = await slack.call("views.open");
    expect(judgeModal(body["view"])).toEqual([]);
    expect(body["trigger_id"]).toBe("1.2.slash");
    expect(slack.count("/respond/slash")).toBe(0);
  });

  test("a mention cannot open a form and gets a button that does", async () => {
    const { door, desk, slack } = await opened(() => sample("form"));
    await sendEvent(door, fixture("message-im"));
    const { body } = await slack.call("chat.postMessage");
    const actions = (body["blocks"] as Json[]).filter((block) => block["type"] === "actions");
    const [action] = actions.flatMap((block) => block["elements"] as Json[]);
    await sendPayload(door, press(slack, "button-in-thread", { actions: [{ ...action, type: "button" }] }));
    expect((await slack.call("views.open")).body["trigger_id"]).toBe("1.2.press");
    expect(desk.asked.map((inbound) => inbound.text)).toEqual(["mix 135 to 120 with 50 in", "form circuit"]);
  });

  test("a form that Slack does not open, because 3 s are over, is a message with the button", async () => {
    const { door, slack } = await opened(() => sample("form"));
    slack.script("views.open", () => ({ body: { ok: false, error: "expired_trigger_id" } }));
    await sendForm(door, slash(slack));
    expect((await slack.call("/respond/slash")).body).toMatchObject({ response_type: "ephemeral" });
  });

  test("the answer to a form that was opened by a command goes by the command's address", async () => {
    const { door, desk, slack } = await opened((inbound) => sample(inbound.form ? "answer" : "form"));
    await sendForm(door, slash(slack));
    const { body } = await slack.call("views.open");
    const metadata = (body["view"] as Json)["private_metadata"];
    const sent = await sendPayload(door, fixture("view-submission", { view: { private_metadata: metadata } }));
    expect([sent.status, sent.body]).toEqual([200, ""]);
    expect((await slack.call("/respond/slash")).body["response_type"]).toBe("in_channel");
    expect(desk.asked.map((inbound) => inbound.conversation)).toEqual(["T1/C1", "T1/C1"]);
  });

  test("problems are shown under their fields and nothing is posted", async () => {
    const { door, slack } = await opened(() => sample("form"));
    const sent = await sendPayload(door, fixture("view-submission"));
    expect(JSON.parse(sent.body)).toEqual({
      response_action: "errors",
      errors: { run: "I could not read “60 apples” as a length. Type it like 60 ft or 18 m." },
    });
    expect(slack.calls).toEqual([]);
  });

  test("the same form twice gets the same problems; a corrected one under the same view id is worked on", async () => {
    const { door, desk, slack } = await opened((inbound) =>
      inbound.form?.fields["run"] === "60 ft" ? sample("answer") : sample("form"),
    );
    const first = await sendPayload(door, fixture("view-submission"), { age_s: 2 });
    const second = await sendPayload(door, fixture("view-submission"));
    expect([second.body, desk.asked.length]).toEqual([first.body, 1]);
    const run = { value: { type: "plain_text_input", value: "60 ft" } };
    const third = await sendPayload(door, fixture("view-submission", { view: { state: { values: { run } } } }));
    expect(third.body).toBe("");
    await slack.call("chat.postMessage");
    expect(desk.asked).toHaveLength(2);
  });

  test("a form whose work takes too long closes at once, and the answer follows", async () => {
    let finish: (card: Card) => void = () => {};
    const { door, slack } = await opened(() => new Promise((resolve) => (finish = resolve)), { formWait_ms: 1 });
    const sent = await sendPayload(door, fixture("view-submission"));
    expect([sent.status, sent.body]).toEqual([200, ""]);
    finish(plainCard("later"));
    expect((await slack.call("chat.postMessage")).body["text"]).toBe("later");
  });

  test("a desk that fails keeps the form open with what was typed", async () => {
    const { door, slack } = await opened(() => {
      throw new Error("invented fault");
    });
    const sent = await sendPayload(door, fixture("view-submission"));
    const { response_action: action, errors } = JSON.parse(sent.body) as { response_action: string; errors: Json };
    expect([action, Object.keys(errors)]).toEqual(["errors", ["element"]]);
    expect(slack.calls).toEqual([]);
  });
});
