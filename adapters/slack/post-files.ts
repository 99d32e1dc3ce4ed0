import type { ImageBlock, KnownBlock } from "@slack/types";
import type { WebClient } from "@slack/web-api";
import type { Card, FileBlock } from "../../src/messages/card.ts";
import type { Outgoing } from "../../src/ports/chat.ts";
import { SlackBusyError, SlackRefusalError } from "./errors.ts";
import { LIMITS } from "./limits.ts";
import { isRecord, readString } from "./read-record.ts";
import type { SlackMessage } from "./render-card.ts";
import { plain, richParagraphs } from "./rich-text.ts";
import { coded, QUIET, toBody } from "./slack-calls.ts";
import type { SlackFetch } from "./slack-fetch.ts";
import { fitEscaped, fitRaw } from "./slack-text.ts";
import { askForPlace, putFile, shareFile } from "./upload-file.ts";

/** Reads a kept file for a post; nothing where there is none. */
export type ReadForPost = (workspace: string, hash: string) => Promise<Uint8Array | undefined>;

export interface PostFiles {
  /** Puts those of the post's files that are not in the thread yet there. */
  send(client: WebClient, out: Outgoing, thread: string, there: ReadonlySet<string>): Promise<void>;
}

/** Marks a message that shows pictures of a post; its payload names their marks. */
export const PICTURES_TYPE = "oldhand_pictures";
/** What a block shows of Slack's own files (@slack/types, SlackFile). */
const SHOWN = new Set(["image/png", "image/jpeg", "image/gif"]);
const PICTURES_A_MESSAGE = 10;
/** Slack looks through a file before a block may show it: asked again after so long, so often [s]. */
const LOOKED_THROUGH_s = 5;
const MOST_WAITS = 6;
const NOT_YET = /slack.file/i;
/** Uploads that are kept in mind. */
const MOST_KEPT = 200;

/** A file is known again by the beginning of its hash, which stands in its name in Slack. */
export function markOf(hash: string): string {
  return hash.slice(0, 12);
}
const MARK_IN_NAME = /\(([0-9a-f]{12})\)/;

/** The marks of all files that a message of a thread shows or carries. */
export function marksIn(message: unknown): readonly string[] {
  const metadata = isRecord(message) ? message["metadata"] : undefined;
  const payload = isRecord(metadata) ? metadata["event_payload"] : undefined;
  const isOurs = readString(metadata, "event_type") === PICTURES_TYPE;
  const shown = isOurs ? (readString(payload, "files") ?? "").split(",") : [];
  const files = isRecord(message) && Array.isArray(message["files"]) ? message["files"] : [];
  const carried = files.flatMap((file: unknown) => MARK_IN_NAME.exec(readString(file, "name") ?? "")?.[1] ?? []);
  return [...shown, ...carried].filter((mark) => mark !== "");
}

export function filesOf({ blocks }: Card): readonly FileBlock[] {
  const files = blocks.filter((block): block is FileBlock => block.kind === "file");
  return files.filter(({ file }, index) => files.findIndex((one) => one.file.hash === file.hash) === index);
}

/**
 * The files of posts. Pictures are uploaded unseen and then shown by one message, so that to upload one twice shows it
 * once; every other file is a message of its own in the thread, known again by its name.
 */
export function createPostFiles(fetchFn: SlackFetch, read: ReadForPost): PostFiles {
  const uploaded = new Map<string, string>();
  const waits = new Map<string, number>();
  const upload = uploader(fetchFn, read);

  async function pictureId(client: WebClient, out: Outgoing, block: FileBlock): Promise<string | undefined> {
    const key = JSON.stringify([out.workspace, block.file.hash]);
    const known = uploaded.get(key);
    if (known !== undefined) return known;
    const id = await upload(client, out, block);
    if (id === undefined) return undefined;
    await coded(() => shareFile(client, id, block.text));
    keep(uploaded, key, id);
    return id;
  }

  async function showPictures(client: WebClient, out: Outgoing, thread: string, blocks: readonly FileBlock[]) {
    const ids = await inTurn(blocks, (block) => pictureId(client, out, block));
    const shown = blocks.flatMap((block, index) => {
      const id = ids[index];
      return id === undefined ? [] : [{ block, id }];
    });
    if (shown.length === 0) return;
    const count = waits.get(out.id) ?? 0;
    const message = renderPictures(shown, count < MOST_WAITS);
    const metadata = {
      event_type: PICTURES_TYPE,
      event_payload: { id: out.id, files: shown.map(({ block }) => markOf(block.file.hash)).join(",") },
    };
    try {
      const { id: channel } = out.channel;
      await coded(() =>
        client.chat.postMessage({ channel, thread_ts: thread, ...toBody(message), ...QUIET, metadata }),
      );
    } catch (error) {
      const isNotYet = error instanceof SlackRefusalError && NOT_YET.test(error.reason) && count < MOST_WAITS;
      if (!isNotYet) throw error;
      keep(waits, out.id, count + 1);
      throw new SlackBusyError(LOOKED_THROUGH_s, { cause: error });
    }
  }

  return {
    async send(client, out, thread, there) {
      const missing = filesOf(out.card).filter(({ file }) => !there.has(markOf(file.hash)));
      const pictures = missing.filter(({ file }) => SHOWN.has(file.type));
      for (let from = 0; from < pictures.length; from += PICTURES_A_MESSAGE)
        await showPictures(client, out, thread, pictures.slice(from, from + PICTURES_A_MESSAGE));
      for (const block of missing.filter(({ file }) => !SHOWN.has(file.type))) {
        const id = await upload(client, out, block);
        const place = { channel: out.channel.id, thread };
        if (id !== undefined) await coded(() => shareFile(client, id, block.text, place));
      }
    },
  };
}

function uploader(fetchFn: SlackFetch, read: ReadForPost) {
  return async (client: WebClient, out: Outgoing, { file, text }: FileBlock): Promise<string | undefined> => {
    const bytes = await read(out.workspace, file.hash);
    if (bytes === undefined) return undefined;
    const name = nameWithMark(file.name, file.hash);
    const isPicture = file.type.startsWith("image/");
    const sent = { name, title: text, type: file.type, bytes, ...(isPicture && { alt: text }) };
    const place = await coded(() => askForPlace(client, sent));
    await coded(() => putFile(fetchFn, place.url, sent));
    return place.file;
  };
}

/** "report (3f9a1c2b4d5e).pdf". */
function nameWithMark(name: string, hash: string): string {
  const dot = name.lastIndexOf(".");
  const [stem, end] = dot > 0 ? [name.slice(0, dot), name.slice(dot)] : [name, ""];
  const mark = ` (${markOf(hash)})`;
  return fitRaw(stem, LIMITS.fileName - mark.length - 12) + mark + end.slice(0, 12);
}

/** @param mayShow false where Slack does not let a block show them: then they are named */
function renderPictures(
  shown: readonly { readonly block: FileBlock; readonly id: string }[],
  mayShow: boolean,
): SlackMessage {
  const blocks = shown.flatMap(({ block, id }): readonly KnownBlock[] => {
    const caption = richParagraphs(fitRaw(block.text, LIMITS.rowPart), plain);
    const image: ImageBlock = { type: "image", slack_file: { id }, alt_text: fitRaw(block.text, LIMITS.pictureAlt) };
    return mayShow ? [...caption, image] : caption;
  });
  return { text: fitEscaped(shown.map(({ block }) => block.text).join(" · "), LIMITS.messageText), blocks };
}

async function inTurn<T, R>(items: readonly T[], work: (item: T) => Promise<R>): Promise<readonly R[]> {
  const done: R[] = [];
  for (const item of items) done.push(await work(item));
  return done;
}

function keep<T>(map: Map<string, T>, key: string, value: T): void {
  map.set(key, value);
  const [oldest] = map.keys();
  if (map.size > MOST_KEPT && oldest !== undefined) map.delete(oldest);
}
