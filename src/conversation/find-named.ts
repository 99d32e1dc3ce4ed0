import type { Library } from "../library.ts";
import { LANGUAGES } from "../messages/language.ts";
import type { TopicVoice } from "../messages/voice.ts";
import { foldWords } from "./fold-words.ts";

/** The topic that these words name: its id, or its title in any language. */
export function findTopic(library: Library, words: string): string | undefined {
  const wanted = foldWords(words);
  return [...library.topics.keys()].find((id) =>
    [id, ...LANGUAGES.map((language) => library.texts[language].topics.get(id)?.title ?? id)].some(
      (name) => foldWords(name) === wanted,
    ),
  );
}

/** The fact of a topic that these words name: its id, its label, or a word for it. */
export function findFact({ topic, words }: TopicVoice, named: string): string | undefined {
  const wanted = foldWords(named);
  return Object.keys(topic.facts).find((id) => {
    const fact = words.facts[id];
    return [id, fact?.label ?? id, ...(fact?.words ?? [])].some((name) => foldWords(name) === wanted);
  });
}

/** The result of a topic that these words name: its id or its label. */
export function findResult({ topic, words }: TopicVoice, named: string): string | undefined {
  const wanted = foldWords(named);
  return topic.results.find((id) => [id, words.results[id] ?? id].some((name) => foldWords(name) === wanted));
}
