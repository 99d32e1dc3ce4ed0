import { buildLexicon, type Lexicon, type Meant, NOT, readComplaint, splitClauses } from "./complaint-words.ts";
import type { FaultKnowledge, Symptom } from "./knowledge.ts";
import { mustStop } from "./stops.ts";

/** A symptom that was heard in a text. */
export interface HeardSymptom {
  readonly symptom: string;
  /** False for "it is not leaking". */
  readonly isThere: boolean;
  /** 0 to 1: how much of what people say for it was said. */
  readonly score: number;
}
/** What a text complains of. */
export interface Heard {
  /** Sure enough to go on with. */
  readonly sure: readonly HeardSymptom[];
  /** The likeliest when nothing is sure, for buttons; none when the text holds no complaint. */
  readonly offers: readonly HeardSymptom[];
}

/** Phrases of the knowledge, ready to be compared with; built once. */
export interface ComplaintBook {
  readonly lexicon: Lexicon;
  readonly symptoms: readonly SymptomPhrases[];
  /** How much a word tells: much when few symptoms use it. */
  readonly weights: ReadonlyMap<string, number>;
}
interface SymptomPhrases {
  readonly id: string;
  readonly mustStop: boolean;
  readonly phrases: readonly (readonly string[])[];
  readonly words: ReadonlySet<string>;
}

/** Thresholds on the scores, set on texts other than those of the tests. */
const SURE_SCORE = 0.6;
const STOP_SCORE = 0.5;
const SURE_LEAD = 0.08;
/** Of what is denied, only what is denied about as plainly as anything counts. */
const DENIED_LEAD = 0.05;
const LEAST_SCORE = 0.25;
const MOST_OFFERS = 3;
/** A phrase weighs in full from so much telling on; less is easily met by chance. */
const FULL_WEIGHT = 4;
/** Of the score, what the phrase finds in the text; the rest is what the text finds in all phrases of the symptom. */
const PHRASE_PART = 0.7;

/** Makes the phrases of both languages ready to be matched. */
export function buildComplaintBook({ symptoms }: Pick<FaultKnowledge, "symptoms">): ComplaintBook {
  const said = ({ words }: Symptom) => [words.en, words.es].flatMap(({ label, phrases }) => [label, ...phrases]);
  const lexicon = buildLexicon(symptoms.flatMap(said));
  const listed = symptoms.map((symptom): SymptomPhrases => {
    const phrases = said(symptom).map((phrase) => [
      ...new Set(readComplaint(lexicon, phrase).map(({ concept }) => concept)),
    ]);
    return { id: symptom.id, mustStop: mustStop(symptom), phrases, words: new Set(phrases.flat()) };
  });
  const concepts = new Set(listed.flatMap(({ words }) => [...words]));
  const weight = (concept: string) =>
    Math.log(1 + listed.length / listed.filter(({ words }) => words.has(concept)).length);
  return { lexicon, symptoms: listed, weights: new Map([...concepts].map((one) => [one, weight(one)])) };
}

/**
 * The complaints in what somebody wrote, in either language or both: several at once, with slips, and denied ones.
 * Something dangerous counts as sure sooner than anything else.
 * @limits compares words, not grammar: what is told by telling of something else may be missed, and is then asked
 */
export function matchComplaint(book: ComplaintBook, text: string): Heard {
  const best = new Map<string, HeardSymptom>();
  const sure = new Map<string, HeardSymptom>();
  const seen = new Map();
  const clauses = splitClauses(text).map((clause) => {
    const ranked = scoreClause(book, readComplaint(book.lexicon, clause, seen));
    return { clause, ranked, heard: surest(book, ranked) };
  });
  // The "no" of "no hot water" is the complaint itself and denies nothing else, there and in the sentence around it.
  const taken = clauses.flatMap(({ clause, heard: [first] }) => (first && complainsByNot(book, first) ? [clause] : []));
  for (const { clause, ranked, heard } of clauses) {
    const isTaken = taken.some((part) => clause.includes(part));
    for (const one of ranked) keepBetter(best, one);
    for (const one of heard) if (one.isThere || !isTaken) keepBetter(sure, one);
  }
  if (sure.size > 0) return { sure: byScore(sure), offers: [] };
  return {
    sure: [],
    offers: byScore(best)
      .filter(({ isThere }) => isThere)
      .slice(0, MOST_OFFERS),
  };
}

function scoreClause(book: ComplaintBook, meant: readonly Meant[]): readonly HeardSymptom[] {
  if (meant.length === 0) return [];
  const heard = book.symptoms.flatMap((symptom): HeardSymptom[] => {
    const there = scoreSymptom(book, symptom, meant, false);
    const denied = scoreSymptom(book, symptom, meant, true);
    const score = Math.max(there, denied);
    return score < LEAST_SCORE ? [] : [{ symptom: symptom.id, isThere: there >= denied, score }];
  });
  return heard.sort((one, other) => other.score - one.score);
}

/** The best of a clause when it leads clearly, whatever is denied, and whatever is dangerous. */
function surest(book: ComplaintBook, ranked: readonly HeardSymptom[]): readonly HeardSymptom[] {
  const [first, second] = ranked.filter(({ isThere }) => isThere);
  const isClear = first !== undefined && first.score >= SURE_SCORE && first.score - (second?.score ?? 0) >= SURE_LEAD;
  const stops = new Set(book.symptoms.filter((one) => one.mustStop).map(({ id }) => id));
  const leastDenied = Math.max(
    SURE_SCORE,
    Math.max(...ranked.map(({ isThere, score }) => (isThere ? 0 : score))) - DENIED_LEAD,
  );
  return ranked.filter((one) => {
    if (one === first && isClear) return true;
    if (one.isThere) return stops.has(one.symptom) && one.score >= STOP_SCORE;
    return one.score >= leastDenied;
  });
}

/** True for what people complain of by saying what there is not. */
function complainsByNot({ symptoms }: ComplaintBook, { symptom, isThere }: HeardSymptom): boolean {
  return isThere && symptoms.some(({ id, words }) => id === symptom && words.has(NOT));
}

function scoreSymptom(
  book: ComplaintBook,
  symptom: SymptomPhrases,
  meant: readonly Meant[],
  asDenied: boolean,
): number {
  const trust = new Map<string, Meant>();
  for (const one of meant) if ((trust.get(one.concept)?.trust ?? 0) < one.trust) trust.set(one.concept, one);
  if (asDenied && !meant.some(({ isDenied }) => isDenied)) return 0;
  let best = 0;
  for (const phrase of symptom.phrases) best = Math.max(best, scorePhrase(book, phrase, trust, asDenied));
  if (best === 0) return 0;
  const weigh = ({ concept }: Meant) => book.weights.get(concept) ?? 1;
  const told = meant.filter(({ concept }) => concept !== NOT);
  const all = told.reduce((sum, one) => sum + weigh(one), 0);
  const found = told.reduce((sum, one) => sum + (symptom.words.has(one.concept) ? weigh(one) * one.trust : 0), 0);
  return PHRASE_PART * best + (1 - PHRASE_PART) * (all === 0 ? 0 : found / all);
}

/** Share of a phrase that is found; what a "not" stands before counts only for a phrase that holds one, or as denied. */
function scorePhrase(
  { weights }: ComplaintBook,
  phrase: readonly string[],
  heard: ReadonlyMap<string, Meant>,
  asDenied: boolean,
): number {
  const holdsNot = phrase.includes(NOT);
  if (holdsNot && asDenied) return 0;
  let [found, all, deniedWeight] = [0, 0, 0];
  for (const concept of phrase) {
    const weight = weights.get(concept) ?? 1;
    all += weight;
    const one = heard.get(concept);
    if (one === undefined) continue;
    if (one.isDenied) deniedWeight += weight * one.trust;
    found += weight * one.trust;
  }
  const scale = Math.min(1, all / FULL_WEIGHT + 0.2);
  if (holdsNot) return (found / all) * scale * (heard.has(NOT) && deniedWeight > 0 ? 1 : 1 / 3);
  // Who denies says less than who complains: "no leaks" is enough.
  return asDenied ? Math.sqrt(deniedWeight / all) * scale : ((found - deniedWeight) / all) * scale;
}

function keepBetter(kept: Map<string, HeardSymptom>, one: HeardSymptom): void {
  if ((kept.get(one.symptom)?.score ?? 0) < one.score) kept.set(one.symptom, one);
}

function byScore(heard: ReadonlyMap<string, HeardSymptom>): readonly HeardSymptom[] {
  return [...heard.values()].sort((one, other) => other.score - one.score);
}
