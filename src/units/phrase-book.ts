import { foldText } from "./fold-text.ts";

/** Phrases of one or more words with what each may mean, ready to be found in running text. */
export interface PhraseBook<M> {
  readonly meanings: ReadonlyMap<string, readonly M[]>;
  /** Every beginning of every phrase, so that a search stops as soon as nothing can follow. */
  readonly beginnings: ReadonlySet<string>;
}
export interface PhraseMatch<M> {
  readonly phrase: string;
  /** Where the text goes on, after an abbreviation's dot. */
  readonly end: number;
  readonly meanings: readonly M[];
}
/** Says whether a phrase that ends just before `end` may end there. */
export type MayEnd = (folded: string, end: number) => boolean;

/** A row of dots or dashes is no gap inside a phrase; bounded, so that no text makes the search slow. */
const MOST_SKIPPED = 2;
/** More gaps than this in one phrase are not tried one by one. */
const MOST_GAPS = 3;

/** Builds a phrase book; a space in a phrase may be left out, be a hyphen or an underscore in the text. */
export function buildPhraseBook<M>(entries: Iterable<readonly [phrase: string, meaning: M]>): PhraseBook<M> {
  const meanings = new Map<string, M[]>();
  const beginnings = new Set<string>();
  for (const [phrase, meaning] of entries) {
    for (const form of spacings(plainPhrase(phrase))) {
      const found = meanings.get(form);
      if (found === undefined) meanings.set(form, [meaning]);
      else if (!found.includes(meaning)) found.push(meaning);
      for (let length = 1; length <= form.length; length++) beginnings.add(form.slice(0, length));
    }
  }
  return { meanings, beginnings };
}

/**
 * Finds the longest phrase that stands at a place in folded text.
 * @param before what is taken as read before that place, such as a currency sign that stood before its number
 */
export function matchPhrase<M>(
  book: PhraseBook<M>,
  folded: string,
  at: number,
  mayEnd: MayEnd,
  before = "",
): PhraseMatch<M> | undefined {
  let phrase = before;
  let best: PhraseMatch<M> | undefined;
  let skipped = 0;
  for (let index = at; index < folded.length; index++) {
    const next = nextInPhrase(phrase, folded, index);
    skipped = next === phrase ? skipped + 1 : 0;
    if (skipped > MOST_SKIPPED) break;
    if (skipped > 0) continue;
    phrase = next;
    if (!book.beginnings.has(phrase)) break;
    const meanings = book.meanings.get(phrase);
    if (meanings && mayEnd(folded, index + 1)) best = { phrase, end: skipDot(folded, index + 1), meanings };
  }
  return best;
}

/** True when no letter, digit or apostrophe goes on after this place; a sign such as @ always ends. */
export function endsWord(folded: string, end: number): boolean {
  if (!isWordCharacter(folded.charAt(end - 1))) return true;
  const next = folded.charAt(end);
  if (next === "'") return !isWordCharacter(folded.charAt(end + 1));
  return next !== "_" && !isWordCharacter(next);
}

/** True for letters and digits of any script. */
export function isWordCharacter(character: string): boolean {
  return /[\p{L}\p{N}\p{M}]/u.test(character);
}

/** A phrase the way books hold it: folded, no dots, single spaces. */
export function plainPhrase(phrase: string): string {
  return foldText(phrase)
    .replace(/(?!^)\.(?!\d)/g, "")
    .replace(/\^(?=[23])/g, "")
    .replace(/[ _·-]+/g, " ")
    .trim();
}

/** The phrase read so far with one more character: gaps become one space; dots and power signs are not part of it. */
function nextInPhrase(phrase: string, folded: string, index: number): string {
  const character = folded.charAt(index);
  if (" _-·".includes(character)) return phrase === "" || phrase.endsWith(" ") ? phrase : `${phrase} `;
  const follows = folded.charAt(index + 1);
  if (character === "." && phrase !== "" && !(follows >= "0" && follows <= "9")) return phrase;
  if (character === "^" && (follows === "2" || follows === "3")) return phrase;
  return phrase + character;
}

function skipDot(folded: string, end: number): number {
  const isAbbreviation = folded.charAt(end) === "." && !isWordCharacter(folded.charAt(end + 1));
  return isAbbreviation ? end + 1 : end;
}

function spacings(phrase: string): readonly string[] {
  const words = phrase.split(" ");
  if (words.length - 1 > MOST_GAPS) return [phrase, words.join("")];
  return words
    .slice(1)
    .reduce<readonly string[]>(
      (forms, word) => forms.flatMap((form) => [`${form} ${word}`, `${form}${word}`]),
      [words[0] ?? ""],
    );
}
