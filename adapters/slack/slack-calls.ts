import type { HomeView, ModalView } from "@slack/types";
import { WebAPIPlatformError, WebAPIRateLimitedError, type WebClient } from "@slack/web-api";
import { blocksAsText } from "./blocks-as-text.ts";
import type { ChannelQueue } from "./channel-queue.ts";
import { SlackBusyError, SlackRefusalError, SlackUnreachableError } from "./errors.ts";
import { type FileRef, FileTooLargeError, fetchFile } from "./fetch-file.ts";
import { readFile } from "./read-files.ts";
import { isRecord } from "./read-record.ts";
import type { SlackMessage } from "./render-card.ts";
import type { SlackFetch } from "./slack-fetch.ts";
import { askForPlace, putFile, type SlackUpload, shareFile } from "./upload-file.ts";

/** Where a message goes: a channel, and in it a thread. */
interface Target {
  readonly channel: string;
  readonly thread?: string;
}
interface ResponseKind {
  readonly isPrivate: boolean;
  readonly replacesOriginal: boolean;
  readonly thread?: string;
}

/** What the door asks of Slack, on behalf of one workspace. Every failure is one of the errors of `errors.ts`. */
export interface SlackCalls {
  /** @returns the id of the message, by which it can be updated */
  post(target: Target, message: SlackMessage): Promise<string>;
  whisper(target: Target, user: string, message: SlackMessage): Promise<void>;
  update(channel: string, ts: string, message: SlackMessage): Promise<void>;
  remove(channel: string, ts: string): Promise<void>;
  respond(url: string, channel: string, message: SlackMessage, kind: ResponseKind): Promise<void>;
  removeOriginal(url: string, channel: string): Promise<void>;
  /** @returns the id of the modal, by which it can be changed */
  openView(trigger: string, view: ModalView): Promise<string>;
  updateView(id: string, view: ModalView): Promise<void>;
  /** @param hash the mark of the view that stands there; Slack refuses when it is another by now */
  publishHome(user: string, view: HomeView, hash: string | undefined): Promise<void>;
  /** Writes to a person directly. @returns the channel of their direct messages */
  writeTo(user: string, message: SlackMessage): Promise<string>;
  /** A file that somebody sent, however Slack tells of it. */
  readFile(file: FileRef): Promise<Uint8Array>;
  /** Shares a picture or paper, as a message of its own. */
  upload(target: Target, file: SlackUpload): Promise<void>;
}

/** Links in an answer are never opened up into previews. */
export const QUIET = { unfurl_links: false, unfurl_media: false, parse: "none", link_names: false } as const;

/** Answers of Slack that mean: these blocks, not this message. */
export const BLOCKS_REFUSED = /invalid_blocks|invalid_attachments|msg_blocks_too_long|only_one_table_allowed/;

/** @param apiUrl where the Web API is, when that is not Slack's own */
export function createSlackCalls(
  client: WebClient,
  queue: ChannelQueue,
  fetchFn: SlackFetch,
  apiUrl?: string,
): SlackCalls {
  const call = <T>(channel: string, work: () => Promise<T>) => queue.run(channel, () => coded(work));
  const say = <T>(channel: string, message: SlackMessage, send: (body: Body) => Promise<T>): Promise<T> =>
    call(channel, () => send(toBody(message))).catch((error: unknown) => {
      if (!(error instanceof SlackRefusalError && BLOCKS_REFUSED.test(error.reason))) throw error;
      return call(channel, () => send({ text: blocksAsText(message.blocks) }));
    });
  const toUrl = (url: string, body: object) => coded(() => postJson(fetchFn, url, body));

  return {
    post: ({ channel, thread }, message) =>
      say(channel, message, async (body) => {
        const sent = await client.chat.postMessage({ channel, ...inThread(thread), ...body, ...QUIET });
        return sent.ts ?? "";
      }),
    whisper: ({ channel, thread }, user, message) =>
      say(channel, message, async (body) => {
        await client.chat.postEphemeral({
          channel,
          user,
          ...inThread(thread),
          ...body,
          parse: "none",
          link_names: false,
        });
      }),
    // Without `blocks` Slack keeps the blocks that the message had.
    update: (channel, ts, message) =>
      say(channel, message, async (body) => {
        await client.chat.update({ channel, ts, ...body, blocks: body.blocks ?? [], parse: "none", link_names: false });
      }),
    remove: (channel, ts) =>
      call(channel, async () => {
        await client.chat.delete({ channel, ts });
      }),
    respond: (url, channel, message, kind) =>
      say(channel, message, (body) => toUrl(url, { ...toResponse(kind), ...body, ...QUIET })),
    removeOriginal: (url, channel) => call(channel, () => toUrl(url, { delete_original: true })),
    ...viewCalls(client, call),
    writeTo: (user, message) =>
      say(user, message, async (body) => {
        const sent = await client.chat.postMessage({ channel: user, ...body, ...QUIET });
        return sent.channel ?? user;
      }),
    readFile: (file) =>
      coded(async () => {
        const told = file.url === undefined ? { ...file, ...(await lookUpFile(client, file.id)) } : file;
        return await fetchFile(fetchFn, told, client.token ?? "", apiUrl);
      }),
    // The bytes go another way than the calls of the channel and keep none of them waiting.
    async upload(target, file) {
      const place = await call(target.channel, () => askForPlace(client, file));
      await coded(() => putFile(fetchFn, place.url, file));
      await call(target.channel, () => shareFile(client, place.file, file.title, target));
    },
  };
}

type Call = <T>(channel: string, work: () => Promise<T>) => Promise<T>;

function viewCalls(client: WebClient, call: Call): Pick<SlackCalls, "openView" | "updateView" | "publishHome"> {
  return {
    openView: (trigger, view) =>
      coded(async () => {
        const opened = await client.views.open({ trigger_id: trigger, view });
        return opened.view?.id ?? "";
      }),
    updateView: (id, view) =>
      coded(async () => {
        await client.views.update({ view_id: id, view });
      }),
    publishHome: (user, view, hash) =>
      call(`home/${user}`, async () => {
        await client.views.publish({ user_id: user, view, ...(hash !== undefined && { hash }) });
      }),
  };
}

async function lookUpFile(client: WebClient, id: string): Promise<FileRef | undefined> {
  const answer = await client.files.info({ file: id });
  // Slack says again that it wants to be asked.
  return readFile({ ...answer.file, file_access: "visible" });
}

interface Body {
  readonly text: string;
  readonly blocks?: SlackMessage["blocks"][number][];
}

export function toBody({ text, blocks }: SlackMessage): Body {
  return { text, blocks: [...blocks] };
}

function inThread(thread: string | undefined): { readonly thread_ts?: string } {
  return thread === undefined ? {} : { thread_ts: thread };
}

function toResponse({ isPrivate, replacesOriginal, thread }: ResponseKind): object {
  const response_type = isPrivate ? "ephemeral" : "in_channel";
  return { response_type, replace_original: replacesOriginal, ...inThread(thread) };
}

async function postJson(fetchFn: SlackFetch, url: string, body: object): Promise<void> {
  const response = await fetchFn(url, {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(body),
    redirect: "error",
  });
  if (response.ok) return;
  if (response.status === 429) throw new SlackBusyError(Number(response.headers.get("retry-after")));
  throw new SlackRefusalError(`response_url ${response.status} ${(await response.text()).slice(0, 200)}`);
}

/** Tells the library's errors apart. */
export async function coded<T>(work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const isCoded = error instanceof SlackBusyError || error instanceof SlackRefusalError;
    if (isCoded || error instanceof FileTooLargeError) throw error;
    if (error instanceof WebAPIRateLimitedError) throw new SlackBusyError(error.retryAfter, { cause: error });
    if (error instanceof WebAPIPlatformError) throw new SlackRefusalError(reasonOf(error), { cause: error });
    throw new SlackUnreachableError("Slack did not answer", { cause: error });
  }
}

/** The word of refusal, with the details that Slack gives for blocks. */
function reasonOf(error: WebAPIPlatformError): string {
  const { error: reason, response_metadata: metadata } = error.data;
  const details = isRecord(metadata) && Array.isArray(metadata.messages) ? metadata.messages : [];
  return [reason, ...details].join(" ");
}
