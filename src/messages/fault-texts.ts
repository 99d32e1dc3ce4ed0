import type { Cause, Check, FaultKnowledge, Hazard, Symptom } from "../faults/knowledge.ts";
import { HAZARDS } from "../faults/knowledge.ts";
import { mustStop } from "../faults/stops.ts";
import {
  curedBy,
  notCuredBy,
  OTHER_SYMPTOM,
  readingOf,
  readyFor,
  SITE_FACTS,
  stopOf,
} from "../faults/topic/fault-facts.ts";
import { expectedCode, outcomeCode, partCode } from "../faults/topic/fault-findings.ts";
import { commonFacts as enFacts } from "./en/common-facts.ts";
import { faults as en } from "./en/faults.ts";
import { hazards as enHazards } from "./en/hazards.ts";
import { texts as enSite } from "./en/topics/caution.ts";
import { commonFacts as esFacts } from "./es/common-facts.ts";
import { faults as es } from "./es/faults.ts";
import { hazards as esHazards } from "./es/hazards.ts";
import { texts as esSite } from "./es/topics/caution.ts";
import type { FaultWords } from "./fault-words.ts";
import type { HazardTexts } from "./hazard-texts.ts";
import type { Language } from "./language.ts";
import type { AnyTopicTexts, FactTexts, OptionTexts } from "./topic-texts.ts";

const WORDS = { en, es } as const;
const FACTS = { en: enFacts, es: esFacts } as const;
const SITE_WORDS = { en: enSite.facts, es: esSite.facts } as const;
const HAZARD_WORDS: Readonly<Record<Language, HazardTexts>> = { en: enHazards, es: esHazards };

type Fact = FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
type Findings = AnyTopicTexts["findings"];

/** The sentences of the fault topic in one language: what stands around the knowledge, and the knowledge's own words. */
export function buildFaultTexts(knowledge: FaultKnowledge, language: Language): AnyTopicTexts {
  const words = WORDS[language];
  const { title, names, summary, examples, tables } = words;
  return {
    title,
    names,
    summary,
    examples,
    facts: faultFactTexts(knowledge, words, language),
    results: { confidence: words.confidence },
    findings: faultFindingTexts(knowledge, words, language),
    tables,
  };
}

function faultFactTexts(
  { symptoms, checks, causes }: FaultKnowledge,
  words: FaultWords,
  language: Language,
): Readonly<Record<string, Fact>> {
  const { model, setpoint, cold, air, supply, people, line_pressure, month } = FACTS[language];
  const siteWords: Readonly<Record<string, Fact>> = SITE_WORDS[language];
  const symptomOptions = [
    ...symptoms.map((symptom) => [symptom.id, plainOption(symptom.words[language].label)] as const),
    [OTHER_SYMPTOM, plainOption(words.noneOfThese)] as const,
  ];
  return {
    complaint: words.complaint,
    unit: words.unit,
    age: words.age,
    lately: words.lately,
    ...Object.fromEntries(Object.keys(SITE_FACTS).map((fact) => [fact, siteWords[fact] ?? quiet(fact)])),
    ...{ model, setpoint, cold, air, supply, people, line_pressure, month },
    symptom: { words: [], ...words.symptom, options: Object.fromEntries(symptomOptions) },
    ...Object.fromEntries(symptoms.filter(mustStop).map((symptom) => stopFact(symptom, words, language))),
    ...Object.fromEntries(checks.flatMap((check) => checkFacts(check, words, language))),
    ...Object.fromEntries(
      causes.flatMap((cause) => {
        const { label } = cause.words[language];
        return [
          [notCuredBy(cause.id), quiet(words.notCured(label))],
          [curedBy(cause.id), quiet(words.curedFact(label))],
        ];
      }),
    ),
    ...Object.fromEntries(Object.entries(words.record).map(([fact, label]) => [fact, quiet(label)])),
  };
}

/** The stop line is the question itself: one line, before anything else, with one answer. */
function stopFact(symptom: Symptom, words: FaultWords, language: Language): readonly [string, Fact] {
  const { label, ask, stop } = symptom.words[language];
  return [stopOf(symptom.id), { label, question: stop ?? ask, words: [], options: { done: plainOption(words.done) } }];
}

function checkFacts(check: Check, words: FaultWords, language: Language): readonly (readonly [string, Fact])[] {
  const { id, hazards, outcomes, reading } = check;
  const { label, how, accept } = check.words[language];
  const options = Object.fromEntries(outcomes.map((outcome) => [outcome.id, plainOption(outcome.words[language])]));
  const done = { done: plainOption(words.done) };
  const ready: Fact = { label, question: words.ready(label), words: [], options: done };
  return [
    ...(hazards.length > 0 ? [[readyFor(id), ready] as const] : []),
    [id, { label, question: how, help: words.inOrder(accept), words: [], options }],
    ...(reading ? [[readingOf(id), quiet(words.reading(label))] as const] : []),
  ];
}

function plainOption(label: string): OptionTexts {
  return { label, words: [] };
}

function quiet(label: string): Fact {
  return { label, question: label, words: [] };
}

function faultFindingTexts(
  { symptoms, causes, checks }: FaultKnowledge,
  words: FaultWords,
  language: Language,
): Findings {
  const readings = new Set(checks.flatMap(({ reading }) => (reading ? [reading.quantity] : [])));
  return {
    ...words.plain,
    cause_something_else: () => words.somethingElse,
    ...Object.fromEntries(
      [...readings].map((kind) => [expectedCode(kind), ({ expected }) => words.expected(expected ?? "", kind)]),
    ),
    ...Object.fromEntries(HAZARDS.map((hazard) => [`first_${hazard}`, () => sayHazard(hazard, words, language)])),
    ...Object.fromEntries(
      Object.entries(words.doers).flatMap(([doer, who]): [string, Findings[string]][] => [
        [`repair_by_${doer}`, () => words.repairBy(who)],
        [`call_for_${doer}`, ({ check }) => words.callFor(who, check ?? "")],
      ]),
    ),
    ...Object.fromEntries(
      symptoms.flatMap((symptom): [string, Findings[string]][] => [
        [`heard_${symptom.id}`, () => words.heard(symptom.words[language].label)],
        [`denied_${symptom.id}`, () => words.denied(symptom.words[language].label)],
      ]),
    ),
    ...Object.fromEntries(causes.flatMap((cause) => causeFindings(cause, words, language))),
    ...Object.fromEntries(
      checks.flatMap((check): [string, Findings[string]][] => [
        [`check_${check.id}`, () => check.words[language].label],
        ...check.outcomes.map((outcome): [string, Findings[string]] => [
          outcomeCode(check.id, outcome.id),
          () => outcome.words[language],
        ]),
      ]),
    ),
  };
}

function sayHazard(hazard: Hazard, words: FaultWords, language: Language): string {
  const { label, steps } = HAZARD_WORDS[language][hazard];
  return words.first(label, steps.join(" "));
}

function causeFindings(cause: Cause, words: FaultWords, language: Language): readonly [string, Findings[string]][] {
  const { id } = cause;
  const { label, why, remedy, parts, verify, tell, stop } = cause.words[language];
  const stops: [string, Findings[string]][] =
    stop === undefined ? [] : [[`stop_before_${id}`, () => words.stopBefore(stop)]];
  return [
    [`cause_${id}`, () => label],
    [`found_${id}`, ({ share }) => words.found(label, share ?? "")],
    [`probable_${id}`, ({ share }) => words.probable(label, share ?? "")],
    [`cured_${id}`, () => words.cured(label)],
    [`was_${id}`, () => words.was(label)],
    [`why_${id}`, () => why],
    [`remedy_${id}`, () => words.remedy(remedy)],
    [`parts_${id}`, () => words.parts(parts.join(", "))],
    [`verify_${id}`, () => words.verify(verify)],
    [`tell_${id}`, () => words.tell(tell)],
    ...stops,
    ...cause.words.en.parts.map((part, index): [string, Findings[string]] => [
      partCode(id, index),
      () => parts[index] ?? part,
    ]),
  ];
}
