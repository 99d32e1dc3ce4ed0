import { LogLevel, WebClient } from "@slack/web-api";
import type { ChatPort, FindOutcome, Outgoing, SendOutcome } from "../../src/ports/chat.ts";
import { blocksAsText } from "./blocks-as-text.ts";
import { SlackBusyError, SlackRefusalError } from "./errors.ts";
import { createPostFiles, filesOf, markOf, marksIn, type PostFiles, type ReadForPost } from "./post-files.ts";
import { isRecord, readString } from "./read-record.ts";
import { renderCard, type SlackMessage } from "./render-card.ts";
import { BLOCKS_REFUSED, coded, QUIET, toBody } from "./slack-calls.ts";
import { slackFetch } from "./slack-fetch.ts";

/** Marks a message as one of our posts. */
const EVENT_TYPE = "oldhand_post";
/** Clocks differ: how much earlier than it was written a message may seem to be [s]. */
const CLOCK_SLACK_s = 600;
/** Messages on a page, and pages that are looked through. */
const PAGE = 200;
const MOST_PAGES = 20;
/** Slack's answers that are about now, not about this message. */
const PASSES = /^(internal_error|fatal_error|service_unavailable|request_timeout|ratelimited|rate_limited)/;
/** Slack does not let the app read there: it lacks the scope, or is no member. */
const NO_LOOK = /missing_scope|not_in_channel|channel_not_found|not_allowed_token_type|no_permission|access_denied/;

export interface SlackPostSettings {
  /** The bot token of a workspace; nothing where the app is not installed. */
  readonly tokenOf: (workspace: string) => Promise<string | undefined>;
  /** Longest wait for an answer [ms] */
  readonly call_ms: number;
  readonly apiUrl?: string;
  /** Reads the photos and papers of a post; without it they are only named. */
  readonly readKept?: ReadForPost;
  /** Told when Slack refuses a file of a post whose message is there; the message names it. */
  readonly report?: (error: unknown, out: Outgoing) => void;
}

/**
 * Posts to Slack. Each message carries the id of its post and which part of the card it is, so that one that may have
 * arrived is found again and nothing is posted twice.
 */
export function createSlackPosts({ tokenOf, call_ms, apiUrl, readKept, report }: SlackPostSettings): ChatPort {
  const fetchFn = slackFetch(call_ms);
  const files = readKept && createPostFiles(fetchFn, readKept);
  const sendFiles: SendFiles | undefined = files && reportRefusals(files, report);
  const clientFor = (token: string) =>
    new WebClient(token, {
      fetch: fetchFn,
      timeout: call_ms,
      // A client that tries again by itself would post twice.
      retryConfig: { retries: 0 },
      rejectRateLimitedCalls: true,
      allowAbsoluteUrls: false,
      // What fails is reported by the relay, which knows the post.
      logLevel: LogLevel.ERROR,
      ...(apiUrl !== undefined && { slackApiUrl: apiUrl }),
    });
  return {
    send: async (out) => {
      const token = await tokenOf(out.workspace);
      if (token === undefined) return { kind: "refused", because: "the app is not installed" };
      return await sendParts(clientFor(token), out, sendFiles);
    },
    find: async (out) => {
      const token = await tokenOf(out.workspace);
      return token === undefined
        ? { kind: "cannot_look" }
        : await findParts(clientFor(token), out, files !== undefined);
    },
  };
}

type SendFiles = PostFiles["send"];

/** A file that Slack refuses for good takes nothing from the message that is there. */
function reportRefusals(files: PostFiles, report: SlackPostSettings["report"]): SendFiles {
  return async (client, out, thread, there) => {
    try {
      await files.send(client, out, thread, there);
    } catch (error) {
      if (!(error instanceof SlackRefusalError) || PASSES.test(error.reason)) throw error;
      report?.(error, out);
    }
  };
}

async function sendParts(client: WebClient, out: Outgoing, sendFiles: SendFiles | undefined): Promise<SendOutcome> {
  const { there, updatesMessage } = out;
  let first = there?.messageId ?? updatesMessage;
  let isPartly = there !== undefined;
  try {
    for (const [part, message] of renderCard(out.card).messages.entries()) {
      if (part === 0 && updatesMessage !== undefined) await update(client, out, updatesMessage, message);
      else if (part >= (there?.parts ?? 0)) {
        const ts = await post(client, out, part, message);
        first ??= ts;
      }
      isPartly = true;
    }
    const thread = out.thread ?? first;
    if (sendFiles !== undefined && thread !== undefined && filesOf(out.card).length > 0) {
      const mayBeThere = there !== undefined || updatesMessage !== undefined;
      const marks = mayBeThere ? await marksInThread(client, out, thread) : new Set<string>();
      // Where nobody can look, what may be there already is not sent again: the card names it.
      if (marks !== undefined) await sendFiles(client, out, thread, marks);
    }
  } catch (error) {
    return outcomeOf(error, isPartly);
  }
  return { kind: "sent", messageId: first ?? "" };
}

/** What Slack refused is known not to be there; whatever else happens is not known and is thrown on. */
function outcomeOf(error: unknown, isPartly: boolean): SendOutcome {
  if (error instanceof SlackBusyError) {
    const after_ms = error.wait_s * 1000;
    return { kind: "retryLater", after_ms, because: "Slack asks to wait", ...(isPartly && { isPartly }) };
  }
  if (error instanceof SlackRefusalError && !PASSES.test(error.reason))
    return { kind: "refused", because: error.reason };
  throw error;
}

async function post(client: WebClient, out: Outgoing, part: number, message: SlackMessage): Promise<string> {
  const { channel, thread, id } = out;
  const metadata = { event_type: EVENT_TYPE, event_payload: { id, part } };
  const sent = await withBlocks(message, (body) =>
    client.chat.postMessage({
      channel: channel.id,
      ...(thread !== undefined && { thread_ts: thread }),
      ...body,
      ...QUIET,
      metadata,
    }),
  );
  return sent.ts ?? "";
}

async function update(client: WebClient, { channel }: Outgoing, ts: string, message: SlackMessage): Promise<void> {
  await withBlocks(message, (body) =>
    // Without `blocks` Slack keeps the blocks that the message had.
    client.chat.update({
      channel: channel.id,
      ts,
      ...body,
      blocks: body.blocks ?? [],
      parse: "none",
      link_names: false,
    }),
  );
}

/** Sends a message, and its words alone where Slack refuses the blocks. */
async function withBlocks<T>(
  message: SlackMessage,
  send: (body: Partial<ReturnType<typeof toBody>> & { readonly text: string }) => Promise<T>,
): Promise<T> {
  try {
    return await coded(() => send(toBody(message)));
  } catch (error) {
    if (!(error instanceof SlackRefusalError && BLOCKS_REFUSED.test(error.reason))) throw error;
    return await coded(() => send({ text: blocksAsText(message.blocks) }));
  }
}

/** The files that are in a thread; nothing where nobody can look. */
async function marksInThread(client: WebClient, out: Outgoing, thread: string): Promise<Set<string> | undefined> {
  const marks = new Set<string>();
  let cursor: string | undefined;
  try {
    for (let page = 0; page < MOST_PAGES; page += 1) {
      const query = { channel: out.channel.id, ts: thread, limit: PAGE, include_all_metadata: true };
      const answer: unknown = await coded(() =>
        client.conversations.replies({ ...query, ...(cursor !== undefined && { cursor }) }),
      );
      for (const message of messagesOf(answer)) for (const mark of marksIn(message)) marks.add(mark);
      cursor = cursorOf(answer);
      if (cursor === undefined) return marks;
    }
  } catch (error) {
    if (!(error instanceof SlackRefusalError && NO_LOOK.test(error.reason))) throw error;
  }
  return undefined;
}

function messagesOf(answer: unknown): readonly unknown[] {
  return isRecord(answer) && Array.isArray(answer["messages"]) ? answer["messages"] : [];
}

function cursorOf(answer: unknown): string | undefined {
  const next = readString(isRecord(answer) ? answer["response_metadata"] : undefined, "next_cursor");
  return next === "" ? undefined : next;
}

async function findParts(client: WebClient, out: Outgoing, hasFiles: boolean): Promise<FindOutcome> {
  const found = new Map<number, string>();
  const wanted = renderCard(out.card).messages.length;
  if (out.updatesMessage !== undefined) {
    // Its first message is put in place anew; only those that were added can be there twice.
    if (wanted === 1) return { kind: "absent" };
    found.set(0, out.updatesMessage);
  }
  let cursor: string | undefined;
  try {
    for (let page = 0; page < MOST_PAGES; page += 1) {
      const read = await coded(() => readPage(client, out, cursor));
      for (const { part, ts } of read.parts) found.set(part, ts);
      cursor = read.next;
      if (cursor === undefined || found.size === wanted)
        return await withFiles(client, tellFound(found, wanted, out), found.size, out, hasFiles);
    }
  } catch (error) {
    if (error instanceof SlackRefusalError && NO_LOOK.test(error.reason)) return { kind: "cannot_look" };
    throw error;
  }
  // More was said there than is worth looking through.
  return { kind: "cannot_look" };
}

async function readPage(client: WebClient, { channel, thread, id, written_ms }: Outgoing, cursor: string | undefined) {
  const query = {
    channel: channel.id,
    oldest: String(Math.max(0, Math.floor(written_ms / 1000) - CLOCK_SLACK_s)),
    limit: PAGE,
    include_all_metadata: true,
    ...(cursor !== undefined && { cursor }),
  };
  const answer: unknown =
    thread === undefined
      ? await client.conversations.history(query)
      : await client.conversations.replies({ ...query, ts: thread });
  return { parts: messagesOf(answer).flatMap((message) => partOf(message, id)), next: cursorOf(answer) };
}

/** Which part of this post a message is; nothing for any other message. */
function partOf(message: unknown, id: string): readonly { readonly part: number; readonly ts: string }[] {
  const metadata = isRecord(message) ? message["metadata"] : undefined;
  const payload = isRecord(metadata) ? metadata["event_payload"] : undefined;
  const ts = readString(message, "ts");
  if (readString(metadata, "event_type") !== EVENT_TYPE || readString(payload, "id") !== id || ts === undefined)
    return [];
  const part = isRecord(payload) ? Number(payload["part"]) : Number.NaN;
  return Number.isInteger(part) ? [{ part, ts }] : [];
}

/** All messages are there; it is whole when its files are there too. */
async function withFiles(
  client: WebClient,
  outcome: FindOutcome,
  parts: number,
  out: Outgoing,
  hasFiles: boolean,
): Promise<FindOutcome> {
  const files = filesOf(out.card);
  if (outcome.kind !== "found" || !hasFiles || files.length === 0) return outcome;
  const { messageId } = outcome;
  const marks = await marksInThread(client, out, out.thread ?? messageId);
  const isWhole = marks === undefined || files.every(({ file }) => marks.has(markOf(file.hash)));
  return isWhole ? outcome : { kind: "partly", messageId, parts };
}

/** Parts are sent in order, so those that are there are the first ones. */
function tellFound(found: ReadonlyMap<number, string>, wanted: number, { updatesMessage }: Outgoing): FindOutcome {
  const messageId = found.get(0);
  if (messageId === undefined) return { kind: "absent" };
  const isWhole = found.size >= wanted && updatesMessage === undefined;
  return isWhole ? { kind: "found", messageId } : { kind: "partly", messageId, parts: found.size };
}
