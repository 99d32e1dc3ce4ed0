import type { NameLists } from "../../books/books.ts";
import { endsWord, isWordCharacter } from "../../units/phrase-book.ts";
import type { TopicWords } from "./topic-words.ts";

/** A name of the company's books, found in a request. */
export interface KnownName {
  readonly fact: string;
  readonly end: number;
}

/** What may stand between the parts of a name as people type it: "hollin 50" is hollin-50. */
const JOINTS = " -_/";

/** The longest name of the books that begins at a place, for the facts of a topic that take names. */
export function matchName(
  folded: string,
  at: number,
  { facts }: TopicWords,
  names: NameLists | undefined,
): KnownName | undefined {
  if (names === undefined || isWordCharacter(folded.charAt(at - 1))) return undefined;
  let longest: KnownName | undefined;
  for (const [fact, spec] of Object.entries(facts)) {
    if (spec.type !== "name") continue;
    for (const name of names[spec.of] ?? []) {
      const end = endOfName(folded, at, name);
      if (end !== undefined && end > (longest?.end ?? at)) longest = { fact, end };
    }
  }
  return longest;
}

function endOfName(folded: string, start: number, name: string): number | undefined {
  let at = start;
  for (const letter of name) {
    if (JOINTS.includes(letter)) continue;
    while (at > start && JOINTS.includes(folded.charAt(at)) && folded.charAt(at) !== "") at++;
    if (folded.charAt(at) !== letter) return undefined;
    at++;
  }
  return at > start && endsWord(folded, at) ? at : undefined;
}
