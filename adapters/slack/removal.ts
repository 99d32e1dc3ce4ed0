import type { App } from "@slack/bolt";
import type { Installations } from "../../src/ports/installations.ts";
import type { DoorLog } from "./door-log.ts";

/** When Slack says that it happened, in whole seconds, so at the latest a second later [ms]. */
const TO_END_OF_SECOND_ms = 999;

/**
 * Deletes the tokens of an organisation that takes Oldhand out. What was recorded there stays until it is asked to be
 * deleted. Slack sends two events, in any order, and perhaps late: one that is older than a new installation is too late.
 * @param installations left out where the one token stands in the settings
 */
export function listenForRemoval(app: App, installations: Installations | undefined, log: DoorLog): void {
  const remove = async (team: string, time_s: number, because: string): Promise<void> => {
    const isGone = await installations?.remove(team, time_s * 1000 + TO_END_OF_SECOND_ms);
    if (isGone !== false) log.warn({ team, because }, "the app is not installed there any more");
  };
  app.event("app_uninstalled", ({ body, event }) => remove(body.team_id, body.event_time, event.type));
  app.event("tokens_revoked", async ({ body, event }) => {
    // Tokens of people were never asked for; what counts is the bot's own.
    if ((event.tokens.bot ?? []).length > 0) await remove(body.team_id, body.event_time, event.type);
  });
}
