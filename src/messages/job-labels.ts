import type { FactValue } from "../declaration/facts.ts";
import { keptAs } from "../jobs/shared-facts.ts";
import { QUANTITY_KINDS } from "../units/quantity-kinds.ts";
import { jobs as en } from "./en/jobs.ts";
import { startupSteps as enSteps } from "./en/startup-steps.ts";
import { jobs as es } from "./es/jobs.ts";
import { startupSteps as esSteps } from "./es/startup-steps.ts";
import type { JobTexts } from "./job-texts.ts";
import type { Language } from "./language.ts";
import type { StepWords } from "./startup-texts.ts";
import { type FactVoice, factOf, showValue, speakOf, type TopicVoice, type Voice } from "./voice.ts";

/** The sentences of both languages about job records. */
export const JOB_TEXTS: Readonly<Record<Language, JobTexts>> = { en, es };
const STEPS: Readonly<Record<Language, Readonly<Record<string, StepWords>>>> = { en: enSteps, es: esSteps };

interface KeptFact {
  readonly voice: TopicVoice;
  readonly fact: FactVoice;
}

/** A step of the start-up by its name; anything else is what somebody wrote. */
export function labelOfStep({ language }: Voice, id: string): string {
  return STEPS[language][id]?.label ?? id;
}

export function labelOfKept(voice: Voice, topic: string, kept: string): string {
  return findKept(voice, topic, kept)?.fact.words.label ?? kept;
}

/** The value of a kept fact as the reader reads it. */
export function showKept(voice: Voice, topic: string, kept: string, value: FactValue): string {
  const found = findKept(voice, topic, kept);
  return found === undefined ? String(value) : showValue(found.voice, found.fact, value);
}

/** The base unit of a kept fact; "" where it has none. */
export function unitOfKept(voice: Voice, topic: string, kept: string): string {
  const spec = findKept(voice, topic, kept)?.fact.spec;
  return spec?.type === "quantity" ? QUANTITY_KINDS[spec.quantity].base : "";
}

/** Somebody of the books by their name; others as they are called. */
export function nameOf({ books }: Voice, person: string): string {
  return books?.people.find(({ id }) => id === person)?.name ?? person;
}

/** The fact behind an id under which a job keeps something: of the topic that was told it, else of any other. */
function findKept(voice: Voice, topic: string, kept: string): KeptFact | undefined {
  for (const id of [topic, ...voice.topics.keys()]) {
    const facts = voice.topics.get(id)?.facts ?? {};
    const fact = Object.keys(facts).find((one) => one === kept || keptAs(id, one) === kept);
    if (fact === undefined) continue;
    const topicVoice = speakOf(voice, id);
    return { voice: topicVoice, fact: factOf(topicVoice, fact) };
  }
  return undefined;
}
