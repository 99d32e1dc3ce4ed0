import type { FetchFunction } from "@slack/web-api";

/** Waited when Slack says "too many" without saying for how long [s]; otherwise the client gives up at once. */
const UNSAID_WAIT_s = 1;
const TOO_MANY = 429;

/** What the client takes, with all that the platform's own answer has. */
export type SlackFetch = (...asked: Parameters<FetchFunction>) => Promise<Response>;

/**
 * The one way out of this door: every call ends after a while, and a refusal for too many calls always says how long
 * to wait.
 * @param most_ms longest wait for an answer [ms]
 */
export function slackFetch(most_ms: number): SlackFetch {
  return async (url, init) => {
    const { signal, ...rest } = init ?? {};
    const response = await fetch(url, { ...rest, signal: signal ?? AbortSignal.timeout(most_ms) });
    if (response.status !== TOO_MANY || Number(response.headers.get("retry-after") ?? Number.NaN) >= 0) return response;
    const headers = { ...Object.fromEntries(response.headers), "retry-after": String(UNSAID_WAIT_s) };
    return new Response(await response.text(), { status: TOO_MANY, headers });
  };
}
