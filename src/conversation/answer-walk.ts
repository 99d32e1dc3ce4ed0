import type { KnownFact } from "../declaration/facts.ts";
import type { TextBlock } from "../messages/card.ts";
import { LANGUAGES } from "../messages/language.ts";
import { problem, quiet } from "../messages/notes.ts";
import { sayDayRead } from "../messages/say-day.ts";
import { sayCannotSkip } from "../messages/say-problem.ts";
import {
  COMMON,
  type FactVoice,
  factOf,
  sayDefaultSource,
  showValue,
  speakOf,
  type TopicVoice,
  wasReadAs,
} from "../messages/voice.ts";
import { findFact } from "./find-named.ts";
import { foldWords } from "./fold-words.ts";
import { type Heard, hearAbout, listen, opensTopic, saysNothing } from "./hear.ts";
import { withoutWalk } from "./past.ts";
import { readAnswer } from "./read-answer.ts";
import { startRequest } from "./start-request.ts";
import type { Unsettled, Walk } from "./state.ts";
import { askAgain, guide, proceed } from "./table.ts";
import type { Decision, Scene } from "./turn.ts";
import {
  askNext,
  dropTwin,
  dropTwins,
  dropUnsettled,
  followFacts,
  leaveOut,
  moveToAsked,
  passOver,
  takeAnswer,
  takeHeard,
} from "./walk-steps.ts";

/** Takes a typed message while a walk is open: an answer, other facts of the topic, or a new question. */
export function answerWalk(scene: Scene, walk: Walk): Decision {
  const { text } = scene;
  const [open] = walk.unsettled ?? [];
  const [fact] = open === undefined ? walk.toAsk : [];
  const chosen = open === undefined ? undefined : chooseCandidate(scene, walk, open);
  if (chosen !== undefined) return chosen;
  const own = fact === undefined ? undefined : readAnswer(scene, walk.topic, fact, text);
  // A name may be any word, so for names a new question comes before the answer.
  const takesAnyWord = fact !== undefined && takesAny(scene, walk.topic, fact);
  if (fact !== undefined && own?.ok && !takesAnyWord) return takeGiven(scene, walk, fact, own.known);
  const reading = fact === undefined || (own?.ok && !takesAnyWord) ? undefined : takeReading(scene, walk, fact);
  if (reading !== undefined) return reading;
  const heard = hearAbout(scene, walk.topic, text);
  if ("topic" in heard) return startRequest(scene, heard);
  const topic = scene.library.topics.get(walk.topic);
  const isOwn = topic?.asksAnew === true;
  const asksAnew = isOwn || topic?.opensAnew === true || walk.revises !== undefined || walk.unsettled !== undefined;
  if (asksAnew && opensTopic(scene, walk.topic, text)) return startOver(scene, walk.topic);
  // What was wanted is known already there; a name or some words can only be the answer.
  if (isOwn && fact !== undefined && own?.ok) return takeGiven(scene, walk, fact, own.known);
  // Whoever types the name of the walk alone wants it shown, and gives no reason and no words of their own.
  if (fact !== undefined && own?.ok && !isBareName(scene, walk, heard) && Object.keys(heard.facts).length === 0)
    return takeGiven(scene, walk, fact, own.known);
  if (!saysNothing(heard)) return takeAll(scene, walk, heard);
  if (heard.unsettled.length === 0 && opensTopic(scene, walk.topic, text))
    return askAgain(scene, walk, [quiet(scene.voice.common.stillOpen)]);
  const why = own?.ok === false ? [problem(own.why)] : heard.unsettled.flatMap((lost) => sayLost(scene, walk, lost));
  return askAgain(scene, walk, why);
}

function isBareName(scene: Scene, { topic }: Walk, { facts, refused, unsettled }: Heard): boolean {
  const saysNoMore = Object.keys(facts).length + refused.length + unsettled.length === 0;
  return saysNoMore && opensTopic(scene, topic, scene.text);
}

/** True where any words would do as an answer, so that a new question is looked for first. */
function takesAny({ library, text }: Scene, topicId: string, fact: string): boolean {
  const topic = library.topics.get(topicId);
  const type = topic?.facts[fact]?.type;
  return type === "name" || (type === "text" && topic?.guide?.hears(text) !== true);
}

/** Takes a measured value typed for a question whose answers are words. */
function takeReading(scene: Scene, walk: Walk, fact: string): Decision | undefined {
  const spec = scene.library.topics.get(walk.topic)?.facts[fact];
  if ((spec?.type !== "choice" && spec?.type !== "text") || spec.orReading === undefined) return undefined;
  const read = readAnswer(scene, walk.topic, spec.orReading, scene.text);
  return read.ok ? takeGiven(scene, moveToAsked(walk, fact), spec.orReading, read.known) : undefined;
}

/** The same question put anew: what was unclear or about to be changed no longer matters. */
function startOver(scene: Scene, topic: string): Decision {
  const { text } = scene;
  const clear: Scene = { ...scene, state: withoutWalk(scene.state) };
  return startRequest(clear, { topic, text, parsed: listen(scene, text) });
}

/** Takes one answer to one question of the walk, the open one or an earlier one. */
export function takeGiven(
  scene: Scene,
  walk: Walk,
  fact: string,
  known: KnownFact,
  notes: readonly TextBlock[] = [],
): Decision {
  const voice = speakOf(scene.voice, walk.topic);
  const next = followFacts(voice.topic, walk, dropTwin(voice.topic, takeAnswer(walk, fact, known), fact));
  const isChange = !walk.toAsk.includes(fact) && walk.facts[fact] !== undefined;
  const said = isChange ? sayChange(voice, walk, fact, known) : sayNoted(voice, fact, known);
  return proceed(scene, withoutWalk(scene.state), next, isOver(next) ? notes : [...notes, quiet(said)]);
}

/** Takes every fact that a message gave, wherever in the walk they stand. */
export function takeAll(scene: Scene, walk: Walk, heard: Heard): Decision {
  const voice = speakOf(scene.voice, walk.topic);
  const said = Object.keys(heard.facts);
  const taken = takeHeard(settleBy(walk, said), heard);
  const next = followFacts(voice.topic, walk, dropTwins(voice.topic, taken, said));
  const notes = Object.entries(heard.facts)
    .filter(([fact, known]) => walk.facts[fact]?.value !== known.value)
    .map(([fact, known]) =>
      quiet(walk.facts[fact] === undefined ? sayNoted(voice, fact, known) : sayChange(voice, walk, fact, known)),
    );
  const refused = heard.refused.map(({ why }) => problem(why));
  return proceed(scene, withoutWalk(scene.state), next, isOver(next) ? refused : [...notes, ...refused]);
}

/** Returns to the question before. */
export function goBack(scene: Scene, walk: Walk): Decision {
  const previous = walk.asked.at(-1);
  if (previous === undefined || walk.unsettled !== undefined)
    return askAgain(scene, walk, [problem(scene.voice.common.firstQuestion)]);
  return proceed(scene, withoutWalk(scene.state), askNext(walk, previous), [quiet(scene.voice.common.wentBack)]);
}

/** Goes on without an answer: the default is taken and said, or the fact is left open, or it says why it cannot. */
export function skip(scene: Scene, walk: Walk, factId: string | undefined = walk.toAsk[0]): Decision {
  const { common } = scene.voice;
  const state = withoutWalk(scene.state);
  const [open] = walk.unsettled ?? [];
  if (open !== undefined) {
    const left = open.kind === "ambiguous" ? open.typed : open.word;
    return proceed(scene, state, dropUnsettled(walk), [quiet(common.leftOut(left))]);
  }
  if (factId === undefined) return askAgain(scene, walk, []);
  const voice = speakOf(scene.voice, walk.topic);
  const fact = factOf(voice, factId);
  const known = walk.facts[factId];
  const leave = () => followFacts(voice.topic, walk, leaveOut(walk, factId));
  if (guide(scene.voice, walk)?.isStop) return askAgain(scene, walk, [problem(common.stopFirst)]);
  if (voice.topic.guide !== undefined) return proceed(scene, state, passOver(walk, factId), []);
  if (fact.spec.default !== undefined) {
    const { value, source } = fact.spec.default;
    const said = common.skippedTaking(fact.words.label, showValue(voice, fact, value), sayDefaultSource(voice, source));
    return proceed(scene, state, leave(), [quiet(said)]);
  }
  if (fact.spec.optional === true) return proceed(scene, state, leave(), [quiet(common.skippedOpen(fact.words.label))]);
  if (known === undefined) return askAgain(scene, walk, [problem(sayCannotSkip(voice, factId))]);
  const kept = quiet(common.skippedKeeping(fact.words.label, showValue(voice, fact, known.value)));
  return proceed(scene, state, moveToAsked(walk, factId), [kept]);
}

/** When the message names one of the facts that a value could be, or says yes to the only one, that fact gets it. */
function chooseCandidate(scene: Scene, walk: Walk, open: Unsettled): Decision | undefined {
  if (open.kind !== "ambiguous") return undefined;
  const [only, ...others] = open.candidates;
  const isYes = LANGUAGES.some((one) => foldWords(COMMON[one].yes) === foldWords(scene.text));
  const named = isYes && others.length === 0 ? only : findFact(speakOf(scene.voice, walk.topic), scene.text);
  if (named === undefined || !open.candidates.includes(named)) return undefined;
  return takeCandidate(scene, walk, named, open.typed);
}

/** Gives a value that could have been several facts to the one that was meant. */
export function takeCandidate(scene: Scene, walk: Walk, fact: string, typed: string): Decision {
  const read = readAnswer(scene, walk.topic, fact, typed);
  const settled = dropUnsettled(walk);
  if (read.ok) return takeGiven(scene, settled, fact, read.known);
  return proceed(scene, withoutWalk(scene.state), askNext(settled, fact), [problem(read.why)]);
}

/** What is on the table is settled when a fact was said that it could be, or when the unknown word was put otherwise. */
function settleBy(walk: Walk, facts: readonly string[]): Walk {
  const [open] = walk.unsettled ?? [];
  if (open === undefined || facts.length === 0) return walk;
  const isLost = open.kind === "unknown-word" || open.candidates.length === 0;
  const isSettled = isLost || open.candidates.some((fact) => facts.includes(fact));
  return isSettled ? settleBy(dropUnsettled(walk), facts) : walk;
}

function isOver(walk: Walk): boolean {
  return walk.unsettled === undefined && walk.toAsk.length === 0;
}

function sayNoted(voice: TopicVoice, factId: string, known: KnownFact): string {
  const fact = factOf(voice, factId);
  const shown = sayDayRead(voice, fact, known) ?? readAs(voice, fact, known);
  return voice.common.noted(fact.words.label, shown);
}

function readAs(voice: TopicVoice, fact: FactVoice, known: KnownFact): string {
  const value = showValue(voice, fact, known.value);
  return wasReadAs(voice, fact, known) ? voice.common.readAs(known.typed ?? "", value) : value;
}

function sayChange(voice: TopicVoice, walk: Walk, factId: string, known: KnownFact): string {
  const fact = factOf(voice, factId);
  const before = walk.facts[factId];
  const was = before === undefined ? voice.common.notSet : showValue(voice, fact, before.value);
  return voice.common.changed(fact.words.label, was, showValue(voice, fact, known.value));
}

function sayLost(scene: Scene, walk: Walk, lost: Unsettled): TextBlock[] {
  if (lost.kind !== "unknown-word") return [];
  return [problem(scene.voice.common.unknownWord(lost.word, speakOf(scene.voice, walk.topic).words.title))];
}
