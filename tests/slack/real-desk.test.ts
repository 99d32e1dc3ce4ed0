import { randomInt, randomUUID } from "node:crypto";
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { loadBooks } from "../../adapters/books/load-books.ts";
import { openStore } from "../../adapters/database/open-store.ts";
import { loadLibrary } from "../../adapters/library/load-library.ts";
import { ASK_ABOUT } from "../../adapters/slack/shortcuts.ts";
import { createInlineRunner } from "../../adapters/workers/inline-runner.ts";
import { createDesk, type Desk } from "../../src/desk.ts";
import type { Store } from "../../src/ports/store.ts";
import { NASTY_TEXTS } from "../support/sample-cards.ts";
import { judgeHome, judgeMessage, judgeModal } from "./block-kit-judge.ts";
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

let folder: string;
let store: Store;
let makeDesk: () => Desk;
const open: Harness[] = [];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-slack-"));
  const books = await loadBooks(new URL("../../seeds", import.meta.url).pathname);
  const library = await loadLibrary();
  store = await openStore({
    path: join(folder, "test.sqlite"),
    books,
    ownOrganisations: [{ door: "slack", organisation: "T1" }],
  });
  makeDesk = () =>
    createDesk({
      library,
      books,
      store,
      runner: createInlineRunner(library, books),
      clock: { now_ms: Date.now },
      newId: randomUUID,
      newCode: () => String(randomInt(1_000_000)).padStart(6, "0"),
      faults: { report: ({ error }) => expect.fail(String(error)) },
    });
});
afterEach(async () => {
  await Promise.all(open.splice(0).map((harness) => harness.close()));
});
afterAll(async () => {
  await store?.close();
  await rm(folder, { recursive: true, force: true });
});

async function opened(): Promise<Harness> {
  const harness = await openHarness(makeDesk());
  open.push(harness);
  return harness;
}

let triggers = 0;
function trigger(): string {
  triggers += 1;
  return `real.${triggers}`;
}

/** Asks by slash command and waits for what comes to `/respond/slash`. */
async function ask({ door, slack }: Harness, text: string): Promise<Json> {
  const nth = slack.count("/respond/slash");
  const sent = await sendForm(door, slash(slack, { text, trigger_id: trigger() }));
  expect([sent.status, sent.body]).toEqual([200, ""]);
  const { body } = await slack.call("/respond/slash", nth);
  expect(judgeMessage(body)).toEqual([]);
  return body;
}

function buttonsOf(body: Json): readonly Json[] {
  const blocks = body["blocks"] as Json[];
  return blocks.filter((block) => block["type"] === "actions").flatMap((block) => block["elements"] as Json[]);
}

test("a signed command with all its figures is answered for the channel, computed and with its sources", async () => {
  const body = await ask(await opened(), "mix 135 to 120 with 50 in");
  expect(body["response_type"]).toBe("in_channel");
  // Energy balance of mixing: (120 - 50) / (135 - 50) = 82.4 % hot.
  expect(JSON.stringify(body["blocks"])).toMatch(/82(\.\d)?\s?%/);
});

test("a walk by buttons alone stays between Oldhand and the asker, and its answer is for all", async () => {
  const harness = await opened();
  const { door, slack } = harness;
  let body = await ask(harness, "expansion");
  let questions = 0;
  while (body["response_type"] === "ephemeral") {
    questions += 1;
    expect(questions).toBeLessThan(12);
    const [first] = buttonsOf(body);
    expect(first?.["action_id"]).toBe("answer_0");
    const nth = slack.count("/respond/press");
    const pressed = press(slack, "button-whispered", { trigger_id: trigger(), actions: [first] });
    expect((await sendPayload(door, pressed)).status).toBe(200);
    ({ body } = await slack.call("/respond/press", nth));
    expect(judgeMessage(body)).toEqual([]);
    if (body["response_type"] === "ephemeral") expect(body["replace_original"]).toBe(true);
  }
  expect(questions).toBeGreaterThan(1);
  expect(String(body["text"])).toMatch(/\d/);
  expect((await slack.call("/respond/press", questions)).body).toEqual({ delete_original: true });
});

test("a form is opened, sent back with what is wrong under its field, and answered", async () => {
  const { door, slack } = await opened();
  await sendForm(door, slash(slack, { text: "form mix", trigger_id: trigger() }));
  const { body } = await slack.call("views.open");
  expect(judgeModal(body["view"])).toEqual([]);
  const view = body["view"] as Json;
  const inputs = (view["blocks"] as Json[]).filter((block) => block["type"] === "input");
  const fill = (typed: string) =>
    Object.fromEntries(
      inputs.map((input, index) => {
        const other = input["optional"] === true ? null : "110 F";
        const value = index === 0 ? typed : other;
        return [String(input["block_id"]), { value: { type: "plain_text_input", value } }];
      }),
    );
  const submit = (typed: string) => {
    const changes = { private_metadata: view["private_metadata"], state: { values: null } };
    const payload = fixture("view-submission", { view: changes });
    (payload["view"] as Json)["state"] = { values: fill(typed) };
    return sendPayload(door, payload);
  };
  const refused = JSON.parse((await submit("apples")).body) as { response_action: string; errors: Json };
  expect(refused.response_action).toBe("errors");
  expect(Object.keys(refused.errors)).toEqual([inputs[0]?.["block_id"]]);
  const taken = await submit("135 F");
  expect([taken.status, taken.body]).toEqual([200, ""]);
  const answer = await slack.call("/respond/slash");
  expect(judgeMessage(answer.body)).toEqual([]);
  expect(String(answer.body["text"])).toMatch(/\d/);
});

test("a mention is answered in its thread, and what is missing is asked there", async () => {
  const { door, slack } = await opened();
  await sendEvent(door, fixture("app-mention", { event: { text: "<@UBOT> wait", ts: "5.1" } }));
  const { body } = await slack.call("chat.postMessage");
  expect(judgeMessage(body)).toEqual([]);
  expect(body).toMatchObject({ channel: "C1", thread_ts: "5.1" });
  expect(buttonsOf(body).length).toBeGreaterThan(0);
});

test("an event that comes again after a restart is not answered again", async () => {
  const event = fixture("app-mention", { event: { text: "<@UBOT> help", ts: "6.1" } });
  const before = await opened();
  await sendEvent(before.door, event);
  await before.slack.call("chat.postEphemeral");
  await before.door.close();
  const after = await opened();
  await sendEvent(after.door, event, { headers: { "x-slack-retry-num": "2" } });
  await sendEvent(after.door, fixture("app-mention", { event: { text: "<@UBOT> units", ts: "6.2" } }));
  const { body } = await after.slack.call("chat.postEphemeral");
  expect([body["thread_ts"], after.slack.count("chat.postEphemeral")]).toEqual(["6.2", 1]);
});

test("what somebody typed is said back escaped where Slack decodes, and as data where it does not", async () => {
  const body = await ask(await opened(), "mix hot=&lt;!channel&gt; cold=50F");
  expect(body["text"]).toContain("“&lt;”");
  const [, said] = body["blocks"] as Json[];
  expect(JSON.stringify(said)).toContain("“<”");
});

describe("texts that try to break out", () => {
  test.each(Object.entries(NASTY_TEXTS))(
    "%s stays text in an answer, a whisper, a form and at home",
    async (name, text) => {
      const harness = await opened();
      const { door, slack } = harness;
      const typed = text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
      await sendEvent(door, fixture("message-im", { event: { text: `mix hot=${typed} cold=50F`, ts: `8.${name}` } }));
      expect(judgeMessage((await slack.call("chat.postMessage")).body)).toEqual([]);
      const about = {
        type: "message_action",
        callback_id: ASK_ABOUT,
        trigger_id: trigger(),
        response_url: slack.responseUrl("about"),
        // As somebody else's message holds it: live mentions and links, not yet escaped.
        message: { type: "message", ts: "9.1", text },
        user: { id: "U1", name: text, team_id: "T1" },
        channel: { id: "C1", name: text },
        team: { id: "T1", domain: "invented" },
      };
      await sendPayload(door, about);
      expect(judgeMessage((await slack.call("/respond/about")).body)).toEqual([]);
      const home = { type: "app_home_opened", user: "U1", channel: "D1", tab: "home", event_ts: "1.1" };
      await sendEvent(door, { ...fixture("message-im"), event_id: `Ev-${name}`, event: home });
      expect(judgeHome((await slack.call("views.publish")).body["view"])).toEqual([]);
    },
  );
});

test("in a thread each mention is heard, and what is missing may be answered by mention there; other talk is not heard", async () => {
  const { door, slack } = await opened();
  const say = (text: string, ts: string, changes: Json = {}) =>
    sendEvent(door, fixture("app-mention", { event: { text: `<@UBOT> ${text}`, ts, ...changes } }));
  await say("mix cold=50F wanted=120F", "30.1");
  const asked = await slack.call("chat.postMessage");
  expect(asked.body["thread_ts"]).toBe("30.1");
  // A reply without a mention would come as `message.channels`, which the app does not subscribe to; one that comes is left alone.
  const overheard = fixture("message-im", {
    event: { channel: "C1", channel_type: "channel", text: "140F", ts: "30.2", thread_ts: "30.1" },
  });
  expect((await sendEvent(door, overheard)).status).toBe(200);
  await say("135F", "30.3", { thread_ts: "30.1" });
  const { body } = await slack.call("chat.postMessage", 1);
  expect(body["thread_ts"]).toBe("30.1");
  // Energy balance of mixing: (120 - 50) / (135 - 50) = 82.4 % hot.
  expect(JSON.stringify(body["blocks"])).toMatch(/82(\.\d)?\s?%/);
});
