import type { FactValue } from "../declaration/facts.ts";
import type { Block, Button, Card, TextBlock } from "./card.ts";
import { type FactVoice, factOf, showValue, type TopicVoice, writeValue } from "./voice.ts";

/** The question on the table, as the conversation sees it. */
export interface Question {
  readonly walk: string;
  readonly fact: string;
  /** Number of this question and of all, from 1. */
  readonly place: number;
  readonly of: number;
  readonly canGoBack: boolean;
  /** What was said before, when the question is asked again. */
  readonly current?: FactValue;
}

/** Asks one question: prompt, help, the usual answers as buttons, and the way back and out. */
export function buildQuestionCard(voice: TopicVoice, question: Question, notes: readonly TextBlock[]): Card {
  const { common } = voice;
  const fact = factOf(voice, question.fact);
  const { help, question: prompt } = fact.words;
  const answers = answerButtons(voice, fact, question);
  const blocks: Block[] = [
    ...notes,
    {
      kind: "question",
      prompt,
      ...(help !== undefined && { help }),
      progress: common.progress(String(question.place), String(question.of)),
    },
    ...(answers.length === 0 ? [] : [{ kind: "buttons" as const, buttons: answers }]),
    { kind: "buttons", buttons: moveButtons(voice, fact, question) },
  ];
  return {
    title: voice.words.title,
    blocks,
    summary: [...notes.map((note) => note.text), prompt].join(" "),
  };
}

function answerButtons(voice: TopicVoice, fact: FactVoice, question: Question): Button[] {
  const aim = { walk: question.walk, fact: fact.id };
  const values = usualValues(voice, fact).filter((value) => value !== question.current);
  const button = (value: FactValue): Button => ({
    label: showValue(voice, fact, value),
    say: writeValue(voice, fact, value),
    aim,
  });
  const keep = question.current === undefined ? [] : [button(question.current)];
  return [
    ...keep.map((kept): Button => ({ ...kept, label: voice.common.keep(kept.label), style: "primary" })),
    ...values.map(button),
  ];
}

/** A phone shows this many names; any other may be typed. */
const MOST_NAMES = 20;

function usualValues({ names }: TopicVoice, { spec }: FactVoice): readonly FactValue[] {
  switch (spec.type) {
    case "choice":
      return spec.options;
    case "flag":
      return [true, false];
    case "quantity":
      return spec.usual ?? [];
    case "name":
      return names?.[spec.of].slice(0, MOST_NAMES) ?? [];
    case "day":
      return [];
  }
}

function moveButtons(voice: TopicVoice, fact: FactVoice, question: Question): Button[] {
  const { common } = voice;
  const aim = { walk: question.walk, fact: fact.id };
  const skip = skipLabel(voice, fact);
  return [
    ...(skip === undefined ? [] : [{ label: skip, say: common.say.skip, aim }]),
    ...(question.canGoBack ? [{ label: common.back, say: common.say.back, aim }] : []),
    { label: common.stop, say: common.say.stop, aim },
    ...(question.place === 1 && question.of > 1
      ? [{ label: common.asForm, say: common.say.form(voice.topic.id) }]
      : []),
  ];
}

function skipLabel(voice: TopicVoice, fact: FactVoice): string | undefined {
  if (fact.spec.default !== undefined) return voice.common.skipTaking(showValue(voice, fact, fact.spec.default.value));
  return fact.spec.optional === true ? voice.common.skip : undefined;
}
