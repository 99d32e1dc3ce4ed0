import type { Guidance } from "../declaration/topic.ts";
import { buildUnsettledCard } from "../messages/build-problem-card.ts";
import { buildQuestionCard } from "../messages/build-question-card.ts";
import type { Button, Card, TextBlock } from "../messages/card.ts";
import { quiet } from "../messages/notes.ts";
import { speakOf, type Voice } from "../messages/voice.ts";
import { withoutWalk, withWalk } from "./past.ts";
import { show } from "./scene.ts";
import type { ConversationState, Walk } from "./state.ts";
import type { Decision, Scene } from "./turn.ts";

/** Goes on with a walk: what must be settled, else the next question, else the answer. */
export function proceed(scene: Scene, state: ConversationState, given: Walk, notes: readonly TextBlock[]): Decision {
  const walk = followGuide(scene.voice, given);
  const card = buildTableCard(scene.voice, walk, notes);
  if (card !== undefined) return show(scene, withWalk(state, walk), card);
  return {
    kind: "run",
    topic: walk.topic,
    facts: walk.facts,
    purpose: { kind: "answer", walk: walk.id, ...(walk.revises !== undefined && { revises: walk.revises }) },
    ...(walk.job !== undefined && { job: walk.job }),
    notes,
    before: scene.before,
    state: withoutWalk(state),
    reader: scene.reader,
    ...(scene.carriedFrom && { carriedFrom: scene.carriedFrom }),
  };
}

/** Shows the open question again, with what has to be said first. */
export function askAgain(scene: Scene, walk: Walk, notes: readonly TextBlock[]): Decision {
  return proceed(scene, scene.state, walk, notes);
}

/** The card of what is on the table; nothing when everything is known. */
export function buildTableCard(voice: Voice, walk: Walk, notes: readonly TextBlock[]): Card | undefined {
  const topicVoice = speakOf(voice, walk.topic);
  const [open] = walk.unsettled ?? [];
  if (open !== undefined) return buildUnsettledCard(topicVoice, walk.id, open, notes);
  const [fact] = walk.toAsk;
  if (fact === undefined) return undefined;
  const current = walk.facts[fact]?.value;
  const guidance = guide(voice, walk);
  const question = {
    walk: walk.id,
    fact,
    place: walk.asked.length + 1,
    ...(topicVoice.topic.guide === undefined && { of: walk.asked.length + walk.toAsk.length }),
    canGoBack: walk.asked.length > 0,
    ...(current !== undefined && { current }),
    ...(guidance?.fact === fact && { guidance }),
  };
  return buildQuestionCard(topicVoice, question, notes);
}

/** In a guided topic one question is open at a time: the one that was gone back to, else the one that the guide picks. */
function followGuide(voice: Voice, walk: Walk): Walk {
  if (speakOf(voice, walk.topic).topic.guide === undefined) return walk;
  const [open] = walk.toAsk;
  if (open !== undefined) return { ...walk, toAsk: [open] };
  const next = guide(voice, walk);
  return { ...walk, toAsk: next === undefined ? [] : [next.fact] };
}

/** What the guide of a topic asks next. */
export function guide(voice: Voice, { topic, facts, job }: Walk): Guidance | undefined {
  if (voice.books === undefined) return undefined;
  const { openJob, ...others } = voice.books;
  // A walk of another job that is gone on with knows nothing of the one that was talked about.
  const books = openJob !== undefined && openJob.number === job ? voice.books : others;
  return speakOf(voice, topic).topic.guide?.next(facts, books);
}

/** The button that goes on with a walk: the open one, else the one set aside last, else one open elsewhere. */
export function resumeButtons(scene: Scene, state: ConversationState): readonly Button[] {
  const walk = state.walk ?? state.parked?.at(-1) ?? scene.elsewhere?.state.walk;
  return walk === undefined ? [] : [resumeButton(scene.voice, walk)];
}

export function resumeButton(voice: Voice, walk: Walk): Button {
  return { label: voice.common.goOnWith(titleOf(voice, walk)), say: voice.common.say.resume(walk.topic) };
}

/** What is said when a walk is set aside. */
export function parkedNote(voice: Voice, walk: Walk): TextBlock {
  return quiet(voice.common.parked(titleOf(voice, walk)));
}

export function titleOf(voice: Voice, { topic }: { readonly topic: string }): string {
  return speakOf(voice, topic).words.title;
}
