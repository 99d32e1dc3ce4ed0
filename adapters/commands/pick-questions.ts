import type { Library } from "../../src/library.ts";
import type { Language } from "../../src/messages/language.ts";

const HOW_MANY = 3;
/** Topics whose example shows most at first sight; others step in where one is missing. */
const FIRST = ["expansion", "mix", "circuit"];

/** Three questions to try: the first example of three topics. */
export function pickQuestions(library: Library, language: Language): readonly string[] {
  const texts = library.texts[language].topics;
  const ids = [...FIRST.filter((id) => texts.has(id)), ...[...texts.keys()].filter((id) => !FIRST.includes(id))];
  return ids.slice(0, HOW_MANY).flatMap((id) => texts.get(id)?.examples[0] ?? []);
}

/** What to type for the day's work, where there is a topic that answers it. */
export function pickToday({ topics }: Library): { readonly today?: Readonly<Record<Language, string>> } {
  return topics.has("today") ? { today: { en: "today", es: "hoy" } } : {};
}
