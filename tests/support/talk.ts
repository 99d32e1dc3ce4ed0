import { listNames } from "../../src/books/books.ts";
import { converse } from "../../src/conversation/converse.ts";
import { finish } from "../../src/conversation/finish.ts";
import { type ConversationState, EMPTY_STATE } from "../../src/conversation/state.ts";
import type { SentForm, Show } from "../../src/conversation/turn.ts";
import type { Library } from "../../src/library.ts";
import type { Aim, Button, Card } from "../../src/messages/card.ts";
import type { Reader } from "../../src/messages/voice.ts";
import type { KeptMark, OpenWalk } from "../../src/ports/store.ts";
import { fixtureBooks } from "./fixture-books.ts";
import { fixtureLibrary } from "./fixture-library.ts";
import { runOnce } from "./run-once.ts";

/** One person talking in one conversation, without a desk or a store. */
export interface Talk {
  state: ConversationState;
  reader: Reader;
  elsewhere?: OpenWalk;
  /** What was done about cautions, newest first. */
  marks: readonly KeptMark[];
  /** What the last message carried over. */
  carriedFrom?: OpenWalk | undefined;
  say(text: string, aim?: Aim): Card;
  press(button: Button): Card;
  send(form: SentForm): Card;
}

/** November 25, 2026, noon in the time zone of the fixture's company. */
const MIDDAY_ms = Date.UTC(2026, 10, 25, 18);
const US_ENGLISH: Reader = { language: "en", units: "us" };

export function startTalk(reader: Reader = US_ENGLISH, library: Library = fixtureLibrary): Talk {
  let messages = 0;
  const talk: Talk = {
    state: EMPTY_STATE,
    reader,
    marks: [],
    say: (text, aim) => take(text, aim, undefined),
    press: ({ say, aim }) => take(say, aim, undefined),
    send: (form) => take("", undefined, form),
  };
  function take(text: string, aim: Aim | undefined, form: SentForm | undefined): Card {
    messages += 1;
    const decision = converse({
      text,
      state: talk.state,
      reader: talk.reader,
      newId: `id${messages}`,
      company: fixtureBooks.company,
      names: listNames(fixtureBooks),
      books: fixtureBooks,
      library,
      cautions: cautions(),
      ...(talk.elsewhere && { elsewhere: talk.elsewhere }),
      ...(aim && { aim }),
      ...(form && { form }),
    });
    const shown = decision.kind === "show" ? decision : run(decision);
    // A conversation is stored as JSON between messages.
    talk.state = JSON.parse(JSON.stringify(shown.state));
    talk.reader = shown.reader;
    const { speaker: by, now_ms: at_ms } = cautions();
    talk.marks = [...(shown.marks ?? []).map((mark) => ({ ...mark, by, at_ms, door: "web" as const })), ...talk.marks];
    talk.carriedFrom = shown.carriedFrom;
    return shown.card;
  }
  function run(decision: Exclude<ReturnType<typeof converse>, { kind: "show" }>): Show {
    const topic = library.topics.get(decision.topic);
    if (topic === undefined) throw new Error(`no topic ${decision.topic}`);
    return finish(decision, runOnce(topic, decision.facts, library), library, fixtureBooks, cautions());
  }
  function cautions() {
    const { timeZone } = fixtureBooks.company;
    return { marks: talk.marks, timeZone, speaker: "Ebbe Tarnowell", now_ms: MIDDAY_ms + messages * 60_000 };
  }
  return talk;
}

/** The prompt of the question that a card asks. */
export function promptOf(card: Card): string | undefined {
  return card.blocks.find((block) => block.kind === "question")?.prompt;
}

/** Every plain, quiet or problem text of a card. */
export function textsOf(card: Card): readonly string[] {
  return card.blocks.flatMap((block) => (block.kind === "text" ? [block.text] : []));
}

export function headlineOf(card: Card): string | undefined {
  return card.blocks.find((block) => block.kind === "headline")?.text;
}

export function buttonsOf(card: Card): readonly Button[] {
  return card.blocks.flatMap((block) => (block.kind === "buttons" ? block.buttons : []));
}

/** The button with this label; a missing one is an error. */
export function buttonOf(card: Card, label: string): Button {
  const found = buttonsOf(card).find((button) => button.label === label);
  if (found === undefined) throw new Error(`no button ${label}, only ${buttonsOf(card).map((one) => one.label)}`);
  return found;
}
