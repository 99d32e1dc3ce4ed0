import { afterEach, describe, expect, test } from "vitest";
import { renderHome } from "../../adapters/slack/render-home.ts";
import type { Card } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";
import { judgeHome } from "./block-kit-judge.ts";
import { closeOpened, fixture, type Json, opened, plainCard, sample, sendEvent, sendPayload } from "./slack-harness.ts";

afterEach(closeOpened);

let events = 0;
function homeOpened(changes: Json = {}): Json {
  events += 1;
  const event = { type: "app_home_opened", user: "U1", channel: "D1", tab: "home", event_ts: "1.1", ...changes };
  return { ...fixture("message-im"), event_id: `EvHome${events}`, event };
}
/** A button of a home tab that was published, pressed. */
function pressAtHome(view: Json, button: Json, changes: Json = {}): Json {
  return {
    type: "block_actions",
    user: { id: "U1", username: "ann", name: "ann", team_id: "T1" },
    team: { id: "T1", domain: "invented" },
    container: { type: "view", view_id: "V9" },
    trigger_id: "1.2.home",
    view: { id: "V9", hash: "h2", ...view },
    actions: [button],
    ...changes,
  };
}
const dayCard: Card = {
  title: "Today",
  summary: "Job 1003 at 8.",
  blocks: [
    { kind: "headline", text: "Job 1003 in <Ostrowick>" },
    {
      kind: "buttons",
      buttons: [
        { label: "Open job 1003", say: "job 1003" },
        { label: "How?", say: "how?", aim: { walk: "w1", fact: "*" } },
      ],
    },
  ],
};
const buttonsOf = (view: unknown) => {
  const { blocks } = view as { readonly blocks: readonly Json[] };
  return blocks.filter(({ type }) => type === "actions").flatMap(({ elements }) => elements as Json[]);
};

describe("the home tab", () => {
  test("shows the card of the day to the person who opens it, and no one else is asked or told", async () => {
    const { door, desk, slack } = await opened(() => dayCard);
    await sendEvent(door, homeOpened({ view: { hash: "h1" } }));
    const { body, token } = await slack.call("views.publish");
    expect(desk.asked).toMatchObject([
      { caller: { door: "slack", organisation: "T1", user: "U1" }, conversation: "T1/home/U1", text: "today" },
    ]);
    expect(body).toMatchObject({ user_id: "U1", hash: "h1" });
    expect(token).toBe("Bearer xoxb-invented");
    expect(judgeHome(body["view"])).toEqual([]);
    expect(JSON.stringify(body["view"])).toContain("Job 1003 in <Ostrowick>");
    await door.close();
    expect(slack.calls).toHaveLength(1);
  });

  test("offers no button that asks about one answer, because the answer is another each time", async () => {
    const { door, slack } = await opened(() => dayCard);
    await sendEvent(door, homeOpened());
    const { body } = await slack.call("views.publish");
    expect(buttonsOf(body["view"]).map(({ text }) => (text as Json)["text"])).toEqual(["Open job 1003"]);
    expect(body["hash"]).toBeUndefined();
  });

  test("another tab of the app publishes nothing", async () => {
    const { door, desk, slack } = await opened();
    expect((await sendEvent(door, homeOpened({ tab: "messages" }))).status).toBe(200);
    await door.close();
    expect([desk.asked, slack.calls]).toEqual([[], []]);
  });

  test("a button is answered in the direct messages, and the tab is shown anew after that", async () => {
    const { door, desk, slack } = await opened(({ text }) => (text === "today" ? dayCard : plainCard("Job 1003.")));
    await sendEvent(door, homeOpened({ view: { hash: "h1" } }));
    const { body } = await slack.call("views.publish");
    const [button = {}] = buttonsOf(body["view"]);
    expect((await sendPayload(door, pressAtHome(body["view"] as Json, button))).status).toBe(200);
    const answer = await slack.call("chat.postMessage");
    expect(answer.body).toMatchObject({ channel: "D1", text: "Job 1003." });
    const again = await slack.call("views.publish", 1);
    expect(again.body).toMatchObject({ user_id: "U1", hash: "h2" });
    expect(desk.asked.map(({ text, conversation }) => [text, conversation])).toEqual([
      ["today", "T1/home/U1"],
      ["job 1003", "T1/D1"],
      ["today", "T1/home/U1"],
    ]);
    expect(new Set(desk.asked.map(({ delivery }) => delivery)).size).toBe(3);
  });

  test("a button that asks for a form opens it at once", async () => {
    const { door, slack } = await opened(({ text }) => (text === "today" ? dayCard : sample("form")));
    await sendEvent(door, homeOpened());
    const { body } = await slack.call("views.publish");
    const [button = {}] = buttonsOf(body["view"]);
    await sendPayload(door, pressAtHome(body["view"] as Json, button));
    expect((await slack.call("views.open")).body["trigger_id"]).toBe("1.2.home");
    await slack.call("views.publish", 1);
  });

  test("what was asked for earlier never takes the place of what was asked for later", async () => {
    let finish: (card: Card) => void = () => {};
    const slow = new Promise<Card>((resolve) => (finish = resolve));
    let asked = 0;
    const { door, slack } = await opened(() => (asked++ === 0 ? slow : plainCard("the later one")));
    await sendEvent(door, homeOpened({ view: { hash: "h1" } }));
    await sendEvent(door, homeOpened({ view: { hash: "h1" } }));
    expect(JSON.stringify((await slack.call("views.publish")).body["view"])).toContain("the later one");
    finish(plainCard("the earlier one"));
    await door.close();
    expect(slack.count("views.publish")).toBe(1);
  });

  test("a later one that another program published stands, and that is no fault", async () => {
    const { door, slack, logged } = await opened(() => dayCard);
    slack.script("views.publish", () => ({ body: { ok: false, error: "hash_conflict" } }));
    await sendEvent(door, homeOpened({ view: { hash: "h1" } }));
    await slack.call("views.publish");
    await door.close();
    expect(logged.filter(({ level }) => level !== "info")).toEqual([]);
  });

  test.each(["not_enabled", "internal_error"])("one that Slack refuses (%s) is a line in the log", async (error) => {
    const { door, slack, logged } = await opened(() => dayCard);
    slack.script("views.publish", () => ({ body: { ok: false, error } }));
    expect((await sendEvent(door, homeOpened())).status).toBe(200);
    await slack.call("views.publish");
    await door.close();
    const lines = logged.filter(({ message }) => message === "a home tab could not be shown");
    expect(lines).toMatchObject([{ level: "error", data: { error: { reason: error } } }]);
  });

  test("is acknowledged while Slack's publishing hangs, and when the desk throws", async () => {
    const { door, slack, logged } = await opened(() => dayCard, { call_ms: 200 });
    slack.script("views.publish", () => ({ hangs: true }));
    expect((await sendEvent(door, homeOpened())).status).toBe(200);
    await slack.call("views.publish");
    await door.close();
    expect(logged.map(({ message }) => message)).toContain("a home tab could not be shown");
  });

  test("comes twice and is asked for once more only by the desk's own memory of deliveries", async () => {
    const { door, desk, slack } = await opened(() => dayCard);
    const event = homeOpened();
    await sendEvent(door, event, { age_s: 1 });
    await slack.call("views.publish");
    desk.isRepeat = true;
    await sendEvent(door, event, { headers: { "x-slack-retry-num": "1" } });
    await door.close();
    expect(new Set(desk.asked.map(({ delivery }) => delivery)).size).toBe(1);
    expect(slack.count("views.publish")).toBe(1);
  });

  test.each(Object.entries(SAMPLE_CARDS))("of the card %s keeps all limits of a view", (_, card) => {
    expect(judgeHome(renderHome(card, "{}"))).toEqual([]);
  });

  test("says how much is beyond its limits", () => {
    const view = renderHome(
      {
        title: "Long",
        summary: "Long.",
        blocks: Array.from({ length: 130 }, (_, i) => ({ kind: "text", tone: "plain", text: `Line ${i}` })),
      },
      "{}",
    );
    expect(view.blocks).toHaveLength(100);
    expect(JSON.stringify(view.blocks.at(-1))).toContain("… +32");
  });
});
