import { type Books, listNames } from "../books/books.ts";
import type { Answer, Answered, NeedsFacts, OutOfRange } from "../declaration/answer.ts";
import type { KnownFacts } from "../declaration/facts.ts";
import type { Library } from "../library.ts";
import { buildAnswerCard } from "../messages/build-answer-card.ts";
import { buildStandingBlocks } from "../messages/build-caution-blocks.ts";
import { buildHowCard } from "../messages/build-how-card.ts";
import { buildNoticeCard } from "../messages/build-notice-card.ts";
import type { Button, TextBlock } from "../messages/card.ts";
import { problem, quiet } from "../messages/notes.ts";
import { sayMissing, sayOutOfRange } from "../messages/say-problem.ts";
import { factOf, showValue, speakOf, type TopicVoice, voiceFor } from "../messages/voice.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import { findAnswer } from "./past.ts";
import { withStep } from "./scene.ts";
import { type CautionLog, cautionSetting, rememberShown } from "./shown-cautions.ts";
import type { ConversationState, LastAnswer, Walk } from "./state.ts";
import { buildTableCard, resumeButton } from "./table.ts";
import type { Purpose, Run, Show } from "./turn.ts";

/**
 * Makes the card and the state that a topic's answer leads to.
 * @param log what was done about cautions here; left out where nothing is kept, and cautions then have no button
 */
export function finish(run: Run, answered: Answered, library: Library, books?: Books, log?: CautionLog): Show {
  const named = books && { names: listNames(books), books };
  const voice = speakOf({ ...voiceFor(library, run.reader), ...named }, answered.topic);
  const { purpose } = run;
  const { result } = answered;
  if (result.kind !== "answer")
    return purpose.kind === "answer" ? reopen(run, purpose, voice, answered, result) : cannot(run, voice, result);
  const about: AnswerAbout = { run, voice, answered, ...(log && { log }) };
  return purpose.kind === "how" ? showHow(about, result, purpose) : showAnswer(about, result, purpose);
}

/** An answer with whom it is for. */
interface AnswerAbout {
  readonly run: Run;
  readonly voice: TopicVoice;
  readonly answered: Answered;
  readonly log?: CautionLog;
}

function showHow({ run, voice, log }: AnswerAbout, answer: Answer, { walk, result }: Explaining): Show {
  const card =
    answer.results.length === 0
      ? buildNoticeCard(voice.common.howTitle(voice.words.title), [voice.common.nothingComputed], [])
      : buildHowCard(voice, answer, walk, result);
  if (log === undefined) return end(run, run.state, card);
  const standing = buildStandingBlocks(voice, cautionSetting(run.state, [], log));
  return end(run, run.state, { ...card, blocks: [...standing, ...card.blocks] });
}

type Explaining = Extract<Purpose, { readonly kind: "how" }>;
type Answering = Exclude<Purpose, Explaining>;

function showAnswer({ run, voice, answered, log }: AnswerAbout, answer: Answer, purpose: Answering): Show {
  const revised = purpose.kind === "answer" && purpose.revises !== undefined ? purpose.revises : undefined;
  const before = revised === undefined ? undefined : findAnswer(run.state, revised);
  const isGuided = voice.topic.guide !== undefined;
  const changes = before === undefined || isGuided ? [] : sayChanges(voice, before.facts, answered.facts);
  const card = buildAnswerCard(voice, answered, answer, {
    walk: purpose.walk,
    notes: [...run.notes, ...changes],
    offers: waiting(run.state).map((walk): Button => resumeButton(voice, walk)),
    ...(before?.numbers !== undefined && { before: before.numbers }),
    ...(log && {
      cautions: cautionSetting(
        purpose.kind === "again" ? saidAnew(run.state) : run.state,
        answered.cautions,
        log,
        revised,
      ),
    }),
  });
  const state = log === undefined ? run.state : rememberShown(run.state, answered.cautions, purpose.walk, revised);
  if (purpose.kind === "again") return end(run, state, card);
  const last = toLast(purpose.walk, answered, answer, run.job);
  const shown = end(run, withStep(run.before, { ...state, last }), card);
  return answer.acts === undefined ? shown : { ...shown, acts: answer.acts };
}

/** Somebody who asks for an answer again wants to read all of it. */
function saidAnew({ shown = [], ...rest }: ConversationState): ConversationState {
  return { ...rest, shown: shown.filter(({ severity }) => severity === "stop") };
}

function toLast(walk: string, answered: Answered, answer: Answer, job: string | undefined): LastAnswer {
  const numbers = answer.results.flatMap((result): [string, Quantity][] =>
    "name" in result || result.upTo !== undefined ? [] : [[result.id, result.quantity]],
  );
  return {
    topic: answered.topic,
    facts: toldOnly(answered.facts),
    walk,
    numbers: Object.fromEntries(numbers),
    ...(job !== undefined && { job }),
  };
}

function toldOnly(facts: KnownFacts): KnownFacts {
  return Object.fromEntries(Object.entries(facts).filter(([, known]) => known.from !== "assumed"));
}

function sayChanges(voice: TopicVoice, before: KnownFacts, after: KnownFacts): readonly TextBlock[] {
  const changes = Object.keys(voice.topic.facts).flatMap((id) => {
    // What the books said before was not kept; only what somebody told can have changed.
    if (before[id] === undefined && after[id]?.from === "assumed") return [];
    const fact = factOf(voice, id);
    const [was, is] = [before[id]?.value ?? fact.spec.default?.value, after[id]?.value];
    if (was === is) return [];
    const [old, now] = [was, is].map((value) =>
      value === undefined ? voice.common.notSet : showValue(voice, fact, value),
    );
    return [quiet(voice.common.changed(fact.words.label, old ?? "", now ?? ""))];
  });
  return changes.length === 0 ? [quiet(voice.common.nothingChanged)] : changes;
}

/** A fact that cannot be answered with is asked again, with why. */
function reopen(
  run: Run,
  purpose: Extract<Purpose, { readonly kind: "answer" }>,
  voice: TopicVoice,
  answered: Answered,
  result: NeedsFacts | OutOfRange,
): Show {
  const walk: Walk = {
    id: purpose.walk,
    topic: answered.topic,
    facts: withoutRefused(toldOnly(answered.facts), result),
    toAsk: result.kind === "needs-facts" ? result.missing : [result.fact],
    asked: [],
    ...(purpose.revises !== undefined && { revises: purpose.revises }),
    ...(run.job !== undefined && { job: run.job }),
  };
  const card = buildTableCard(voice, walk, [...run.notes, problem(sayRefused(voice, result))]);
  if (card === undefined) return cannot(run, voice, result);
  return end(run, withStep(run.before, { ...run.state, walk }), card);
}

/** What was refused is no answer that could be kept. */
function withoutRefused(facts: KnownFacts, result: NeedsFacts | OutOfRange): KnownFacts {
  if (result.kind === "needs-facts") return facts;
  return Object.fromEntries(Object.entries(facts).filter(([fact]) => fact !== result.fact));
}

function cannot(run: Run, voice: TopicVoice, result: NeedsFacts | OutOfRange): Show {
  const card = buildNoticeCard(voice.words.title, [sayRefused(voice, result)], [], "problem");
  return end(run, run.state, card);
}

function sayRefused(voice: TopicVoice, result: NeedsFacts | OutOfRange): string {
  if (result.kind === "out-of-range") return sayOutOfRange(voice, result);
  return sayMissing(voice, result.missing);
}

function waiting(state: ConversationState): readonly Walk[] {
  const walk = state.walk ?? state.parked?.at(-1);
  return walk === undefined ? [] : [walk];
}

function end(run: Run, state: ConversationState, card: Show["card"]): Show {
  return {
    kind: "show",
    card,
    state,
    reader: run.reader,
    ...(run.carriedFrom && { carriedFrom: run.carriedFrom }),
    ...(run.takesBack && { takesBack: run.takesBack }),
  };
}
