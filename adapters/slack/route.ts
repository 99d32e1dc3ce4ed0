import { SlackRefusalError, SlackUnreachableError } from "./errors.ts";
import type { Place } from "./heard.ts";
import type { SlackMessage } from "./render-card.ts";
import type { SlackCalls } from "./slack-calls.ts";

/** The way back to where somebody spoke. */
export interface Route {
  /** Sends one message; in a direct message, which has no thread of its own, into that of `under`. */
  send(message: SlackMessage, isPrivate: boolean, under?: Sent): Promise<Sent>;
  /** Puts this in the place of a message that was sent before, or sends it when that cannot be. */
  replace(sent: Sent, message: SlackMessage, isPrivate: boolean): Promise<void>;
  /** True when a message that shows how far the work is may be sent now. */
  hasRoomForProgress(): boolean;
  /** True where such a message cannot be taken back, so that only the asker gets it. */
  readonly whispersProgress: boolean;
}

/** What was sent, so far as it can be replaced. */
export type Sent = { readonly by: "channel"; readonly ts: string } | { readonly by: "other" };

const OTHER: Sent = { by: "other" };
/** Messages that one response address takes: "5 times within 30 minutes", repeated by third parties. */
const MOST_RESPONSES = 5;
/** Kept of these for the answer itself. */
const KEPT_FOR_ANSWER = 3;

/** Mentions and direct messages: by the Web API, into the thread. */
export function routeByChannel(calls: SlackCalls, place: Place): Route {
  const send = async (message: SlackMessage, isPrivate: boolean, under: Sent = OTHER): Promise<Sent> => {
    if (isPrivate && !place.isDirect) return whisper(calls, place, message);
    const mayGoUnder = place.thread === undefined && under.by === "channel" && under.ts !== "";
    try {
      return { by: "channel", ts: await calls.post(mayGoUnder ? { ...place, thread: under.ts } : place, message) };
    } catch (error) {
      if (!(error instanceof SlackRefusalError) || place.isDirect) throw error;
      return writeDirectly(calls, place, message);
    }
  };
  /** Not when the message is gone meanwhile, or when all could read what is for one. */
  const takePlaceOf = async (ts: string, message: SlackMessage, isPrivate: boolean): Promise<boolean> => {
    const mayUpdate = place.isDirect || !isPrivate;
    try {
      await (mayUpdate ? calls.update(place.channel, ts, message) : calls.remove(place.channel, ts));
      return mayUpdate;
    } catch (error) {
      if (!(error instanceof SlackRefusalError)) throw error;
      return false;
    }
  };
  return {
    send,
    whispersProgress: false,
    hasRoomForProgress: () => true,
    async replace(sent, message, isPrivate) {
      const isUpdated = sent.by === "channel" && (await takePlaceOf(sent.ts, message, isPrivate));
      if (!isUpdated) await send(message, isPrivate);
    },
  };
}

/**
 * Slash commands and buttons: by the address that came along, which needs no membership in the channel.
 * @param ownsOriginal true when the pressed button stands in a question that only this person sees: what follows takes
 * its place. Nothing else that was sent through a response address can be replaced.
 */
export function routeByResponse(calls: SlackCalls, place: Place, url: string, ownsOriginal: boolean): Route {
  let used = 0;
  const { channel, thread } = place;
  const respond = async (message: SlackMessage, isPrivate: boolean, replacesOriginal: boolean): Promise<Sent> => {
    if (used >= MOST_RESPONSES) return whisper(calls, place, message);
    used += 1;
    try {
      const kind = { isPrivate, replacesOriginal, ...(thread !== undefined && { thread }) };
      await calls.respond(url, channel, message, kind);
      return OTHER;
    } catch (error) {
      if (!isLost(error)) throw error;
      used = MOST_RESPONSES;
      return whisper(calls, place, message);
    }
  };
  const takeItsPlace = async (message: SlackMessage, isPrivate: boolean): Promise<Sent> => {
    if (isPrivate) return respond(message, true, true);
    const sent = await respond(message, false, false);
    if (used < MOST_RESPONSES) {
      used += 1;
      await calls.removeOriginal(url, channel).catch(() => {});
    }
    return sent;
  };
  return {
    whispersProgress: true,
    hasRoomForProgress: () => (ownsOriginal ? used < MOST_RESPONSES - KEPT_FOR_ANSWER : used === 0),
    send: (message, isPrivate) =>
      ownsOriginal && used === 0 ? takeItsPlace(message, isPrivate) : respond(message, isPrivate, false),
    async replace(_, message, isPrivate) {
      await (ownsOriginal ? takeItsPlace(message, isPrivate) : respond(message, isPrivate, false));
    },
  };
}

/** A response address that has expired or is used up, or does not answer. */
function isLost(error: unknown): boolean {
  return error instanceof SlackRefusalError || error instanceof SlackUnreachableError;
}

/** Seen by this person only; as a direct message where the bot may not speak. */
async function whisper(calls: SlackCalls, place: Place, message: SlackMessage): Promise<Sent> {
  try {
    await calls.whisper(place, place.user, message);
  } catch (error) {
    if (!(error instanceof SlackRefusalError)) throw error;
    await writeDirectly(calls, place, message);
  }
  return OTHER;
}

async function writeDirectly(calls: SlackCalls, place: Place, message: SlackMessage): Promise<Sent> {
  await calls.post({ channel: place.user }, message);
  return OTHER;
}
