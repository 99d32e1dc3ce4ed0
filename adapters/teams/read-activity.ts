import { createHash } from "node:crypto";
import type { Inbound } from "../../src/desk.ts";
import type { Language } from "../../src/messages/language.ts";
import { type FetchFile, readFiles } from "./fetch-file.ts";
import { type Consent, readConsent } from "./file-messages.ts";
import { listAt, textAt, valueAt } from "./payload.ts";
import type { TeamsEvent } from "./port.ts";
import { stripMention } from "./strip-mention.ts";
import { type Pressed, readSubmit } from "./submit-data.ts";

/** What Teams puts before the id of every bot. */
const BOT_ID = /^28:/;
/** What somebody says who only mentions the bot, or has just added it; the desk welcomes them. */
const GREETING = "";

/**
 * Reads an authenticated activity; nothing when there is nothing to answer in it.
 * @param fetchFile fetches what came with it, once the desk asks for that
 */
export function readActivity(activity: unknown, fetchFile: FetchFile): TeamsEvent | undefined {
  const conversation = textAt(activity, "conversation", "id");
  const person = textAt(activity, "from", "id");
  const tenant = tenantOf(activity);
  if (conversation === undefined || person === undefined || tenant === undefined) return undefined;
  const bot = textAt(activity, "recipient", "id");
  const isBot = person === bot || BOT_ID.test(person) || textAt(activity, "from", "role") === "bot";
  const said = readSaid(activity, conversation, fetchFile);
  if (isBot || said === undefined) return undefined;
  const { pressed, consent, ...rest } = said;
  const channel = channelOf(activity);
  const pressedOn = textAt(activity, "replyToId");
  const name = textAt(activity, "from", "name") ?? "";
  const user = textAt(activity, "from", "aadObjectId") ?? person;
  return {
    inbound: {
      caller: { door: "teams", organisation: tenant, user, name },
      conversation,
      ...(channel !== undefined && { channel }),
      ...rest,
    },
    language: readLanguage(textAt(activity, "locale")),
    asker: { id: user, name },
    isGroup: textAt(activity, "conversation", "conversationType") !== "personal",
    ...(pressed && { pressed }),
    ...(consent && { consent }),
    ...((pressed || consent) && pressedOn !== undefined && { pressedOn }),
  };
}

/** The tenant of an activity; nothing when it names none, or two. */
export function tenantOf(activity: unknown): string | undefined {
  const named = [textAt(activity, "conversation", "tenantId"), textAt(activity, "channelData", "tenant", "id")];
  const [tenant, ...others] = new Set(named.filter((id) => id !== undefined).map((id) => id.toLowerCase()));
  return others.length === 0 ? tenant : undefined;
}

/** The conversation that an activity is of; in a channel without the thread. */
export function channelOf(activity: unknown): string | undefined {
  return textAt(activity, "conversation", "id")?.replace(/;messageid=.*$/s, "");
}

type Said = Omit<Inbound, "caller" | "conversation"> & { readonly pressed?: Pressed; readonly consent?: Consent };

function readSaid(activity: unknown, conversation: string, fetchFile: FetchFile): Said | undefined {
  const id = textAt(activity, "id");
  switch (textAt(activity, "type")) {
    case "message":
      return id === undefined ? undefined : readMessage(activity, `${conversation} ${id}`, fetchFile);
    case "invoke":
      return id === undefined ? undefined : readInvoke(activity, `${conversation} ${id}`);
    case "conversationUpdate":
      return readWelcome(activity, conversation);
    default:
      return undefined;
  }
}

function readMessage(activity: unknown, delivery: string, fetchFile: FetchFile): Said | undefined {
  const value = valueAt(activity, "value");
  const pressed = readSubmit(value);
  if (pressed) return readPressed(activity, pressed, value, delivery);
  const isText = textAt(activity, "text") !== undefined;
  const files = readFiles(activity, fetchFile);
  if (!isText && files.length === 0) return undefined;
  return { delivery, text: stripMention(activity) || GREETING, ...(files.length > 0 && { files }) };
}

/** What the platform wants an answer to: the answer to a file that was offered, or a button. */
function readInvoke(activity: unknown, delivery: string): Said | undefined {
  const consent = readConsent(activity);
  return consent === undefined ? readExecute(activity, delivery) : { delivery, text: "", consent };
}

/** A button of the newer kind, which Oldhand does not send but another client may make of one. */
function readExecute(activity: unknown, delivery: string): Said | undefined {
  if (textAt(activity, "name") !== "adaptiveCard/action") return undefined;
  const value = valueAt(activity, "value", "action", "data");
  const pressed = readSubmit(value);
  return pressed && readPressed(activity, pressed, value, delivery);
}

/**
 * A question is answered once: a second press of the same answer on the same card, which some clients send by
 * themselves under a new id, is the same delivery. Other buttons may be pressed as often as somebody likes.
 */
function readPressed(activity: unknown, pressed: Pressed, value: unknown, delivery: string): Said {
  const card = textAt(activity, "replyToId");
  const isOnce = card !== undefined && pressed.ask !== undefined;
  const conversation = textAt(activity, "conversation", "id");
  const person = textAt(activity, "from", "id");
  const once = () =>
    createHash("sha256")
      .update(JSON.stringify([conversation, card, person, value]))
      .digest("base64url");
  const shared = { delivery: isOnce ? `press ${once()}` : delivery, pressed };
  if (pressed.kind === "form") return { ...shared, text: "", form: { topic: pressed.topic, fields: pressed.fields } };
  return { ...shared, text: pressed.say, ...(pressed.aim && { aim: pressed.aim }) };
}

/** Only when the bot itself was added, and once for a conversation. */
function readWelcome(activity: unknown, conversation: string): Said | undefined {
  const bot = textAt(activity, "recipient", "id");
  const isAdded = listAt(activity, "membersAdded").some((member) => textAt(member, "id") === bot);
  return isAdded && bot !== undefined ? { delivery: `welcome ${conversation}`, text: GREETING } : undefined;
}

function readLanguage(locale: string | undefined): Language {
  return locale?.toLowerCase().startsWith("es") ? "es" : "en";
}
