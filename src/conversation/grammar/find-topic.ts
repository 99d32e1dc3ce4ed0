import type { Topic } from "../../declaration/topic.ts";
import type { Library } from "../../library.ts";
import { LANGUAGES, type Language } from "../../messages/language.ts";
import { foldText } from "../../units/fold-text.ts";
import { normaliseText } from "../../units/normalise-text.ts";
import { buildPhraseBook, endsWord, isWordCharacter, matchPhrase, type PhraseBook } from "../../units/phrase-book.ts";
import { startsValue } from "../../units/read-quantity.ts";
import { isUnitWord } from "../../units/read-unit.ts";
import { isDayWord } from "./day-words.ts";
import type { Span } from "./lex-request.ts";
import { type KnownWord, knowWords, nearestWords } from "./nearest-words.ts";
import type { ParsedRequest } from "./parsed-request.ts";
import { wordsOf } from "./topic-words.ts";
import { FILLERS } from "./trade-words-table.ts";

export interface FoundTopic {
  readonly topic: Topic;
  /** Where its word stands; nothing when it was known before. */
  readonly span?: Span;
}
interface TopicNames {
  readonly book: PhraseBook<Topic>;
  readonly offered: Readonly<Record<Language, readonly KnownWord[]>>;
}

const WORD = /[\p{L}\p{M}_]+(?:['-][\p{L}\p{M}_]+)*/uy;
const PAIR_NEXT = /^ +[a-z_]+ ?=/;
/** A topic's word stands among the first words of a request. */
const MOST_WORDS = 12;
const MOST_TOPICS = 3;
const FILLER_WORDS: ReadonlySet<string> = new Set(FILLERS);
const cache = new WeakMap<Library, TopicNames>();

/**
 * Finds what a request is about: the topic whose word stands first. A topic that is known already gives way only to
 * another topic's word at the very beginning, and not when that word means something in the known topic.
 */
export function findTopic(folded: string, library: Library, known: string | undefined): FoundTopic | undefined {
  const names = namesOf(library);
  const current = known === undefined ? undefined : library.topics.get(known);
  const found = scanTopic(folded, names, current !== undefined);
  if (current === undefined) return found;
  if (found?.span === undefined || found.topic === current) return found ?? { topic: current };
  // "size days=20" and every button that asks another topic: nobody writes a pair right after the word of a fact.
  if (PAIR_NEXT.test(folded.slice(found.span.end))) return found;
  // The name of a topic and nothing else: as a value it would be told with its fact, or asked for.
  const said = folded.trim();
  if (said === found.topic.id || namedBy(library, found.topic).includes(said)) return found;
  const { book } = wordsOf(library, current);
  const here = matchPhrase(book, folded, found.span.start, endsWord);
  return here?.meanings.some(({ as }) => as !== "filler") ? { topic: current } : found;
}

/** What to say when no topic was found: the word that looks like a topic's, or belongs to one, else the first word. */
export function missTopic(folded: string, text: string, library: Library, language: Language): ParsedRequest {
  const words = wordsIn(folded)
    .filter(({ word }) => !FILLER_WORDS.has(word) && !isUnitWord(word))
    .slice(0, MOST_WORDS);
  const { offered } = namesOf(library);
  const known = [...offered[language], ...offered[language === "en" ? "es" : "en"]];
  const near = words.map((found) => ({ ...found, nearest: nearestWords(found.word, known) }));
  const meant = near.find(({ nearest }) => nearest.length > 0) ?? near[0];
  if (meant === undefined) return { facts: {}, problems: [], readings: [] };
  const nearest = meant.nearest.length > 0 ? meant.nearest : topicsKnowing(folded, meant, library);
  const word = text.slice(meant.start, meant.start + meant.word.length);
  return { facts: {}, problems: [{ kind: "unknown-word", word, nearest }], readings: [] };
}

/** The topics in which a word names something, or nearly does. */
function topicsKnowing(folded: string, { word, start }: FoundWord, library: Library): readonly string[] {
  const topics = [...library.topics.values()].map((topic) => ({ id: topic.id, words: wordsOf(library, topic) }));
  const knowing = topics.filter(({ words }) =>
    matchPhrase(words.book, folded, start, endsWord)?.meanings.some(({ as }) => isNaming(as)),
  );
  const near = topics.filter(({ words: { offered } }) => nearestWords(word, [...offered.en, ...offered.es]).length > 0);
  return (knowing.length > 0 ? knowing : near).slice(0, MOST_TOPICS).map(({ id }) => id);
}

function isNaming(as: string): boolean {
  return as === "fact" || as === "option";
}

function scanTopic(folded: string, { book }: TopicNames, isFirstOnly: boolean): FoundTopic | undefined {
  for (let at = 0; at < folded.length; at++) {
    if (!isWordCharacter(folded.charAt(at)) || isWordCharacter(folded.charAt(at - 1))) continue;
    const match = matchPhrase(book, folded, at, endsWord);
    const [topic] = match?.meanings ?? [];
    if (match && topic && !isKey(folded, match.end) && !isDayOnly(folded, at, match.end))
      return { topic, span: { start: at, end: match.end } };
    const word = matchAt(WORD, folded, at);
    if (isFirstOnly && (startsValue(folded, at) || (word !== undefined && !FILLER_WORDS.has(word)))) return undefined;
    at += Math.max(0, (word?.length ?? 0) - 1);
  }
  return undefined;
}

/** A word that says a day opens the topic that it names only where it stands alone: "no hot water today" is a complaint. */
function isDayOnly(folded: string, start: number, end: number): boolean {
  if (!isDayWord(folded.slice(start, end))) return false;
  const rest = `${folded.slice(0, start)} ${folded.slice(end)}`;
  return wordsIn(rest).some(({ word }) => !FILLER_WORDS.has(word)) || /\d/.test(rest);
}

/** "mix=..." names a fact, not a topic. */
function isKey(folded: string, end: number): boolean {
  return /^ ?=/.test(folded.slice(end, end + 2));
}

/** The words that open a topic: its id, and the first telling word of its title and of its examples, in both languages. */
function namesOf(library: Library): TopicNames {
  const made = cache.get(library);
  if (made) return made;
  const ids = [...library.topics.values()].flatMap((topic): [string, Topic][] => [
    [topic.id, topic],
    ...namedBy(library, topic).map((name): [string, Topic] => [name, topic]),
  ]);
  const said = LANGUAGES.map((language) =>
    [...library.topics.values()].map((topic) => ({ topic, words: opening(library, topic, language) })),
  );
  const uses = new Map<string, Set<Topic>>();
  for (const { topic, words } of said.flat())
    for (const word of words) uses.set(word, (uses.get(word) ?? new Set()).add(topic));
  const own = (word: string, topic: Topic) =>
    uses.get(word)?.size === 1 && !library.topics.has(word) && topic.id !== word;
  const entries = said
    .flat()
    .flatMap(({ topic, words }) =>
      words.filter((word) => own(word, topic)).map((word): [string, Topic] => [word, topic]),
    );
  const offered = said.map((topics) =>
    topics.flatMap(({ topic, words }) => [...words.filter((word) => own(word, topic)), topic.id]),
  );
  const names = {
    book: buildPhraseBook([...ids, ...entries]),
    offered: { en: knowWords(offered[0] ?? []), es: knowWords(offered[1] ?? []) },
  };
  cache.set(library, names);
  return names;
}

/** The words that the sentences of a topic, in any language, name it by. */
function namedBy(library: Library, { id }: Topic): readonly string[] {
  return LANGUAGES.flatMap((language) => library.texts[language].topics.get(id)?.names ?? []);
}

function opening(library: Library, topic: Topic, language: Language): readonly string[] {
  const texts = library.texts[language].topics.get(topic.id);
  if (texts === undefined) return [];
  const { book } = wordsOf(library, topic);
  const inTitle = firstTelling(texts.title, (folded, start) => {
    const match = matchPhrase(book, folded, start, endsWord);
    return match?.meanings.some(({ as }) => isNaming(as)) ? match.end : undefined;
  });
  const inExamples = texts.examples.flatMap((example) => firstTelling(example, () => undefined));
  return [...new Set([...inTitle, ...inExamples])];
}

/** The first word of a sentence that is no little word, and not passed over. */
function firstTelling(
  sentence: string,
  passOver: (folded: string, start: number) => number | undefined,
): readonly string[] {
  const folded = foldText(normaliseText(sentence));
  let passed = 0;
  for (const { word, start } of wordsIn(folded)) {
    if (start < passed || FILLER_WORDS.has(word)) continue;
    const end = passOver(folded, start);
    if (end === undefined) return [word];
    passed = end;
  }
  return [];
}

interface FoundWord {
  readonly word: string;
  readonly start: number;
}

function wordsIn(folded: string): readonly FoundWord[] {
  const found: FoundWord[] = [];
  for (let at = 0; at < folded.length; at++) {
    const word = matchAt(WORD, folded, at);
    if (word === undefined) continue;
    if (!isWordCharacter(folded.charAt(at - 1))) found.push({ word, start: at });
    at += word.length - 1;
  }
  return found;
}

function matchAt(pattern: RegExp, text: string, at: number): string | undefined {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0];
}
