import type { FetchFunction } from "@slack/web-api";
import type { Access } from "../../src/ports/installations.ts";
import { SlackRefusalError, SlackUnreachableError } from "./errors.ts";
import { isRecord, readString } from "./read-record.ts";
import { slackFetch } from "./slack-fetch.ts";

/** What the app shows for itself when it asks for tokens. */
export interface TokenCallSettings {
  readonly clientId: string;
  readonly clientSecret: string;
  /** Longest wait for an answer [ms] */
  readonly call_ms: number;
  /** Time of day [ms] */
  readonly now_ms: () => number;
  readonly apiUrl?: string;
}
/** Exchanges a refresh token for the next access; each refresh token is good for one exchange. */
export type RenewAccess = (refreshToken: string) => Promise<Access>;

const SLACK_API = "https://slack.com/api/";

/** The exchange of "Using token rotation" (docs.slack.dev): `oauth.v2.access` with the grant type `refresh_token`. */
export function renewWith(settings: TokenCallSettings): RenewAccess {
  const { clientId: client_id, clientSecret: client_secret, call_ms, now_ms, apiUrl } = settings;
  return async (refresh_token) => {
    const form = { client_id, client_secret, grant_type: "refresh_token", refresh_token };
    const asked_ms = now_ms();
    const answer = await callApi(slackFetch(call_ms), `${apiUrl ?? SLACK_API}oauth.v2.access`, form, {});
    const [token, next] = [readString(answer, "access_token"), readString(answer, "refresh_token")];
    const life_s = isRecord(answer) ? answer["expires_in"] : undefined;
    if (token === undefined || next === undefined || typeof life_s !== "number")
      throw new SlackRefusalError("an answer without tokens");
    return { token, refreshToken: next, expires_ms: asked_ms + life_s * 1000 };
  };
}

/** Gives a token back that is not going to be used. */
export async function revokeToken(token: string, call_ms: number, apiUrl: string = SLACK_API): Promise<void> {
  await callApi(slackFetch(call_ms), `${apiUrl}auth.revoke`, {}, { authorization: `Bearer ${token}` });
}

async function callApi(
  fetchFn: FetchFunction,
  url: string,
  form: Readonly<Record<string, string>>,
  headers: Readonly<Record<string, string>>,
): Promise<unknown> {
  let answer: unknown;
  try {
    const response = await fetchFn(url, {
      method: "POST",
      headers: { ...headers, "content-type": "application/x-www-form-urlencoded" },
      body: new URLSearchParams(form).toString(),
      redirect: "error",
    });
    answer = await response.json();
  } catch (cause) {
    throw new SlackUnreachableError("Slack did not answer", { cause });
  }
  if (isRecord(answer) && answer["ok"] === true) return answer;
  throw new SlackRefusalError(readString(answer, "error") ?? "no reason given");
}
