import { countSlips, slipsAllowed } from "../../units/count-slips.ts";
import { plainPhrase } from "../../units/phrase-book.ts";

/** A person can choose between this many. */
const MOST_NEAREST = 3;
/** No word of the trade is longer, in either language. */
const LONGEST_WORD = 60;

/** A word that can be offered, with its plain form. */
export interface KnownWord {
  readonly shown: string;
  readonly plain: string;
}

/** Prepares words to be compared with, once for many comparisons. */
export function knowWords(words: readonly string[]): readonly KnownWord[] {
  return words.map((shown) => ({ shown, plain: plainPhrase(shown) }));
}

/** The known words that look most like one that is not known, nearest first; earlier words win ties. */
export function nearestWords(word: string, known: readonly KnownWord[]): readonly string[] {
  if (word.length > LONGEST_WORD) return [];
  const wanted = plainPhrase(word);
  const most = slipsAllowed(wanted.length);
  const near = new Map<string, { readonly shown: string; readonly slips: number }>();
  for (const { shown, plain } of known) {
    const slips = near.has(plain) ? undefined : countSlips(wanted, plain, most);
    if (slips !== undefined) near.set(plain, { shown, slips });
  }
  return [...near.values()]
    .sort((a, b) => a.slips - b.slips)
    .slice(0, MOST_NEAREST)
    .map(({ shown }) => shown);
}
