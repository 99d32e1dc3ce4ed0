import type { GlobalShortcut } from "@slack/bolt";
import { afterEach, describe, expect, test } from "vitest";
import { ASK_ABOUT, START_WALK } from "../../adapters/slack/shortcuts.ts";
import { askWhichWalk, type WalkOffer } from "../../adapters/slack/start-walk.ts";
import { judgeMessage, judgeModal } from "./block-kit-judge.ts";
import type { FakeSlack } from "./fake-slack.ts";
import { closeOpened, type Json, opened, plainCard, press, sample, sendPayload, WALKS } from "./slack-harness.ts";

afterEach(closeOpened);

const ANN = { id: "U1", username: "ann", name: "ann", team_id: "T1" };
const startWalk: Json = {
  type: "shortcut",
  callback_id: START_WALK,
  trigger_id: "1.2.short",
  user: ANN,
  team: { id: "T1", domain: "invented" },
  token: "invented",
  action_ts: "1.1",
};
function askAbout(slack: FakeSlack, message: Json, changes: Json = {}): Json {
  return {
    type: "message_action",
    callback_id: ASK_ABOUT,
    trigger_id: "1.2.about",
    message_ts: "17.5",
    response_url: slack.responseUrl("about"),
    message: { type: "message", user: "U7", ts: "17.5", text: "tank is cold", ...message },
    user: ANN,
    channel: { id: "C1", name: "crew" },
    team: { id: "T1", domain: "invented" },
    token: "invented",
    action_ts: "1.1",
    ...changes,
  };
}

describe("starting a walk from anywhere", () => {
  const submit = (view: Json, walk: string): Json => ({
    type: "view_submission",
    team: { id: "T1", domain: "invented" },
    user: ANN,
    trigger_id: "1.2.view",
    view: {
      ...view,
      id: "V5",
      state: {
        values: {
          walk: {
            value: {
              type: "radio_buttons",
              selected_option: { text: { type: "plain_text", text: "Start-up" }, value: walk },
            },
          },
        },
      },
    },
  });

  test("opens a modal that names the walks, and begins the chosen one in the person's direct messages", async () => {
    const { door, desk, slack } = await opened(() => sample("question"));
    slack.script("chat.postMessage", (call) => ({
      body: { ok: true, ts: "5.1", channel: call.body["channel"] === "U1" ? "D1" : call.body["channel"] },
    }));
    expect(await sendPayload(door, startWalk)).toMatchObject({ status: 200, body: "" });
    const { body } = await slack.call("views.open");
    expect(judgeModal(body["view"])).toEqual([]);
    expect(body["trigger_id"]).toBe("1.2.short");
    expect(JSON.stringify(body["view"])).toContain("Survey &lt;of&gt; the site &amp; more");
    const sent = await sendPayload(door, submit(body["view"] as Json, "startup"));
    expect([sent.status, sent.body]).toEqual([200, ""]);
    const [first, question] = [await slack.call("chat.postMessage", 0), await slack.call("chat.postMessage", 1)];
    expect(first.body).toMatchObject({ channel: "U1", text: "Start-up", unfurl_links: false });
    expect(question.body["channel"]).toBe("D1");
    expect(judgeMessage(question.body)).toEqual([]);
    expect(desk.asked).toMatchObject([{ caller: { user: "U1" }, conversation: "T1/D1", text: "startup" }]);
  });

  test("a form that comes twice starts it once", async () => {
    const { door, desk, slack } = await opened();
    await sendPayload(door, startWalk);
    const { body } = await slack.call("views.open");
    await sendPayload(door, submit(body["view"] as Json, "startup"), { age_s: 1 });
    await sendPayload(door, submit(body["view"] as Json, "startup"));
    await slack.call("chat.postMessage", 1);
    await door.close();
    expect(desk.asked).toHaveLength(1);
  });

  test("where the app may not write to the person the modal stays and says what to do", async () => {
    const { door, desk, slack } = await opened();
    slack.script("chat.postMessage", () => ({ body: { ok: false, error: "messages_tab_disabled" } }));
    await sendPayload(door, startWalk);
    const { body } = await slack.call("views.open");
    const sent = await sendPayload(door, submit(body["view"] as Json, "startup"));
    expect(JSON.parse(sent.body)).toMatchObject({ response_action: "errors", errors: { walk: /direct message/ } });
    expect(desk.asked).toEqual([]);
  });

  test("a modal that cannot be opened any more is a line in the log", async () => {
    const { door, slack, logged } = await opened();
    slack.script("views.open", () => ({ body: { ok: false, error: "expired_trigger_id" } }));
    expect((await sendPayload(door, startWalk)).status).toBe(200);
    await slack.call("views.open");
    await door.close();
    expect(logged.map(({ message }) => message)).toContain("the list of walks could not be opened");
  });
});

test("a list of walks that takes its time is put into a modal that is open at once", async () => {
  const views: [string, unknown][] = [];
  let give: (offer: WalkOffer) => void = () => {};
  const calls = {
    openView: async (trigger: string, view: unknown) => {
      views.push([trigger, view]);
      give(WALKS);
      return "V7";
    },
    updateView: async (id: string, view: unknown) => {
      views.push([id, view]);
    },
  };
  const slow = () => new Promise<WalkOffer>((resolve) => (give = resolve));
  await askWhichWalk(startWalk as unknown as GlobalShortcut, slow, calls, 1);
  expect(views.map(([to]) => to)).toEqual(["1.2.short", "V7"]);
  expect(JSON.stringify(views[0]?.[1])).toContain("One moment");
  expect(judgeModal(views[1]?.[1])).toEqual([]);
});

describe("asking about somebody's message", () => {
  test("its words are the question of the person who asks, and the answer is for that person alone", async () => {
    const { door, desk, slack } = await opened(() => sample("answer"));
    expect((await sendPayload(door, askAbout(slack, {}))).status).toBe(200);
    const { body } = await slack.call("/respond/about");
    expect(body).toMatchObject({ response_type: "ephemeral", thread_ts: "17.5", replace_original: false });
    expect(judgeMessage(body)).toEqual([]);
    expect(desk.asked).toEqual([
      {
        caller: { door: "slack", organisation: "T1", user: "U1", name: "ann" },
        conversation: "T1/C1/17.5",
        delivery: "trigger/1.2.about",
        text: "tank is cold",
      },
    ]);
  });

  test("what follows by buttons stays with that person too", async () => {
    const { door, desk, slack } = await opened(() => sample("answer"));
    const changes = { container: { type: "message", is_ephemeral: true, channel_id: "C1", thread_ts: "17.5" } };
    await sendPayload(door, press(slack, "button-whispered", changes));
    const { body } = await slack.call("/respond/press");
    expect(body).toMatchObject({ response_type: "ephemeral", thread_ts: "17.5" });
    expect(desk.asked[0]?.conversation).toBe("T1/C1/17.5");
  });

  test("calls to the channel and links in the words of others are said back as words", async () => {
    const { door, desk, slack } = await opened(({ text }) => ({ ...plainCard(text), title: text }));
    const text = "<!channel> see <https://evil.test|https://good.test> &lt;!here&gt; &amp;amp;";
    await sendPayload(door, askAbout(slack, { text }));
    const { body } = await slack.call("/respond/about");
    expect(desk.asked[0]?.text).toBe("@channel see https://good.test <!here> &amp;");
    expect(body["text"]).toBe("@channel see https://good.test &lt;!here&gt; &amp;amp;");
    expect(judgeMessage(body)).toEqual([]);
  });

  test("its files come along", async () => {
    const { door, slack } = await opened(async ({ files = [] }) => {
      const [file] = files;
      return plainCard(`got ${file?.name} ${Buffer.from((await file?.read()) ?? []).toString("latin1")}`);
    });
    slack.script("/files/1.jpg", () => ({ headers: { "content-type": "image/jpeg" }, body: Buffer.from("photo") }));
    const file = { id: "F1", name: "a.jpg", url_private_download: slack.fileUrl("1.jpg") };
    await sendPayload(door, askAbout(slack, { text: "", files: [file] }));
    expect((await slack.call("/respond/about")).body["text"]).toBe("got a.jpg photo");
  });

  test("an address that has expired is made up for by a whisper, and where that fails by a direct message", async () => {
    const { door, slack } = await opened(() => sample("answer"));
    slack.script("/respond/about", () => ({ status: 404, body: "expired_url" }));
    slack.script("chat.postEphemeral", () => ({ body: { ok: false, error: "not_in_channel" } }));
    await sendPayload(door, askAbout(slack, {}));
    expect((await slack.call("chat.postEphemeral")).body).toMatchObject({ user: "U1", thread_ts: "17.5" });
    expect((await slack.call("chat.postMessage")).body).toMatchObject({ channel: "U1" });
  });

  test("in a reply the thread is that of the message, and in a direct message everything may be read", async () => {
    const { door, desk, slack } = await opened(() => sample("answer"));
    await sendPayload(door, askAbout(slack, { thread_ts: "16.1" }));
    await slack.call("/respond/about");
    await sendPayload(door, askAbout(slack, {}, { channel: { id: "D1", name: "x" }, trigger_id: "1.3" }));
    expect((await slack.call("/respond/about", 1)).body["response_type"]).toBe("in_channel");
    expect(desk.asked.map(({ conversation }) => conversation)).toEqual(["T1/C1/16.1", "T1/D1"]);
  });
});
