import type { Library } from "../library.ts";
import type { Card } from "../messages/card.ts";
import { type Reader, type Voice, voiceFor } from "../messages/voice.ts";
import { normaliseText } from "../units/normalise-text.ts";
import { remember } from "./past.ts";
import type { ConversationState, PastState, StepChange, Walk } from "./state.ts";
import type { Scene, Show, Turn } from "./turn.ts";

/** Sets the scene for a message: plain text, the reader's voice, and a state that today's library understands. */
export function openScene(turn: Turn): Scene {
  const state = keepKnown(turn.state, turn.library);
  const { elsewhere, ...rest } = turn;
  const walkElsewhere = elsewhere?.state.walk;
  const isKnown = walkElsewhere !== undefined && isKnownWalk(walkElsewhere, turn.library);
  return {
    ...rest,
    ...(elsewhere !== undefined && isKnown && { elsewhere }),
    text: normaliseText(turn.text),
    state,
    before: state,
    voice: voiceOf(turn, turn.reader),
  };
}

/** How this reader is spoken to, with the company's own names at hand. */
export function voiceOf({ library, names, books }: Pick<Turn, "library" | "names" | "books">, reader: Reader): Voice {
  return { ...voiceFor(library, reader), names, ...(books && { books }) };
}

/** Ends a message with a card; a changed state can be taken back later. */
export function show(scene: Scene, state: ConversationState, card: Card, changed: StepChange = {}): Show {
  return {
    kind: "show",
    card,
    state: withStep(scene.before, state, changed),
    reader: scene.reader,
    ...(scene.carriedFrom && { carriedFrom: scene.carriedFrom }),
  };
}

/** The new state with the old one in its past, unless nothing happened that could be taken back. */
export function withStep(
  before: ConversationState,
  after: ConversationState,
  changed: StepChange = {},
): ConversationState {
  const isSame =
    before.walk === after.walk &&
    before.parked === after.parked &&
    before.last === after.last &&
    before.job === after.job;
  return isSame && Object.keys(changed).length === 0 ? after : remember(before, after, changed);
}

/** A state without what a newer library no longer knows, so that an old conversation never fails. */
function keepKnown(state: ConversationState, library: Library): ConversationState {
  const shown = state.shown?.filter(({ id }) => library.cautions.some((caution) => caution.id === id));
  return {
    ...keepKnownParts(state, library),
    ...(shown !== undefined && { shown }),
    walksStarted: state.walksStarted,
    past: state.past.map(({ units, language, marked, entered, ...parts }) => ({
      ...keepKnownParts(parts, library),
      ...(units !== undefined && { units }),
      ...(language !== undefined && { language }),
      ...(marked !== undefined && { marked }),
      ...(entered !== undefined && { entered }),
    })),
  };
}

type Parts = Pick<PastState, "walk" | "parked" | "last" | "job">;

function keepKnownParts({ walk, parked, last, job }: Parts, library: Library): Parts {
  const known = parked?.filter((one) => isKnownWalk(one, library));
  return {
    ...(walk !== undefined && isKnownWalk(walk, library) && { walk }),
    ...(parked !== undefined && known !== undefined && { parked: known.length === parked.length ? parked : known }),
    ...(last !== undefined && areKnown(last.topic, Object.keys(last.facts), library) && { last }),
    ...(job !== undefined && { job }),
  };
}

function isKnownWalk(walk: Walk, library: Library): boolean {
  const unsettled = (walk.unsettled ?? []).flatMap((open) => (open.kind === "ambiguous" ? open.candidates : []));
  return areKnown(walk.topic, [...Object.keys(walk.facts), ...walk.toAsk, ...walk.asked, ...unsettled], library);
}

function areKnown(topic: string, facts: readonly string[], library: Library): boolean {
  const declared = library.topics.get(topic)?.facts;
  return declared !== undefined && facts.every((fact) => Object.hasOwn(declared, fact));
}
