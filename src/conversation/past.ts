import type { Reader } from "../messages/voice.ts";
import type { ConversationState, LastAnswer, PastState, StepChange, Walk } from "./state.ts";

const MOST_STEPS_BACK = 20;
const MOST_PARKED = 3;

/** Adds the state before this step to the past of the state after it; `changed` holds preferences as they were. */
export function remember(
  before: ConversationState,
  after: ConversationState,
  changed: StepChange = {},
): ConversationState {
  const { walk, parked, last, job } = before;
  const step: PastState = {
    ...(walk !== undefined && { walk }),
    ...(parked !== undefined && { parked }),
    ...(last !== undefined && { last }),
    ...(job !== undefined && { job }),
    ...changed,
  };
  return { ...after, past: [...before.past, step].slice(-MOST_STEPS_BACK) };
}

/** The state and preferences before the last step, or nothing when there is none to take back. */
export function takeBack(
  state: ConversationState,
  reader: Reader,
): { readonly state: ConversationState; readonly reader: Reader; readonly changed: StepChange } | undefined {
  const step = state.past.at(-1);
  if (step === undefined) return undefined;
  const { units, language, marked, entered, ...rest } = step;
  const { walksStarted, shown } = state;
  return {
    state: { ...rest, ...(shown && { shown }), walksStarted, past: state.past.slice(0, -1) },
    reader: { language: language ?? reader.language, units: units ?? reader.units },
    changed: {
      ...(units !== undefined && { units }),
      ...(language !== undefined && { language }),
      ...(marked !== undefined && { marked }),
      ...(entered !== undefined && { entered }),
    },
  };
}

/** Puts a walk on the table. */
export function withWalk(state: ConversationState, walk: Walk): ConversationState {
  return { ...state, walk };
}

/** Takes the walk off the table without keeping it. */
export function withoutWalk(state: ConversationState): ConversationState {
  const { walk: _, ...rest } = state;
  return rest;
}

/** Sets the open walk aside; an older one on the same topic is let go. */
export function park(state: ConversationState): ConversationState {
  const { walk } = state;
  if (walk === undefined) return state;
  const kept = (state.parked ?? []).filter((other) => other.topic !== walk.topic);
  return { ...withoutWalk(state), parked: [...kept, walk].slice(-MOST_PARKED) };
}

/** Puts a parked walk back on the table; the one that lay there is set aside. */
export function unpark(state: ConversationState, id: string): ConversationState {
  const wanted = state.parked?.find((walk) => walk.id === id);
  if (wanted === undefined) return state;
  const { parked = [], ...rest } = park({ ...state, parked: (state.parked ?? []).filter((walk) => walk.id !== id) });
  // A walk goes on about the house that it was begun for.
  const { job } = wanted;
  return { ...rest, ...(parked.length > 0 && { parked }), ...(job !== undefined && { job }), walk: wanted };
}

/** The answer that this walk or request led to, as far back as the past reaches. */
export function findAnswer(state: ConversationState, walk: string): LastAnswer | undefined {
  const answers = [state.last, ...[...state.past].reverse().map((step) => step.last)];
  return answers.find((answer) => answer?.walk === walk);
}
