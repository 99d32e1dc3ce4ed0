import { addDays } from "../crew/days.ts";
import type { FactValue } from "../declaration/facts.ts";
import type { Guidance } from "../declaration/topic.ts";
import { buildHazardBlock, buildStopBlock } from "./build-hazard-block.ts";
import { buildTableBlock } from "./build-table-blocks.ts";
import type { Block, Button, Card, QuestionBlock, TableBlock, TextBlock } from "./card.ts";
import { type FactVoice, factOf, sayFinding, showValue, type TopicVoice, writeValue } from "./voice.ts";

/** The question on the table, as the conversation sees it. */
export interface Question {
  readonly walk: string;
  readonly fact: string;
  /** Number of this question, from 1, and of all; left out where that depends on the answers. */
  readonly place: number;
  readonly of?: number;
  readonly canGoBack: boolean;
  /** What was said before, when the question is asked again. */
  readonly current?: FactValue;
  /** Why a guide asks it, and what is seen to first. */
  readonly guidance?: Guidance;
}

/** Asks one question: what to see to first, prompt, help, the usual answers as buttons, and the way back and out. */
export function buildQuestionCard(voice: TopicVoice, question: Question, notes: readonly TextBlock[]): Card {
  const { common } = voice;
  const { guidance, place, of } = question;
  const fact = factOf(voice, question.fact);
  const { help, question: prompt } = fact.words;
  const answers = answerButtons(voice, fact, question);
  const before = (guidance?.before ?? []).map((finding): TextBlock => plain(sayFinding(voice, finding)));
  const stop = guidance?.isStop ? [buildStopBlock(voice, prompt)] : [];
  const blocks: Block[] = [
    ...stop,
    ...notes,
    ...(guidance?.hazards ?? []).map((hazard) => buildHazardBlock(voice, hazard)),
    ...before,
    {
      kind: "question",
      prompt: guidance?.isStop ? common.stopDone : prompt,
      ...(help !== undefined && { help }),
      progress: of === undefined ? common.question(String(place)) : common.progress(String(place), String(of)),
      ...(fact.spec.type === "day" && { day: dayPick(question) }),
    },
    ...(answers.length === 0 ? [] : [{ kind: "buttons" as const, buttons: answers }]),
    ...offerButtons(voice, guidance),
    { kind: "buttons", buttons: moveButtons(voice, fact, question) },
    ...buildAbout(voice, guidance),
  ];
  return {
    title: voice.words.title,
    blocks,
    summary: [...stop, ...notes, ...before]
      .map(({ text }) => text)
      .concat(stop.length > 0 ? [] : [prompt])
      .join(" "),
  };
}

function dayPick({ walk, fact, current }: Question): NonNullable<QuestionBlock["day"]> {
  return { aim: { walk, fact }, ...(typeof current === "string" && { value: current }) };
}

/** The first table stands open below the answers; more are there for who wants to know. */
function buildAbout(voice: TopicVoice, guidance: Guidance | undefined): readonly TableBlock[] {
  return (guidance?.about ?? []).map((table, index): TableBlock => {
    const block = buildTableBlock(voice, table);
    return index === 0 ? block : { ...block, isDetail: true };
  });
}

function answerButtons(voice: TopicVoice, fact: FactVoice, question: Question): Button[] {
  const aim = { walk: question.walk, fact: fact.id };
  const values = usualValues(voice, fact, question.guidance).filter((value) => value !== question.current);
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

function offerButtons(voice: TopicVoice, guidance: Guidance | undefined): readonly Block[] {
  const buttons = (guidance?.offers ?? []).map(
    ({ say, request }): Button => ({ label: sayFinding(voice, say), say: request }),
  );
  return buttons.length === 0 ? [] : [{ kind: "buttons", buttons }];
}

/** A phone shows this many names; any other may be typed. */
const MOST_NAMES = 20;

function usualValues(
  { names, books }: TopicVoice,
  { spec }: FactVoice,
  guidance: Guidance | undefined,
): readonly FactValue[] {
  switch (spec.type) {
    case "choice":
      return guidance?.options ?? spec.options;
    case "flag":
      return [true, false];
    case "quantity":
      return spec.usual ?? [];
    case "name":
      return names?.[spec.of]?.slice(0, MOST_NAMES) ?? [];
    case "day":
      return books?.today === undefined ? [] : [books.today, addDays(books.today, 1)];
    case "text":
      return [];
  }
}

function moveButtons(voice: TopicVoice, fact: FactVoice, question: Question): Button[] {
  const { common } = voice;
  const aim = { walk: question.walk, fact: fact.id };
  const skip = skipLabel(voice, fact, question);
  const mayBeForm = question.place === 1 && (question.of ?? 1) > 1;
  return [
    ...(skip === undefined ? [] : [{ label: skip, say: common.say.skip, aim }]),
    ...(question.canGoBack ? [{ label: common.back, say: common.say.back, aim }] : []),
    { label: common.stop, say: common.say.stop, aim },
    ...(mayBeForm ? [{ label: common.asForm, say: common.say.form(voice.topic.id) }] : []),
  ];
}

function skipLabel(voice: TopicVoice, fact: FactVoice, { guidance }: Question): string | undefined {
  if (guidance?.isStop) return undefined;
  if (fact.spec.default !== undefined) return voice.common.skipTaking(showValue(voice, fact, fact.spec.default.value));
  if (fact.spec.optional !== true) return undefined;
  return guidance === undefined ? voice.common.skip : voice.common.cannotTell;
}

function plain(text: string): TextBlock {
  return { kind: "text", tone: "plain", text };
}
