import { createHash } from "node:crypto";
import type { Inbound } from "../../src/desk.ts";
import type { Language } from "../../src/messages/language.ts";
import { listAt, textAt, valueAt } from "./payload.ts";
import type { TeamsEvent } from "./port.ts";
import { stripMention } from "./strip-mention.ts";
import { type Pressed, readSubmit } from "./submit-data.ts";

/** What Teams puts before the id of every bot. */
const BOT_ID = /^28:/;
/** What somebody says who only mentions the bot, or has just added it; the desk welcomes them. */
const GREETING = "";

/** Reads an authenticated activity; nothing when there is nothing to answer in it. */
export function readActivity(activity: unknown): TeamsEvent | undefined {
  const conversation = textAt(activity, "conversation", "id");
  const person = textAt(activity, "from", "id");
  const tenant = tenantOf(activity);
  if (conversation === undefined || person === undefined || tenant === undefined) return undefined;
  const bot = textAt(activity, "recipient", "id");
  const isBot = person === bot || BOT_ID.test(person) || textAt(activity, "from", "role") === "bot";
  const said = readSaid(activity, conversation);
  if (isBot || said === undefined) return undefined;
  const { pressed, ...rest } = said;
  const pressedOn = textAt(activity, "replyToId");
  const name = textAt(activity, "from", "name") ?? "";
  const user = textAt(activity, "from", "aadObjectId") ?? person;
  return {
    inbound: { caller: { door: "teams", organisation: tenant, user, name }, conversation, ...rest },
    language: readLanguage(textAt(activity, "locale")),
    asker: { id: user, name },
    isGroup: textAt(activity, "conversation", "conversationType") !== "personal",
    ...(pressed && { pressed }),
    ...(pressed && pressedOn !== undefined && { pressedOn }),
  };
}

/** The tenant of an activity; nothing when it names none, or two. */
export function tenantOf(activity: unknown): string | undefined {
  const named = [textAt(activity, "conversation", "tenantId"), textAt(activity, "channelData", "tenant", "id")];
  const [tenant, ...others] = new Set(named.filter((id) => id !== undefined).map((id) => id.toLowerCase()));
  return others.length === 0 ? tenant : undefined;
}

type Said = Omit<Inbound, "caller" | "conversation"> & { readonly pressed?: Pressed };

function readSaid(activity: unknown, conversation: string): Said | undefined {
  const id = textAt(activity, "id");
  switch (textAt(activity, "type")) {
    case "message":
      return id === undefined ? undefined : readMessage(activity, `${conversation} ${id}`);
    case "invoke":
      return id === undefined ? undefined : readExecute(activity, `${conversation} ${id}`);
    case "conversationUpdate":
      return readWelcome(activity, conversation);
    default:
      return undefined;
  }
}

function readMessage(activity: unknown, delivery: string): Said | undefined {
  const value = valueAt(activity, "value");
  const pressed = readSubmit(value);
  if (pressed) return readPressed(activity, pressed, value, delivery);
  const isText = textAt(activity, "text") !== undefined;
  return isText ? { delivery, text: stripMention(activity) || GREETING } : undefined;
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
