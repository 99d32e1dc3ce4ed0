import type { App, GlobalShortcut, MessageShortcut } from "@slack/bolt";
import type { WebClient } from "@slack/web-api";
import type { DoorLog } from "./door-log.ts";
import { DOOR_TEXTS } from "./door-texts.ts";
import type { Hearing } from "./hearing.ts";
import type { HomeTab } from "./home-tab.ts";
import { readAbout } from "./read-about.ts";
import { readHomeOpened } from "./read-home.ts";
import { ASK_ABOUT, START_WALK, WALK_BLOCK, WALK_CALLBACK } from "./shortcuts.ts";
import type { SlackCalls } from "./slack-calls.ts";
import { askWhichWalk, openWalk, readWalk, type WalksFor } from "./start-walk.ts";
import { withinTime } from "./wait.ts";
import type { WorkInFlight } from "./work-in-flight.ts";

export interface Elsewhere {
  readonly hearing: Hearing;
  readonly home: HomeTab;
  readonly work: WorkInFlight;
  readonly walksFor: WalksFor;
  readonly callsFor: (client: WebClient) => SlackCalls;
  /** A form must be acknowledged within 3 s [ms]. */
  readonly formWait_ms: number;
  readonly log: DoorLog;
}

/** Hears what people do outside of messages: the home tab and the shortcuts. Acknowledged first, and nothing throws. */
export function listenElsewhere(app: App, parts: Elsewhere): void {
  const { hearing, home, work, walksFor, callsFor, formWait_ms, log } = parts;

  app.event("app_home_opened", async ({ event, body, client }) => {
    const owner = readHomeOpened(event, body);
    if (owner !== undefined) home.show(owner, `home/${body.event_id}`, callsFor(client));
  });
  app.shortcut<GlobalShortcut>({ type: "shortcut", callback_id: START_WALK }, async ({ shortcut, ack, client }) => {
    await ack();
    const asked = askWhichWalk(shortcut, walksFor, callsFor(client));
    work.track(asked.catch((error: unknown) => log.error({ error }, "the list of walks could not be opened")));
  });
  app.view(WALK_CALLBACK, async ({ body, ack, client }) => {
    const walk = body.type === "view_submission" ? readWalk(body) : undefined;
    if (walk === undefined) return ack();
    const calls = callsFor(client);
    const opened = openWalk(walk, calls).then(
      (heard) => {
        hearing.answer(heard, calls);
        return "open" as const;
      },
      (error: unknown) => {
        log.error({ error, delivery: walk.delivery }, "a walk could not be started");
        return "failed" as const;
      },
    );
    work.track(opened.then(() => {}));
    const hasFailed = (await withinTime(opened, formWait_ms)) === "failed";
    const errors = { [WALK_BLOCK]: DOOR_TEXTS[walk.language].cannotWrite };
    await (hasFailed ? ack({ response_action: "errors", errors }) : ack());
  });
  app.shortcut<MessageShortcut>(
    { type: "message_action", callback_id: ASK_ABOUT },
    async ({ shortcut, ack, client }) => {
      await ack();
      const heard = readAbout(shortcut);
      if (heard !== undefined) hearing.answer(heard, callsFor(client));
    },
  );
}
