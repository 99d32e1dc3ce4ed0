import { fixture, type Json, openHarness, sendEvent, sendPayload } from "../slack/slack-harness.ts";
import type { JourneyDoor, OpenJourneyDoor, Shown } from "./journey-door.ts";
import { SLACK_TEAM, slackUser } from "./journey-door.ts";
import { visibleText } from "./visible.ts";

interface Button {
  readonly label: string;
  readonly element: Json;
  readonly ts: string;
}

/** Slack: direct messages with the bot. */
export const openSlackJourney: OpenJourneyDoor = async (desk) => {
  const harness = await openHarness(desk);
  const { door, slack } = harness;
  const onScreen = new Map<string, readonly Button[]>();
  let count = 0;

  /** Everything that was posted since, once nothing is worked on any more. */
  const settle = async (who: string, from: number): Promise<Shown> => {
    await untilIdle(door.url);
    const posted = slack.calls.slice(from).filter(({ method }) => /postMessage|postEphemeral|respond/.test(method));
    const buttons = posted.flatMap(({ body }) => buttonsIn(body));
    onScreen.set(who, buttons);
    return {
      text: posted.map(({ body }) => visibleText(body["blocks"] ?? body["text"])).join("\n"),
      buttons: buttons.map(({ label }) => label),
    };
  };
  const journey: JourneyDoor = {
    door: "slack",
    async say(who, text, photos = []) {
      count += 1;
      const from = slack.calls.length;
      const ts = `1767225800.${String(count).padStart(6, "0")}`;
      const files = photos.map(({ name, bytes }) => ({
        ...{ id: `F${count}`, name, size: bytes.length, mimetype: "image/jpeg" },
        url_private_download: slack.responseUrl(`file/${name}`),
      }));
      const event = {
        ...{ user: slackUser(who), team: SLACK_TEAM, channel: `D${who.toUpperCase()}`, text, ts, event_ts: ts },
        ...(files.length > 0 && { subtype: "file_share", files }),
      };
      await sendEvent(door, fixture("message-im", { event_id: `Ev${count}`, event }));
      return await settle(who, from);
    },
    async press(who, label) {
      count += 1;
      const from = slack.calls.length;
      const button = (onScreen.get(who) ?? []).find((one) => one.label === label);
      if (button === undefined) throw new Error(`no button ${label} before ${who}`);
      const channel = `D${who.toUpperCase()}`;
      const payload = fixture("button-in-thread", {
        user: { id: slackUser(who), username: who, name: who, team_id: SLACK_TEAM },
        ...{ trigger_id: `press.${count}`, response_url: slack.responseUrl(`press-${count}`) },
        channel: { id: channel, name: "directmessage" },
        container: { type: "message", message_ts: button.ts, channel_id: channel, thread_ts: undefined },
        message: { ts: button.ts, thread_ts: undefined },
        actions: [button.element],
      });
      await sendPayload(door, payload);
      return await settle(who, from);
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

function buttonsIn(body: Json): readonly Button[] {
  const blocks = Array.isArray(body["blocks"]) ? (body["blocks"] as readonly Json[]) : [];
  const elements = blocks
    .filter((block) => block["type"] === "actions")
    .flatMap((block) => block["elements"] as readonly Json[]);
  return elements.flatMap((element): readonly Button[] => {
    const ts = "1767225800.999999";
    if (element["type"] === "button") return [{ label: visibleText(element), element, ts }];
    if (element["type"] !== "static_select") return [];
    return (element["options"] as readonly Json[]).map((option) => ({
      label: visibleText(option["text"]),
      element: { ...element, selected_option: option, options: undefined },
      ts,
    }));
  });
}
