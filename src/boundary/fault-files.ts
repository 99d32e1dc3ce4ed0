import { z } from "zod";
import {
  AGE_BANDS,
  type Cause,
  type Check,
  DOERS,
  HAZARDS,
  LEVELS,
  type Level,
  type Outcome,
  type Symptom,
  UNIT_KINDS,
} from "../faults/knowledge.ts";
import { type BookRead, file, oneOf, read, say, words } from "./book-schema.ts";
import { quantityKind } from "./quantity-kind.ts";

const LEVEL_NAMES = Object.keys(LEVELS) as [Level, ...Level[]];
const SOME_WORDS = "a short sentence";

const sentence = words(SOME_WORDS);
const level = oneOf(LEVEL_NAMES);
const levels = z.record(z.string(), level, { error: say("write ids with a level each, such as { ok: very_likely }") });
const unitKinds = z.array(oneOf(UNIT_KINDS), { error: say("name the kinds of unit") }).min(1, "name at least one kind");
const hazards = z.array(oneOf(HAZARDS), { error: say("list the hazards, or write []") });
const weight = z.number({ error: say("write a weight, such as 2") }).min(0, "is below zero");
const ends = file({ from: z.number().exactOptional(), to: z.number().exactOptional() });

const symptomWords = file({
  label: sentence,
  ask: sentence,
  phrases: z.array(sentence).min(1, "write what people say"),
  stop: sentence.exactOptional(),
});
const symptomFile = file({
  urgency: oneOf(["stop", "urgent", "same_day", "normal", "low"]),
  en: symptomWords,
  es: symptomWords,
});

const causeWords = file({
  label: sentence,
  why: sentence,
  remedy: sentence,
  parts: z.array(sentence, { error: say("list the parts, or write []") }),
  verify: sentence,
  tell: sentence,
  stop: sentence.exactOptional(),
});
const doer = oneOf(DOERS);
const causeFile = file({
  family: words("electrical"),
  applies_to: unitKinds,
  prior: file({ [AGE_BANDS[0]]: weight, [AGE_BANDS[1]]: weight, [AGE_BANDS[2]]: weight }),
  basis: words("judgement"),
  likelihoods: words("judgement"),
  symptoms: levels,
  repair_by: z.tuple([doer], doer, { error: say("name who may repair it, such as [plumber]") }),
  hazards,
  en: causeWords,
  es: causeWords,
});

const checkWords = file({ label: sentence, how: sentence, accept: sentence });
const outcome = file({
  id: words("ok"),
  share: ends.exactOptional(),
  range: ends.exactOptional(),
  en: sentence,
  es: sentence,
});
const checkFile = file({
  minutes: z.number({ error: say("write minutes, such as 5") }).positive("is not above zero"),
  doer,
  tools: z.array(words("multimeter"), { error: say("list the tools, or write []") }),
  hazards,
  applies_to: unitKinds,
  reading: file({
    quantity: quantityKind,
    expected: words("element_current"),
    error: file({ share: z.number().min(0).max(0.5), least: z.number().min(0) }),
  }).exactOptional(),
  likelihoods: words("judgement"),
  outcomes: z.tuple([outcome, outcome], outcome, { error: say("write two outcomes or more") }),
  usual: levels,
  by_cause: z.record(z.string(), levels, { error: say("write causes with a level for each outcome") }),
  en: checkWords,
  es: checkWords,
});
const groupsFile = z.array(z.array(words("air_split")), { error: say("write lists of checks") });

/** Reads the file of one symptom. @param id the file's name */
export function readSymptom(id: string, contents: unknown): BookRead<Symptom> {
  return read(symptomFile, contents, ({ urgency, en, es }) => ({ id, urgency, words: { en, es } }));
}

/** Reads the file of one cause. @param id the file's name */
export function readCause(id: string, contents: unknown): BookRead<Cause> {
  return read(causeFile, contents, ({ applies_to, repair_by, en, es, ...rest }) => ({
    id,
    ...rest,
    appliesTo: applies_to,
    repairBy: repair_by,
    words: { en, es },
  }));
}

/** Reads the file of one check; an outcome that its rows of likelihoods leave out is unlikely. @param id the file's name */
export function readCheck(id: string, contents: unknown): BookRead<Check> {
  return read(checkFile, contents, ({ applies_to, by_cause, outcomes, usual, en, es, ...rest }) => {
    const [first, second, ...others] = outcomes;
    const ids = outcomes.map((one) => one.id);
    return {
      id,
      ...rest,
      appliesTo: applies_to,
      outcomes: [shapeOutcome(first), shapeOutcome(second), ...others.map(shapeOutcome)],
      usual: fill(ids, usual),
      byCause: Object.fromEntries(Object.entries(by_cause).map(([cause, row]) => [cause, fill(ids, row)])),
      words: { en, es },
    };
  });
}

/** Reads the groups of checks that see the same physics. */
export function readGroups(contents: unknown): BookRead<readonly (readonly string[])[]> {
  return read(groupsFile, contents, (groups) => groups);
}

function shapeOutcome({ en, es, ...rest }: z.infer<typeof outcome>): Outcome {
  return { ...rest, words: { en, es } };
}

function fill(ids: readonly string[], row: Readonly<Record<string, Level>>): Readonly<Record<string, Level>> {
  const missing = ids.filter((id) => !Object.hasOwn(row, id)).map((id) => [id, "unlikely"] as const);
  return { ...row, ...Object.fromEntries(missing) };
}
