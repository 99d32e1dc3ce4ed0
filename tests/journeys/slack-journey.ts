import { fixture, type Harness, type Json, openHarness, sendEvent, sendPayload } from "../slack/slack-harness.ts";
import {
  createScreens,
  type DoorParts,
  type JourneyDoor,
  type OpenJourneyDoor,
  type Photo,
  SLACK_TEAM,
  slackUser,
} from "./journey-door.ts";
import { visibleText } from "./visible.ts";

interface Button {
  readonly label: string;
  readonly element: Json;
}
/** Messages as they come, and files in the order in which they are handed over. */
const SEEN = /postMessage|postEphemeral|chat\.update|respond|getUploadURLExternal/;
/** Nothing is said of work that goes on: each answer comes whole [ms]. */
const PACE = { progressAfter_ms: 600_000 };
const TS = "1767225800.999999";

/** Slack: direct messages with the bot. */
export const openSlackJourney: OpenJourneyDoor = async (parts) => {
  const screens = createScreens<Button>();
  const open = ({ desk, readFile }: DoorParts) => openHarness(desk, PACE, undefined, readFile);
  let harness = await open(parts);
  let count = 0;

  /** Sends, and reads everything that was posted for it. */
  const send = async (who: string, deliver: (harness: Harness) => Promise<unknown>) => {
    count += 1;
    const from = harness.slack.calls.length;
    await deliver(harness);
    await untilIdle(harness.door.url);
    const posted = harness.slack.calls.slice(from).filter(({ method }) => SEEN.test(method));
    return screens.show(
      who,
      posted.map(seenOf).join("\n"),
      posted.flatMap(({ body }) => buttonsIn(body)),
    );
  };
  const journey: JourneyDoor = {
    door: "slack",
    say: (who, text, photos = []) =>
      send(who, async ({ door, slack }) => {
        const ts = `1767225800.${String(count).padStart(6, "0")}`;
        const files = photos.map((photo, at) => shareFile(slack, photo, `F${count}PHOTO${at}`));
        const event = {
          ...{ user: slackUser(who), team: SLACK_TEAM, channel: `D${who.toUpperCase()}`, text, ts, event_ts: ts },
          ...(files.length > 0 && { subtype: "file_share", files }),
        };
        await sendEvent(door, fixture("message-im", { event_id: `Ev${count}`, event }));
      }),
    press: (who, label) =>
      send(who, async ({ door, slack }) => {
        const { element } = screens.find(who, label);
        const channel = `D${who.toUpperCase()}`;
        const payload = fixture("button-in-thread", {
          user: { id: slackUser(who), username: who, name: who, team_id: SLACK_TEAM },
          ...{ trigger_id: `press.${count}`, response_url: slack.responseUrl(`press-${count}`) },
          channel: { id: channel, name: "directmessage" },
          container: { type: "message", message_ts: TS, channel_id: channel, thread_ts: undefined },
          message: { ts: TS, thread_ts: undefined },
          actions: [element],
        });
        await sendPayload(door, payload);
      }),
    async reopen(next) {
      await harness.close();
      harness = await open(await next());
    },
    close: () => harness.close(),
  };
  return journey;
};

/** Slack's door says how much it is working on. */
async function untilIdle(url: string): Promise<void> {
  for (;;) {
    const health = (await (await fetch(`${url}/slack/health`)).json()) as { readonly working: number };
    if (health.working === 0) return;
  }
}

/** A file as a message tells it, and what is there for whoever has the bot's token. */
function shareFile(slack: Harness["slack"], { name, bytes }: Photo, id: string): Json {
  slack.script(`/files/${id}`, ({ token }) =>
    token === "Bearer xoxb-invented"
      ? { headers: { "content-type": "image/jpeg" }, body: bytes }
      : { status: 403, body: "not yours" },
  );
  return {
    ...{ id, name, size: bytes.length, mimetype: "image/jpeg", mode: "hosted", file_access: "visible" },
    url_private_download: slack.fileUrl(id),
  };
}

function seenOf({ method, body }: { readonly method: string; readonly body: Json }): string {
  if (method === "files.getUploadURLExternal") return `(file: ${String(body["filename"])})`;
  return visibleText(body["blocks"] ?? { text: body["text"] });
}

function buttonsIn(body: Json): readonly Button[] {
  const blocks = Array.isArray(body["blocks"]) ? (body["blocks"] as readonly Json[]) : [];
  const elements = blocks
    .filter((block) => block["type"] === "actions")
    .flatMap((block) => block["elements"] as readonly Json[]);
  return elements.flatMap((element): readonly Button[] => {
    if (element["type"] === "button") return [{ label: labelOf(element["text"]), element }];
    if (element["type"] !== "static_select") return [];
    return (element["options"] as readonly Json[]).map((option) => ({
      label: labelOf(option["text"]),
      element: { ...element, selected_option: option, options: undefined },
    }));
  });
}

function labelOf(text: unknown): string {
  return visibleText({ label: text });
}
