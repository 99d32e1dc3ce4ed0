import type { Receiver } from "@slack/bolt";
import type { WebClient } from "@slack/web-api";
import { AckedApp } from "./acked-app.ts";
import type { ChannelQueue } from "./channel-queue.ts";
import { type DoorLog, toBoltLogger } from "./door-log.ts";
import type { Heard } from "./heard.ts";
import type { Hearing } from "./hearing.ts";
import type { HomeTab } from "./home-tab.ts";
import { listenElsewhere } from "./listen-elsewhere.ts";
import { readCommand } from "./read-command.ts";
import { readHomePress } from "./read-home.ts";
import { type Envelope, type MessageEvent, readMessage } from "./read-message.ts";
import { type Press, readPress } from "./read-press.ts";
import { readSubmission } from "./read-submission.ts";
import { BUTTON_ACTION } from "./render-buttons.ts";
import { FORM_CALLBACK } from "./render-modal.ts";
import type { Pace } from "./settings.ts";
import { createSlackCalls } from "./slack-calls.ts";
import { type SlackFetch, slackFetch } from "./slack-fetch.ts";
import type { WalksFor } from "./start-walk.ts";
import { type TeamTokens, withFreshTokens } from "./team-tokens.ts";
import type { WorkInFlight } from "./work-in-flight.ts";

export interface AppSettings {
  readonly receiver: Receiver;
  readonly tokens: Pick<TeamTokens, "find" | "fresh">;
  readonly hearing: Hearing;
  readonly home: HomeTab;
  readonly work: WorkInFlight;
  readonly walksFor: WalksFor;
  readonly queue: ChannelQueue;
  readonly pace: Pace;
  readonly log: DoorLog;
  readonly apiUrl?: string;
}

/** Tries again twice and soon: a person waits. */
const SHORT_RETRIES = { retries: 2, minTimeout: 250, maxTimeout: 1_000 };

/** The Bolt app: acknowledges first, and answers after. Nothing here calls Slack before a request comes in. */
export function openApp(settings: AppSettings): AckedApp {
  const { tokens, hearing, home, queue, pace, log, apiUrl } = settings;
  const fetchFn = withFreshTokens(slackFetch(pace.call_ms), tokens.fresh);
  const app = makeApp(settings, fetchFn);
  const callsFor = (client: WebClient) => createSlackCalls(client, queue, fetchFn, apiUrl);
  const answer = (heard: Heard | undefined, client: WebClient) => {
    if (heard !== undefined) hearing.answer(heard, callsFor(client));
  };
  const hear = (event: MessageEvent, envelope: Envelope, client: WebClient, retryNum: number | undefined) => {
    if (retryNum !== undefined) log.info({ retryNum, channel: event.channel, ts: event.ts }, "Slack sent this again");
    answer(readMessage(event, envelope), client);
  };

  app.command(/.*/, async ({ command, ack, client }) => {
    await ack();
    answer(readCommand(command), client);
  });
  app.event("app_mention", async ({ event, body, client, context }) => {
    hear(event, body, client, context.retryNum);
  });
  app.event("message", async ({ event, body, client, context }) => {
    if (event.channel_type === "im") hear(event, body, client, context.retryNum);
  });
  app.action<Press>({ type: "block_actions", action_id: BUTTON_ACTION }, async ({ body, ack, client }) => {
    await ack();
    const atHome = body.view?.type === "home" ? readHomePress(body) : undefined;
    if (atHome === undefined) return answer(readPress(body), client);
    const calls = callsFor(client);
    const { heard, owner } = atHome;
    hearing.answer(heard, calls, () => home.show(owner, `home/${heard.inbound.delivery}`, calls));
  });
  app.view(FORM_CALLBACK, async ({ body, ack, client }) => {
    const heard = body.type === "view_submission" ? readSubmission(body) : undefined;
    if (heard === undefined) return ack();
    const problems = await hearing.answerForm(heard, callsFor(client));
    await (problems === undefined ? ack() : ack({ response_action: "errors", errors: problems }));
  });
  listenElsewhere(app, { ...settings, callsFor, formWait_ms: pace.formWait_ms });
  return app;
}

function makeApp({ receiver, tokens, pace, log, apiUrl }: AppSettings, fetchFn: SlackFetch): AckedApp {
  return new AckedApp({
    receiver,
    // Bolt's own check would call Slack at start, and every command would fail while that hangs.
    authorize: async ({ teamId }) => {
      const botToken = await tokens.find(teamId);
      if (botToken === undefined) throw new Error(`the app is not installed in ${teamId}`);
      return { botToken };
    },
    convoStore: false,
    // `readMessage` does this without knowing the bot's own id beforehand.
    ignoreSelf: false,
    logger: toBoltLogger(log),
    clientOptions: {
      fetch: fetchFn,
      timeout: pace.call_ms,
      retryConfig: SHORT_RETRIES,
      rejectRateLimitedCalls: true,
      allowAbsoluteUrls: false,
      ...(apiUrl !== undefined && { slackApiUrl: apiUrl }),
    },
  });
}
