import type { FetchFunction, WebClient } from "@slack/web-api";
import { SlackRefusalError } from "./errors.ts";
import { LIMITS } from "./limits.ts";
import { readString } from "./read-record.ts";
import { fitRaw } from "./slack-text.ts";

/** A picture or paper on its way to Slack. */
export interface SlackUpload {
  readonly name: string;
  readonly title: string;
  /** What a picture shows, for screen readers. */
  readonly alt?: string;
  /** Media type. */
  readonly type: string;
  readonly bytes: Uint8Array;
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

export async function askForPlace(client: WebClient, { name, alt, bytes }: SlackUpload): Promise<UploadPlace> {
  const answer = await client.apiCall("files.getUploadURLExternal", {
    filename: fitRaw(name, LIMITS.fileName),
    length: bytes.byteLength,
    ...(alt !== undefined && { alt_txt: fitRaw(alt, LIMITS.pictureAlt) }),
  });
  const [url, file] = [readString(answer, "upload_url"), readString(answer, "file_id")];
  if (url === undefined || file === undefined) throw new SlackRefusalError("no place for a file");
  return { url, file };
}

export async function putFile(fetchFn: FetchFunction, url: string, { name, type, bytes }: SlackUpload): Promise<void> {
  const body = new FormData();
  body.set("file", new Blob([Uint8Array.from(bytes)], { type }), fitRaw(name, LIMITS.fileName));
  const response = await fetchFn(url, { method: "POST", body, redirect: "error" });
  if (!response.ok) throw new SlackRefusalError(`upload ${response.status}`);
}

/**
 * Shares the file, as a message of its own: only where the bot may speak. Without a place nobody sees it until a message
 * shows it.
 */
export async function shareFile(
  client: WebClient,
  file: string,
  title: string,
  place?: { readonly channel: string; readonly thread?: string },
): Promise<void> {
  await client.apiCall("files.completeUploadExternal", {
    files: [{ id: file, title: fitRaw(title, LIMITS.pictureTitle) }],
    ...(place && { channel_id: place.channel }),
    ...(place?.thread !== undefined && { thread_ts: place.thread }),
  });
}
