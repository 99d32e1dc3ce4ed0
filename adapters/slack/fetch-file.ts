import { MOST_FILE_B } from "../../src/ports/files.ts";
import { SlackRefusalError } from "./errors.ts";
import type { SlackFetch } from "./slack-fetch.ts";

/** A file that came with a message, as the message tells it. */
export interface FileRef {
  readonly id: string;
  readonly name: string;
  /** As Slack says; what really comes is measured again [bytes]. */
  readonly size_B?: number;
  /** Left out where Slack tells nothing but the id, and wants to be asked. */
  readonly url?: string;
}

/** More than is kept; nothing more of it is fetched. */
export class FileTooLargeError extends Error {
  readonly code = "too_large";
}

const MOST_REDIRECTS = 2;
/** Longest wait for one file, to its end: a photo over a poor line of a cellar is on Slack's side already [ms]. */
const FILE_ms = 30_000;

/**
 * Fetches a file with the bot's token, which goes to Slack's own hosts alone.
 * @param apiUrl where the Web API is, when that is not Slack's own; files may stand there too
 */
export async function fetchFile(
  fetchFn: SlackFetch,
  { url = "", size_B = 0 }: FileRef,
  token: string,
  apiUrl: string | undefined,
): Promise<Uint8Array> {
  if (size_B > MOST_FILE_B) throw new FileTooLargeError(`${size_B} bytes`);
  const signal = AbortSignal.timeout(FILE_ms);
  let at = url;
  for (let hops = 0; hops <= MOST_REDIRECTS; hops += 1) {
    if (!isOfSlack(at, apiUrl)) throw new SlackRefusalError("a file that is not at Slack");
    const response = await fetchFn(at, { headers: { authorization: `Bearer ${token}` }, redirect: "manual", signal });
    const next = response.status >= 300 && response.status < 400 ? response.headers.get("location") : null;
    if (next === null) return await readBody(response);
    await response.body?.cancel();
    at = new URL(next, at).href;
  }
  throw new SlackRefusalError("a file that is passed on and on");
}

/** Over https, at slack.com or below it. */
function isOfSlack(address: string, apiUrl: string | undefined): boolean {
  if (!URL.canParse(address)) return false;
  const { protocol, hostname, username, port, origin } = new URL(address);
  if (apiUrl !== undefined && origin === new URL(apiUrl).origin) return true;
  const isHost = hostname === "slack.com" || hostname.endsWith(".slack.com");
  return protocol === "https:" && isHost && username === "" && port === "";
}

async function readBody(response: Response): Promise<Uint8Array> {
  if (!response.ok) throw new SlackRefusalError(`file ${response.status}`);
  // Without the right to read files Slack answers with the page to sign in at.
  const isPage = response.headers.get("content-type")?.startsWith("text/html") === true;
  if (isPage || response.body === null) {
    await response.body?.cancel();
    throw new SlackRefusalError("a page instead of the file");
  }
  const parts: Uint8Array[] = [];
  let size_B = 0;
  for await (const part of response.body) {
    size_B += part.byteLength;
    // Leaving the loop ends the download.
    if (size_B > MOST_FILE_B) throw new FileTooLargeError(`more than ${MOST_FILE_B} bytes`);
    parts.push(part);
  }
  return Buffer.concat(parts);
}
