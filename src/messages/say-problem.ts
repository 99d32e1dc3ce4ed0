import type { RequestProblem } from "../conversation/grammar/parse-request.ts";
import type { OutOfRange } from "../declaration/answer.ts";
import type { FactValue, QuantityFact } from "../declaration/facts.ts";
import {
  type FactVoice,
  factOf,
  sayDefaultSource,
  sayFinding,
  showDatum,
  showQuantity,
  showValue,
  type TopicVoice,
} from "./voice.ts";

/** What was wrong with a request and what to type instead. */
export function sayProblem(voice: TopicVoice, problem: RequestProblem): string {
  switch (problem.kind) {
    case "unknown-word":
      return voice.common.unknownWord(problem.word, voice.words.title);
    case "ambiguous":
      return problem.candidates.length === 0
        ? voice.common.fitsNothing(problem.typed, voice.words.title)
        : voice.common.ambiguous(problem.typed, listOr(voice, labels(voice, problem.candidates)));
    case "twice":
      return voice.common.saidTwice(factOf(voice, problem.fact).words.label);
    case "bad-value":
      return sayBadValue(voice, factOf(voice, problem.fact), problem.typed, problem.because);
  }
}

/** More options than these are not read in a sentence; the buttons have the others. */
const MOST_OPTIONS = 8;

type Because = Extract<RequestProblem, { kind: "bad-value" }>["because"];

function sayBadValue(voice: TopicVoice, fact: FactVoice, typed: string, because: Because): string {
  const { common } = voice;
  const { label } = fact.words;
  const example = exampleOf(voice, fact);
  switch (because) {
    case "not-a-number":
      return common.notANumber(typed, label, example);
    case "wrong-unit":
      return common.wrongUnit(typed, label, example);
    case "left-over":
      return common.leftOver(typed, label, example);
    case "two-readings":
      return common.twoReadings(typed, label, example);
    case "not-a-day":
      return common.notADay(typed);
    case "unknown-option":
      return common.unknownOption(typed, label, listOr(voice, optionLabels(voice, fact).slice(0, MOST_OPTIONS)));
  }
}

/** Why a value cannot be answered with, the range in the reader's units, and what to type instead. */
export function sayOutOfRange(voice: TopicVoice, refused: OutOfRange): string {
  const fact = factOf(voice, refused.fact);
  if (refused.reason !== undefined) return sayFinding(voice, refused.reason);
  const said = typeof refused.value === "string" ? refused.value : showDatum(voice, refused.value);
  const { spec, words } = fact;
  if (spec.type !== "quantity") return voice.common.cannotUse(said, words.label);
  const range = sayRange(voice, { ...spec, min: refused.min ?? spec.min, max: refused.max ?? spec.max });
  return voice.common.outOfRange(words.label, said, range, exampleOf(voice, fact));
}

/** The range of a quantity in the reader's units. */
function sayRange(voice: TopicVoice, spec: QuantityFact): string {
  const low = showQuantity(voice, { kind: spec.quantity, value: spec.min });
  const high = showQuantity(voice, { kind: spec.quantity, value: spec.max });
  return voice.common.between(low, high);
}

export function sayNotWhole(voice: TopicVoice, factId: string, typed: string): string {
  return voice.common.notWhole(typed, factOf(voice, factId).words.label);
}

/** Why a fact cannot be skipped, and what to type. */
export function sayCannotSkip(voice: TopicVoice, factId: string): string {
  const fact = factOf(voice, factId);
  return voice.common.cannotSkip(fact.words.label, exampleOf(voice, fact));
}

/** Names in a row: "a, b or c". */
function listOr(voice: TopicVoice, names: readonly string[]): string {
  const [last, ...before] = [...names].reverse();
  if (last === undefined) return "";
  return before.length === 0 ? last : `${before.reverse().join(", ")} ${voice.common.or(last)} ${last}`;
}

/** Names the facts that are still missing. */
export function sayMissing(voice: TopicVoice, missing: readonly string[]): string {
  return voice.common.needsFacts(labels(voice, missing).join(", "));
}

function labels(voice: TopicVoice, facts: readonly string[]): readonly string[] {
  return facts.map((id) => factOf(voice, id).words.label);
}

/** Something that could be typed for this fact. */
export function exampleOf(voice: TopicVoice, fact: FactVoice): string {
  return showValue(voice, fact, exampleValue(fact));
}

/** What may be typed for a fact and what is taken when it is not known. */
export function sayFactHelp(voice: TopicVoice, fact: FactVoice): string {
  return voice.common.helpQuestion(fact.words.label, sayAllowed(voice, fact), sayWhenUnsaid(voice, fact));
}

/** The values that a fact may have. */
export function sayAllowed(voice: TopicVoice, { spec, words }: FactVoice): string {
  switch (spec.type) {
    case "quantity":
      return sayRange(voice, spec);
    case "choice":
      return spec.options.map((option) => words.options?.[option]?.label ?? option).join(", ");
    case "flag":
      return `${voice.common.yes}, ${voice.common.no}`;
    case "name":
    case "day":
    case "text":
      return voice.common.freeValue[spec.type];
  }
}

/** What happens when a fact is not said: its default with the source, left open, or asked. */
export function sayWhenUnsaid(voice: TopicVoice, fact: FactVoice): string {
  const { spec } = fact;
  if (spec.default !== undefined)
    return voice.common.unsaidTaken(
      showValue(voice, fact, spec.default.value),
      sayDefaultSource(voice, spec.default.source),
    );
  if (spec.optional === true) return voice.common.unsaidOpen;
  if (spec.unless === undefined) return voice.common.unsaidAsked;
  return voice.common.unsaidExcused(factOf(voice, spec.unless).words.label);
}

function exampleValue({ spec, words }: FactVoice): FactValue {
  if (spec.default !== undefined) return spec.default.value;
  switch (spec.type) {
    case "quantity":
      return spec.usual?.[0] ?? spec.min;
    case "choice":
      return spec.options[0] ?? words.label;
    case "flag":
      return true;
    case "day":
      return "2026-01-31";
    case "name":
    case "text":
      return words.label;
  }
}

function optionLabels(voice: TopicVoice, { spec, words }: FactVoice): readonly string[] {
  if (spec.type === "flag") return [voice.common.yes, voice.common.no];
  return Object.values(words.options ?? {}).map((option) => option.label);
}
