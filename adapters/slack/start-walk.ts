import type { GlobalShortcut, ViewSubmitAction } from "@slack/bolt";
import type { ModalView, PlainTextOption } from "@slack/types";
import type { Language } from "../../src/messages/language.ts";
import type { Caller } from "../../src/ports/store.ts";
import { DOOR_TEXTS, ONE_MOMENT } from "./door-texts.ts";
import { conversationOf, type Heard, type Place } from "./heard.ts";
import { LIMITS } from "./limits.ts";
import { renderCard } from "./render-card.ts";
import { FIELD_ACTION } from "./render-modal.ts";
import { plainObject, richParagraphs, plain as richPlain } from "./rich-text.ts";
import { WALK_BLOCK, WALK_CALLBACK } from "./shortcuts.ts";
import type { SlackCalls } from "./slack-calls.ts";
import { withinTime } from "./wait.ts";

/** What can be started, in the language of the person who asks. */
export interface WalkOffer {
  readonly language: Language;
  /** What each is called, and what a person would type to start it. */
  readonly walks: readonly { readonly label: string; readonly say: string }[];
}
export type WalksFor = (caller: Caller) => Promise<WalkOffer>;

/** A trigger opens a modal for 3 s: what is not known after this long is put into an open one [ms]. */
const OPEN_WITHIN_ms = 1_000;

/** Opens the modal that asks which walk; where the list takes its time, an empty one at once, which is filled then. */
export async function askWhichWalk(
  shortcut: GlobalShortcut,
  walksFor: WalksFor,
  calls: Pick<SlackCalls, "openView" | "updateView">,
  openWithin_ms = OPEN_WITHIN_ms,
): Promise<void> {
  const offered = walksFor(callerOf(shortcut));
  const quick = await withinTime(offered, openWithin_ms);
  if (quick !== undefined) {
    await calls.openView(shortcut.trigger_id, renderWalks(quick));
    return;
  }
  const id = await calls.openView(shortcut.trigger_id, renderMoment());
  await calls.updateView(id, renderWalks(await offered));
}

function callerOf({ user, team }: GlobalShortcut): Caller {
  return { door: "slack", organisation: user.team_id ?? team?.id ?? "", user: user.id, name: user.username };
}

function renderWalks({ language, walks }: WalkOffer): ModalView {
  const texts = DOOR_TEXTS[language];
  const options = walks
    .filter(({ say }) => say.length <= LIMITS.optionValue)
    .slice(0, LIMITS.selectOptions)
    .map(({ label, say }): PlainTextOption => ({ text: plainObject(label, LIMITS.optionText), value: say }));
  if (options.length === 0) throw new Error("no walk is there to be started");
  const type = options.length <= LIMITS.radioOptions ? "radio_buttons" : "static_select";
  return {
    ...frame(texts.startWalk, language),
    submit: plainObject(texts.start, LIMITS.viewTitle),
    blocks: [
      {
        type: "input",
        block_id: WALK_BLOCK,
        label: plainObject(texts.whichWalk, LIMITS.inputLabel),
        element: { type, action_id: FIELD_ACTION, options },
      },
    ],
  };
}

function renderMoment(): ModalView {
  return { ...frame(DOOR_TEXTS.en.startWalk, "en"), blocks: richParagraphs(ONE_MOMENT, richPlain).slice() };
}

function frame(
  title: string,
  language: Language,
): Pick<ModalView, "type" | "callback_id" | "private_metadata" | "title"> {
  return {
    type: "modal",
    callback_id: WALK_CALLBACK,
    private_metadata: JSON.stringify({ language }),
    title: plainObject(title, LIMITS.viewTitle),
  };
}

/** The walk that was chosen: what it is called and what starts it. */
export interface ChosenWalk {
  readonly caller: Caller;
  readonly label: string;
  readonly say: string;
  readonly delivery: string;
  readonly language: Language;
}

export function readWalk({ view, user, team }: ViewSubmitAction): ChosenWalk | undefined {
  const option = view.state.values[WALK_BLOCK]?.[FIELD_ACTION]?.selected_option;
  const organisation = user.team_id ?? team?.id;
  if (!option || organisation === undefined) return undefined;
  return {
    caller: { door: "slack", organisation, user: user.id, name: user.name },
    label: option.text.text,
    say: option.value,
    delivery: `view/${view.id}/walk`,
    language: view.private_metadata.includes('"es"') ? "es" : "en",
  };
}

/** Begins in the person's direct messages, with what they chose as the first line. */
export async function openWalk({ caller, label, say, delivery }: ChosenWalk, calls: SlackCalls): Promise<Heard> {
  const [first] = renderCard({ title: label, summary: label, blocks: [] }).messages;
  const channel = await calls.writeTo(caller.user, first);
  const place: Place = { team: caller.organisation, channel, user: caller.user, isDirect: true };
  return { place, inbound: { caller, conversation: conversationOf(place), delivery, text: say } };
}
