import type { Aim, Button, FormBlock } from "../../src/messages/card.ts";
import { MOST_TITLE_CHARACTERS } from "./limits.ts";
import { recordAt, textAt } from "./payload.ts";
import { cutText, plainLine } from "./plain-text.ts";

/** For whom a card was made, so that nobody else in a group answers a question in that person's place. */
export interface Asker {
  readonly id: string;
  readonly name: string;
}

/** A card that asks: it is answered once, by one person, and then closed. */
export interface Ask {
  /** What is left standing when it has been answered and its card is not known any more; unset when the card says more. */
  readonly title?: string;
  /** Set in groups only. */
  readonly asker?: Asker;
}

/** What comes back when somebody presses a button or sends a form; `ask` is set when that answers a card that asks. */
export type Pressed = { readonly ask?: Ask } & (
  | { readonly kind: "button"; readonly say: string; readonly label: string; readonly aim?: Aim }
  | { readonly kind: "form"; readonly topic: string; readonly fields: Readonly<Record<string, string>> }
);

/** The one key under which Oldhand's own data travels in a submit. */
const OWN_KEY = "oldhand";

/** The name of every list of answers begins so. */
export const CHOICE_PREFIX = "choose_";

/** What a button sends back. Only a button with an aim answers; others, such as a way to the form, may be pressed again. */
export function buttonData(button: Button, ask: Ask | undefined): Readonly<Record<string, unknown>> {
  return {
    [OWN_KEY]: {
      say: button.say,
      ...(button.label !== button.say && { label: cutText(plainLine(button.label), MOST_TITLE_CHARACTERS) }),
      ...(button.aim && { walk: button.aim.walk, fact: button.aim.fact }),
      ...(button.aim && ask && { ask: askData(ask) }),
    },
  };
}

/** What a list of answers sends back besides its choice, which comes under the name of the list. */
export function choiceData(list: string, aim: Aim, ask: Ask): Readonly<Record<string, unknown>> {
  return { [OWN_KEY]: { choose: list, walk: aim.walk, fact: aim.fact, ask: askData(ask) } };
}

/** What a form sends back besides its fields, whose names all start with `prefix`. */
export function formData(form: FormBlock, prefix: string, ask: Ask | undefined): Readonly<Record<string, unknown>> {
  return { [OWN_KEY]: { form: form.topic, prefix, ...(ask && { ask: askData(ask) }) } };
}

function askData({ title, asker }: Ask): Readonly<Record<string, string>> {
  return {
    ...(title !== undefined && { title }),
    ...(asker && { id: asker.id, name: cutText(plainLine(asker.name), MOST_TITLE_CHARACTERS) }),
  };
}

/** Reads what came back; nothing when it is not of Oldhand's making. */
export function readSubmit(value: unknown): Pressed | undefined {
  const own = recordAt(value, OWN_KEY);
  if (own === undefined) return undefined;
  const ask = readAsk(own);
  const around = ask && { ask };
  const topic = textAt(own, "form");
  if (topic !== undefined) return { kind: "form", topic, fields: readFields(value, textAt(own, "prefix")), ...around };
  const list = textAt(own, "choose");
  const say = list === undefined ? textAt(own, "say") : textAt(value, list);
  if (say === undefined) return undefined;
  const walk = textAt(own, "walk");
  const fact = textAt(own, "fact");
  const aim = walk !== undefined && fact !== undefined ? { aim: { walk, fact } } : {};
  return { kind: "button", say, label: textAt(own, "label") ?? say, ...aim, ...around };
}

function readAsk(own: object): Ask | undefined {
  const ask = recordAt(own, "ask");
  if (ask === undefined) return undefined;
  const [title, id] = [textAt(ask, "title"), textAt(ask, "id")];
  return {
    ...(title !== undefined && { title }),
    ...(id !== undefined && { asker: { id, name: textAt(ask, "name") ?? "" } }),
  };
}

function readFields(value: unknown, prefix: string | undefined): Readonly<Record<string, string>> {
  if (prefix === undefined || typeof value !== "object" || value === null) return {};
  const fields: Record<string, string> = {};
  for (const [id, typed] of Object.entries(value))
    if (id.startsWith(prefix) && ["string", "number", "boolean"].includes(typeof typed))
      fields[id.slice(prefix.length)] = String(typed);
  return fields;
}
