import type { KnownFacts, QuantityFact } from "../declaration/facts.ts";
import { isNeeded, listedFacts } from "../declaration/run-topic.ts";
import type { Card, FormField, NumberInput } from "./card.ts";
import { exampleOf } from "./say-problem.ts";
import { type FactVoice, factOf, showValue, type TopicVoice, writeValue } from "./voice.ts";

/** What stands in a form when it is shown: what is known, or what was typed and what was wrong with it. */
export interface FormFilling {
  readonly facts: KnownFacts;
  readonly typed?: Readonly<Record<string, string>>;
  readonly problems?: Readonly<Record<string, string>>;
}

/** All the facts of a topic at once. */
export function buildFormCard(voice: TopicVoice, filling: FormFilling): Card {
  const { common, words, topic } = voice;
  const fields = listedFacts(topic).map((id) => formField(voice, factOf(voice, id), filling));
  const faults = fields.flatMap((field) => (field.problem === undefined ? [] : [`${field.label}: ${field.problem}`]));
  return {
    title: words.title,
    isPrivate: true,
    blocks: [
      ...(faults.length === 0
        ? []
        : [{ kind: "text" as const, tone: "problem" as const, text: common.formHasProblems }]),
      { kind: "form", topic: topic.id, title: words.summary, submit: common.workItOut, fields },
    ],
    summary: faults.length === 0 ? common.formFor(words.title) : faults.join(" "),
  };
}

function formField(voice: TopicVoice, fact: FactVoice, filling: FormFilling): FormField {
  const { help, label } = fact.words;
  const problem = filling.problems?.[fact.id];
  const value = filling.typed?.[fact.id] ?? knownText(voice, fact, filling.facts);
  // A field that another may excuse cannot be demanded before the form is read.
  const required = isNeeded(fact.spec, () => true);
  const helps = [help, assumedText(voice, fact)].filter((text) => text !== undefined);
  return {
    fact: fact.id,
    label,
    required,
    input: fieldInput(voice, fact),
    ...(helps.length > 0 && { help: helps.join(" ") }),
    ...(value !== undefined && { value }),
    ...(problem !== undefined && { problem }),
  };
}

function knownText(voice: TopicVoice, fact: FactVoice, facts: KnownFacts): string | undefined {
  const known = facts[fact.id];
  if (known === undefined) return undefined;
  return typeof known.value === "string" ? known.value : writeValue(voice, fact, known.value);
}

function assumedText(voice: TopicVoice, fact: FactVoice): string | undefined {
  const { spec } = fact;
  return spec.default === undefined ? undefined : voice.common.emptyTakes(showValue(voice, fact, spec.default.value));
}

function fieldInput(voice: TopicVoice, fact: FactVoice): FormField["input"] {
  const { spec, words } = fact;
  switch (spec.type) {
    case "choice":
      return {
        type: "choice",
        options: spec.options.map((option) => ({ value: option, label: words.options?.[option]?.label ?? option })),
      };
    case "flag": {
      const { yes, no } = voice.common;
      return { type: "choice", options: [yes, no].map((word) => ({ value: word, label: word })) };
    }
    case "day":
      return { type: "day" };
    case "quantity":
      return numberInput(spec) ?? typedInput(voice, fact);
    default:
      return typedInput(voice, fact);
  }
}

/** Only what has no unit: a field for numbers would take away the unit that somebody wants to type. */
function numberInput({ quantity, min, max, whole }: QuantityFact): NumberInput | undefined {
  return quantity === "count" ? { type: "number", min, max, ...(whole && { whole }) } : undefined;
}

function typedInput(voice: TopicVoice, fact: FactVoice): FormField["input"] {
  return { type: "text", placeholder: exampleOf(voice, fact) };
}
