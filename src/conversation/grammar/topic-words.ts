import type { FactSpecs } from "../../declaration/facts.ts";
import type { Topic } from "../../declaration/topic.ts";
import type { Library } from "../../library.ts";
import { LANGUAGES, type Language } from "../../messages/language.ts";
import { buildPhraseBook, type PhraseBook } from "../../units/phrase-book.ts";
import { type FactMeaning, type FactReader, makeFactReader, type PhraseEntry } from "./fact-reader.ts";
import type { FactWords } from "./fact-words.ts";
import { type KnownWord, knowWords } from "./nearest-words.ts";
import type { NumberedOption } from "./numbered-options.ts";
import { BREAKS, FILLERS, NEGATIONS, NO, OR, YES } from "./trade-words-table.ts";

/** A word that means the same in every topic. */
interface GeneralMeaning {
  readonly as: "not" | "no" | "yes" | "or" | "break" | "filler";
}
/** What a phrase may mean in a request about one topic. */
export type Meaning = FactMeaning | GeneralMeaning;

/** Everything that a request about one topic may contain. */
export interface TopicWords {
  readonly facts: FactSpecs;
  readonly readers: ReadonlyMap<string, FactReader>;
  readonly book: PhraseBook<Meaning>;
  readonly numbered: readonly NumberedOption[];
  /** The fact that the first number is, if the topic has one. */
  readonly first?: string;
  /** Words of the other topics too, so that "mixing valve" is one thing where no topic of this request knows it. */
  readonly elsewhere: PhraseBook<true>;
  /** Words to offer when somebody nearly typed one, by language. */
  readonly offered: Readonly<Record<Language, readonly KnownWord[]>>;
}

const all = (as: GeneralMeaning["as"], words: readonly string[]): readonly PhraseEntry<GeneralMeaning>[] => {
  const meaning: GeneralMeaning = { as };
  return words.map((word) => [word, meaning] as const);
};
/** The words of every topic. One letter is no yes in running text: "y" is the Spanish "and". */
const GENERAL: readonly PhraseEntry<GeneralMeaning>[] = [
  ...all("filler", FILLERS),
  ...all("break", BREAKS),
  ...all("or", OR),
  ...all("not", NEGATIONS),
  ...all("no", NO),
  ...all(
    "yes",
    YES.filter((word) => word.length > 1),
  ),
];

const cache = new WeakMap<Library, ReadonlyMap<string, TopicWords>>();

/** The words of a topic in both languages, made once for each library. */
export function wordsOf(library: Library, topic: Topic): TopicWords {
  const made = cache.get(library) ?? collectAll(library);
  cache.set(library, made);
  const words = made.get(topic.id);
  if (words === undefined) throw new Error(`the library has no topic ${topic.id}`);
  return words;
}

function collectAll(library: Library): ReadonlyMap<string, TopicWords> {
  const topics = [...library.topics.values()].map((topic) => ({ topic, readers: readersOf(library, topic) }));
  const all = topics.flatMap(({ readers }) => readers.flatMap(({ entries }) => entries));
  const elsewhere = buildPhraseBook(all.map(([phrase]) => [phrase, true] as const));
  return new Map(topics.map(({ topic, readers }) => [topic.id, collectWords(library, topic, readers, elsewhere)]));
}

function readersOf(library: Library, topic: Topic): readonly FactReader[] {
  const said = LANGUAGES.map((language) => library.texts[language].topics.get(topic.id)?.facts ?? {});
  return Object.entries(topic.facts).map(([fact, spec]) => {
    const texts = said.flatMap((facts) => facts[fact] ?? []);
    return makeFactReader(fact, spec, texts);
  });
}

function collectWords(
  library: Library,
  topic: Topic,
  readers: readonly FactReader[],
  elsewhere: PhraseBook<true>,
): TopicWords {
  const first = readers.find(({ isFirst }) => isFirst)?.fact;
  // "the wait for hot water": the words of the title carry nothing more.
  const titles = LANGUAGES.flatMap((language) => library.texts[language].topics.get(topic.id)?.title.split(" ") ?? []);
  const offered = (language: Language) => offeredWords(library.texts[language].topics.get(topic.id)?.facts ?? {});
  return {
    facts: topic.facts,
    readers: new Map(readers.map((reader) => [reader.fact, reader])),
    book: buildPhraseBook<Meaning>([
      ...readers.flatMap(({ entries }) => entries),
      ...GENERAL,
      ...all("filler", titles),
    ]),
    numbered: readers.flatMap(({ numbered }) => numbered),
    ...(first !== undefined && { first }),
    elsewhere,
    offered: { en: offered("en"), es: offered("es") },
  };
}

function offeredWords(facts: Readonly<Record<string, FactWords>>): readonly KnownWord[] {
  const words = Object.entries(facts).flatMap(([fact, { words: own, options }]) => [
    ...own,
    ...Object.values(options ?? {}).flatMap((option) => option.words),
    fact,
  ]);
  return knowWords(words);
}
