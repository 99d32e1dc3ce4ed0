import { isIP } from "node:net";
import type { SentFile } from "../../src/ports/files.ts";
import { listAt, textAt } from "./payload.ts";

/** Largest file that is read: more than the desk keeps, so that the desk can say that it is too large [bytes]. */
const MOST_FILE_B = 12_000_000;
/** Longest wait for a whole file. Our own choice. */
const FILE_TIMEOUT_ms = 60_000;
/** Most files of one message; Teams allows ten. Our own choice. */
const MOST_FILES = 10;
/** How often an address may point to another. Our own choice. */
const MOST_REDIRECTS = 3;
/**
 * What Teams sends for a file in a personal chat; its address needs no token, for a few minutes.
 * @source Microsoft Teams, "Send and receive files through a bot"
 */
const DOWNLOAD_TYPE = "application/vnd.microsoft.teams.file.download.info";
const OK = 200;

/** Where a file is, and whether the platform wants to know who asks for it. */
interface SentPlace {
  readonly url: string;
  readonly needsToken: boolean;
}
export type FetchFile = (place: SentPlace, serviceUrl: string) => Promise<Uint8Array>;
/** The part of the web's `fetch` that is needed. */
export type WebFetch = (url: URL, options: RequestInit) => Promise<Response>;

/** Photos and papers of a message. Each is fetched when somebody wants it, not before. */
export function readFiles(activity: unknown, fetchFile: FetchFile): readonly SentFile[] {
  const serviceUrl = textAt(activity, "serviceUrl") ?? "";
  return listAt(activity, "attachments")
    .flatMap((attachment): SentFile[] => {
      const place = placeOf(attachment);
      if (place === undefined) return [];
      return [
        {
          name: textAt(attachment, "name") ?? "photo",
          read: async () => await fetchFile(place, serviceUrl),
        },
      ];
    })
    .slice(0, MOST_FILES);
}

/** Pictures in the text itself are read with the bot's token. @source Microsoft Teams, "Send and receive files", inline images */
function placeOf(attachment: unknown): SentPlace | undefined {
  const type = textAt(attachment, "contentType")?.toLowerCase() ?? "";
  const url = type === DOWNLOAD_TYPE ? textAt(attachment, "content", "downloadUrl") : textAt(attachment, "contentUrl");
  if (url === undefined || !(type === DOWNLOAD_TYPE || type.startsWith("image/"))) return undefined;
  return { url, needsToken: type !== DOWNLOAD_TYPE };
}

/** Makes what fetches files: over https alone, never with the token to anybody but the platform, and never too much. */
export function createFetchFile(token: () => Promise<string>, webFetch: WebFetch): FetchFile {
  return async ({ url, needsToken }, serviceUrl) => {
    let address = publicAddress(url);
    if (needsToken && address.host !== new URL(serviceUrl).host)
      throw new Error("A picture is not where the platform keeps pictures.");
    const headers = needsToken ? { authorization: `Bearer ${await token()}` } : undefined;
    for (let hop = 0; hop <= MOST_REDIRECTS; hop++) {
      const response = await webFetch(address, {
        redirect: "manual",
        signal: AbortSignal.timeout(FILE_TIMEOUT_ms),
        ...(headers && { headers }),
      });
      const next = response.headers.get("location");
      if (response.status === OK) return await readWithin(response, MOST_FILE_B);
      await response.body?.cancel();
      // Wherever a token was asked for, another address is not the platform's any more.
      if (next === null || needsToken) throw new Error(`A file was not given: ${response.status}.`);
      address = publicAddress(new URL(next, address).href);
    }
    throw new Error("A file is sent from one address to the next.");
  };
}

/** An address on the web at large, over https; nothing of this machine or its network. */
export function publicAddress(url: string): URL {
  const address = new URL(url);
  const host = address.hostname.replace(/^\[|\]$/g, "");
  const isNamed = isIP(host) === 0 && host.includes(".") && !/\.(local|localhost|internal)$/i.test(host);
  if (address.protocol !== "https:" || !isNamed || address.username !== "" || address.password !== "")
    throw new Error("A file has an address that is not read.");
  return address;
}

/** What comes, up to one byte more than so many. */
async function readWithin(response: Response, most_B: number): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let size_B = 0;
  const reader = response.body?.getReader();
  while (reader !== undefined) {
    const { done, value } = await reader.read();
    if (done) break;
    chunks.push(value);
    size_B += value.byteLength;
    if (size_B <= most_B) continue;
    await reader.cancel();
    break;
  }
  return Buffer.concat(chunks).subarray(0, most_B + 1);
}
