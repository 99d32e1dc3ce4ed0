import type { FetchFunction, WebClient } from "@slack/web-api";
import { SlackRefusalError } from "./errors.ts";
import { LIMITS } from "./limits.ts";
import { readString } from "./read-record.ts";
import { fitRaw } from "./slack-text.ts";

/** A picture on its way to Slack. */
export interface SlackPicture {
  readonly name: string;
  readonly title: string;
  /** What it shows, for screen readers. */
  readonly alt: string;
  readonly png: Uint8Array;
}
/** Where a file may be put, and its id from then on. */
interface UploadPlace {
  readonly url: string;
  readonly file: string;
}

/*
 * The three steps of an upload. The client's own `files.uploadV2` does the same, but names the text for screen readers
 * `alt_text`, and the published method takes `alt_txt` (docs.slack.dev, files.getUploadURLExternal).
 */

export async function askForPlace(client: WebClient, { name, alt, png }: SlackPicture): Promise<UploadPlace> {
  const answer = await client.apiCall("files.getUploadURLExternal", {
    filename: name,
    length: png.byteLength,
    alt_txt: fitRaw(alt, LIMITS.pictureAlt),
  });
  const [url, file] = [readString(answer, "upload_url"), readString(answer, "file_id")];
  if (url === undefined || file === undefined) throw new SlackRefusalError("no place for a file");
  return { url, file };
}

export async function putFile(fetchFn: FetchFunction, url: string, { name, png }: SlackPicture): Promise<void> {
  const body = new FormData();
  body.set("file", new Blob([Uint8Array.from(png)], { type: "image/png" }), name);
  const response = await fetchFn(url, { method: "POST", body, redirect: "error" });
  if (!response.ok) throw new SlackRefusalError(`upload ${response.status}`);
}

/** Shares the file, as a message of its own: only where the bot may speak. */
export async function shareFile(
  client: WebClient,
  file: string,
  title: string,
  { channel, thread }: { readonly channel: string; readonly thread?: string },
): Promise<void> {
  await client.files.completeUploadExternal({
    files: [{ id: file, title: fitRaw(title, LIMITS.pictureTitle) }],
    channel_id: channel,
    ...(thread !== undefined && { thread_ts: thread }),
  });
}
