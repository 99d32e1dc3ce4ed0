import type { SlackDoorSettings } from "../src/boundary/settings-slack.ts";
import type { Installations } from "../src/ports/installations.ts";
import type { Log } from "./log/open-log.ts";
import { createTeamTokens, oneTeam, type TeamTokens } from "./slack/team-tokens.ts";
import { renewWith } from "./slack/token-calls.ts";

/** The way to the tokens of Slack, which the door and the relay share: a token is renewed by one of them at a time. */
export interface SlackAccess {
  readonly installations: Installations;
  readonly tokens: TeamTokens;
}

/** Longest wait for an answer of Slack [ms] */
const CALL_ms = 10_000;

/** Opens the way to the tokens; nothing is read or called yet. */
export function openSlackAccess(
  { botToken, oauth }: SlackDoorSettings,
  installations: Installations,
  log: Log,
): SlackAccess | undefined {
  if (botToken !== undefined) return { installations, tokens: oneTeam(botToken) };
  if (oauth === undefined) return undefined;
  const renew = renewWith({ ...oauth, call_ms: CALL_ms, now_ms: Date.now });
  return { installations, tokens: createTeamTokens({ installations, renew, now_ms: Date.now, log }) };
}
