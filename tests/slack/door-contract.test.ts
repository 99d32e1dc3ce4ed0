import { type DoorUnderTest, describeDoorContract, type ShownMessage } from "../contracts/door-contract.ts";
import type { FakeSlack } from "./fake-slack.ts";
import { fixture, type Harness, type Json, openHarness, sendEvent, sendPayload } from "./slack-harness.ts";

const CHANNEL = "D1";

const slackDoor: DoorUnderTest = {
  name: "the Slack door",
  openPlatform: async () => {
    const opened: Harness[] = [];
    return {
      open: async (desk) => {
        const harness = await openHarness(desk);
        opened.push(harness);
        return openRig(harness, opened);
      },
      close: async () => {
        for (const { slack } of opened) await slack.close();
      },
    };
  },
};
describeDoorContract(slackDoor);

function openRig(harness: Harness, opened: readonly Harness[]) {
  const { door } = harness;
  let age_s = 0;
  // Each delivery is signed at another second, as when the platform sends it anew.
  const signed = () => {
    age_s += 1;
    return { age_s };
  };
  const event = (id: string, text: string) =>
    fixture("message-im", { event_id: `Ev${id}`, event: { text: escaped(text), ts: `${id}.1`, client_msg_id: id } });
  const screen = () => opened.flatMap(({ slack }) => screenOf(slack));
  const press = async (action: Json | undefined, id: string) => {
    const container = { channel_id: CHANNEL, thread_ts: undefined };
    const payload = fixture("button-in-thread", {
      trigger_id: `press.${id}`,
      channel: { id: CHANNEL },
      container,
      message: { thread_ts: undefined },
      response_url: undefined,
      actions: [action],
    });
    return (await sendPayload(door, payload, signed())).status;
  };
  const findAction = (wanted: (action: Json) => boolean, from = 0) =>
    screen()
      .flatMap(({ body }) => actionsOf(body))
      .filter(wanted)
      .at(-1 - from);
  return {
    say: async ({ id, text }: { id: string; text: string }) =>
      (await sendEvent(door, event(id, text), signed())).status,
    sayAsStranger: async ({ id, text }: { id: string; text: string }) =>
      (await sendEvent(door, event(id, text), { secret: "f".repeat(32) })).status,
    async sayWithPhoto({ id, text }: { id: string; text: string }, photo: Uint8Array) {
      const { slack } = harness;
      const path = `/files/${id}.jpg`;
      slack.script(path, () => ({ headers: { "content-type": "image/jpeg" }, body: Buffer.from(photo) }));
      const address = slack.fileUrl(`${id}.jpg`);
      const file = {
        id: `F${id}`,
        name: "photo.jpg",
        mode: "hosted",
        mimetype: "image/jpeg",
        size: photo.length,
        file_access: "visible",
        url_private: address,
        url_private_download: address,
      };
      const said = event(id, text);
      Object.assign(said["event"] as Json, { subtype: "file_share", files: [file] });
      await sendEvent(door, said, signed());
      return { fetched: () => slack.count(path) };
    },
    press: (label: string, id: string, from = 0) =>
      press(
        findAction((action) => readPlain(action["text"]) === label, from),
        id,
      ),
    async fillIn(fields: Readonly<Record<string, string>>, id: string) {
      // A message cannot open a form; it carries the button that does.
      await press(
        findAction(() => true),
        `${id}.open`,
      );
      const { body } = await harness.slack.call("views.open");
      const { private_metadata: metadata } = body["view"] as Json;
      const payload = fixture("view-submission", { view: { id: `V${id}`, private_metadata: metadata } });
      const values = Object.entries(fields).map(([fact, value]) => [
        fact,
        { value: { type: "plain_text_input", value } },
      ]);
      (payload["view"] as Json)["state"] = { values: Object.fromEntries(values) };
      return (await sendPayload(door, payload, signed())).status;
    },
    shown: () => screen().map(({ body }) => readMessage(body)),
    live: () => screen().flatMap(({ body }) => liveIn(body)),
    close: () => door.close(),
  };
}

interface OnScreen {
  readonly ts: string;
  readonly body: Json;
}

/** The messages as they stand now: what was updated stands in its old place. */
function screenOf(slack: FakeSlack): readonly OnScreen[] {
  const messages = new Map<string, OnScreen>();
  for (const [index, { method, body }] of slack.calls.entries()) {
    // The fake names each message by the number of its call.
    const ts = `1767229000.${String(index + 1).padStart(6, "0")}`;
    if (method === "chat.postMessage" || method === "chat.postEphemeral") messages.set(ts, { ts, body });
    if (method === "chat.update") messages.set(String(body["ts"]), { ts: String(body["ts"]), body });
    if (method === "chat.delete") messages.delete(String(body["ts"]));
  }
  return [...messages.values()];
}

/** As Slack hands over what somebody typed. @source Slack, "Formatting text for app surfaces", escaping */
function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}
function decoded(text: string): string {
  return text.replaceAll("&lt;", "<").replaceAll("&gt;", ">").replaceAll("&amp;", "&");
}

/** Every object in a message, in order. */
function walk(value: unknown): readonly Json[] {
  if (Array.isArray(value)) return value.flatMap(walk);
  if (typeof value !== "object" || value === null) return [];
  return [value as Json, ...Object.values(value).flatMap(walk)];
}
function actionsOf(body: Json): readonly Json[] {
  return walk(body["blocks"]).filter(({ action_id }) => action_id !== undefined);
}
function readPlain(text: unknown): string {
  return decoded(String((text as Json | undefined)?.["text"] ?? ""));
}

function readMessage(body: Json): ShownMessage {
  const lines = walk(body["blocks"]).flatMap(({ type, text }) => {
    if (typeof text !== "string") return [];
    return type === "plain_text" || type === "mrkdwn" ? [decoded(text)] : [text];
  });
  return { text: lines.join("\n"), buttons: actionsOf(body).map((action) => readPlain(action["text"])) };
}

/** Rich text that is more than text, marks that Slack would read, and emoji made of words. */
function liveIn(body: Json): readonly string[] {
  const all = walk(body["blocks"]);
  const rich = all.filter(({ type }) => /^(link|user|usergroup|channel|broadcast|emoji|date)$/.test(String(type)));
  const marked = all.filter(({ type, text }) => type === "mrkdwn" && /[<*_~`]/.test(String(text)));
  const words = all.filter(({ type, emoji }) => type === "plain_text" && emoji !== false);
  const line = /[<>]/.test(String(body["text"])) ? [String(body["text"])] : [];
  return [...[...rich, ...marked, ...words].map((node) => JSON.stringify(node)), ...line];
}
