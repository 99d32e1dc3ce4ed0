import { countSlips, slipsAllowed } from "../units/count-slips.ts";
import { foldText } from "../units/fold-text.ts";
import { normaliseText } from "../units/normalise-text.ts";
import { DENYING, EMPTY_WORDS, SLANG } from "./slang-table.ts";

/** A word of a complaint by what it means. */
export interface Meant {
  readonly concept: string;
  /** 1 for the word itself, less for one that was typed with slips. */
  readonly trust: number;
  /** It stands behind a word such as "not". */
  readonly isDenied: boolean;
}
/** Words that mean something, and how words with slips are set right. */
export interface Lexicon {
  readonly exact: ReadonlyMap<string, string>;
  /** Beginnings, by their first letters, longest first. */
  readonly prefixes: readonly (readonly [prefix: string, concept: string])[];
  /** Two-word terms. */
  readonly pairs: ReadonlyMap<string, string>;
  /** Every word that slips are measured against, by its first letter. */
  readonly spelt: ReadonlyMap<string, readonly Spelt[]>;
}
interface Spelt {
  readonly word: string;
  readonly concept: string;
  /** Any ending may follow. */
  readonly isBeginning: boolean;
}
type Found = Pick<Meant, "concept" | "trust">;

/** The concept of every word that denies. */
export const NOT = "(not)";
/** "Not" reaches over so many words that mean something. */
const DENIED_WORDS = 4;
const SLIPPED_TRUST = 0.8;
/** Nobody reads further than this for a complaint. */
const MOST_WORDS = 120;
/** Words shorter than this are not set right: they look like too many others. */
const SHORTEST_SLIPPED = 4;
const EMPTY = new Set(EMPTY_WORDS.split(" "));
const NOTS = new Set(DENYING.split(" "));
/** Ends what "not" reaches over; "or" does not. */
const ENDS_DENIAL = new Set(["but", "pero", "and", "y", "e", "plus", "though", "aunque", "sino"]);
/** Typed apart or with a sign, they are one word. */
const JOINED: readonly (readonly [RegExp, string])[] = [
  [/\bt\s*(&|and|\/|y)\s*p\b/g, "tp"],
  [/\b(?:wo|ca|ai|do|does|did|is|are|was|were|has|have|had|could|would|should)n't\b/g, "not"],
  [/n't\b/g, " not"],
  [/\bnada mas\b/g, "solo"],
  [/\bcan ?not\b/g, "not"],
  [/\bno (longer|more)\b/g, "not"],
  [/\b(ice|stone) cold\b/g, "cold"],
];

/** The lexicon of the trade's words and of every word in these phrases. */
export function buildLexicon(phrases: readonly string[]): Lexicon {
  const exact = new Map<string, string>();
  const prefixes: [string, string][] = [];
  const pairs = new Map<string, string>();
  for (const [concept, words] of Object.entries(SLANG))
    for (const word of words.split(" ")) {
      if (word.endsWith("*")) prefixes.push([word.slice(0, -1), concept]);
      else if (word.includes("_")) pairs.set(word.replaceAll("_", " "), concept);
      else exact.set(word, concept);
    }
  prefixes.sort(([one], [other]) => other.length - one.length);
  for (const word of new Set(phrases.flatMap(splitWords))) {
    if (EMPTY.has(word) || NOTS.has(word) || exact.has(word)) continue;
    exact.set(word, knownConcept({ exact, prefixes }, word) ?? stem(word));
  }
  const whole = [...exact].map(([word, concept]): Spelt => ({ word, concept, isBeginning: false }));
  const begun = prefixes.map(([word, concept]): Spelt => ({ word, concept, isBeginning: true }));
  return { exact, prefixes, pairs, spelt: byFirstLetter([...whole, ...begun]) };
}

function byFirstLetter(spelt: readonly Spelt[]): ReadonlyMap<string, readonly Spelt[]> {
  const byLetter = new Map<string, Spelt[]>();
  for (const one of spelt) {
    if (one.word.length < SHORTEST_SLIPPED) continue;
    const letter = one.word.charAt(0);
    byLetter.set(letter, [...(byLetter.get(letter) ?? []), one]);
  }
  return byLetter;
}

/**
 * What a stretch of text means, word for word; words that mean nothing to the trade are kept as themselves.
 * @param seen words that were looked up before, filled on the way
 */
export function readComplaint(lexicon: Lexicon, text: string, seen = new Map<string, Found>()): readonly Meant[] {
  const words = splitWords(text).slice(0, MOST_WORDS);
  const meant: Meant[] = [];
  let denied = 0;
  for (let place = 0; place < words.length; place++) {
    const word = words[place] ?? "";
    const pair = lexicon.pairs.get(`${word} ${words[place + 1] ?? ""}`);
    if (ENDS_DENIAL.has(word)) denied = 0;
    else if (NOTS.has(word)) {
      denied = DENIED_WORDS;
      meant.push({ concept: NOT, trust: 1, isDenied: false });
    } else if (pair !== undefined || !EMPTY.has(word)) {
      if (pair !== undefined) place += 1;
      const found = pair === undefined ? findConcept(lexicon, word, seen) : { concept: pair, trust: 1 };
      meant.push({ ...found, isDenied: denied > 0 });
      denied -= 1;
    }
  }
  return meant;
}

/** Stretches of a text that may each hold a complaint of its own: sentences, and their parts. */
export function splitClauses(text: string): readonly string[] {
  const plain = foldText(normaliseText(text)).slice(0, 2000);
  const sentences = plain.split(/[.;!?\n]+(?!\d)/);
  const parts = sentences.flatMap((one) =>
    one.split(/,|\b(?:and|but|plus|also|y|e|pero|tambien|ademas|aunque|though)\b/),
  );
  return [...new Set([...sentences, ...parts].map((one) => one.trim()))].filter((one) => one !== "");
}

function splitWords(text: string): readonly string[] {
  const joined = JOINED.reduce((left, [from, to]) => left.replace(from, to), foldText(normaliseText(text)));
  return joined
    .replaceAll("'", "")
    .split(/[^\p{L}\p{N}&-]+/u)
    .filter((word) => word !== "" && word !== "-");
}

function knownConcept({ exact, prefixes }: Pick<Lexicon, "exact" | "prefixes">, word: string): string | undefined {
  return exact.get(word) ?? prefixes.find(([prefix]) => word.startsWith(prefix))?.[1];
}

function findConcept(lexicon: Lexicon, word: string, seen: Map<string, Found>): Found {
  const before = seen.get(word);
  if (before !== undefined) return before;
  const known = knownConcept(lexicon, word) ?? lexicon.exact.get(stem(word));
  const found = known === undefined ? setRight(lexicon, word) : { concept: known, trust: 1 };
  seen.set(word, found);
  return found;
}

/** The nearest word that begins with the same letter, or with the second one when the first two were swapped. */
function setRight({ spelt }: Lexicon, word: string): Found {
  const own = stem(word);
  if (word.length < SHORTEST_SLIPPED || /\d/.test(word)) return { concept: own, trust: 1 };
  let best: string | undefined;
  let most = slipsAllowed(word.length) + 1;
  for (const known of [...(spelt.get(word.charAt(0)) ?? []), ...(spelt.get(word.charAt(1)) ?? [])]) {
    const allowed = Math.min(most - 1, slipsAllowed(known.word.length));
    const forms = known.isBeginning ? [word.slice(0, known.word.length), own] : [word, own];
    const slips = Math.min(...forms.map((form) => countSlips(form, known.word, allowed) ?? Number.POSITIVE_INFINITY));
    if (slips >= most) continue;
    best = known.concept;
    most = slips;
  }
  return best === undefined ? { concept: own, trust: 1 } : { concept: best, trust: SLIPPED_TRUST };
}

/** Light stemming for both languages: plurals and the commonest endings of verbs. */
function stem(word: string): string {
  if (word.length <= 4) return word.replace(/(?<=..)s$/, "");
  return word.replace(/(iendo|ando|ing|ed|es|s|ly|ado|ada|ar|er|ir|a|o|e)$/, "");
}
