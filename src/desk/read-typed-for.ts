import { type Books, listNames, type ReadTyped, type TypedFor } from "../books/books.ts";
import { makeFactReader } from "../conversation/grammar/fact-reader.ts";
import { decimalMark, readTyped } from "../conversation/grammar/read-typed.ts";
import type { Topic } from "../declaration/topic.ts";
import { keptAs } from "../jobs/shared-facts.ts";
import type { Library } from "../library.ts";
import { LANGUAGES } from "../messages/language.ts";
import type { Reader } from "../messages/voice.ts";
import { parseQuantity } from "../units/parse-quantity.ts";

/** Reads values as this reader types them: facts by the words of the topic that they were told to, in both languages. */
export function readTypedFor(library: Library, reader: Reader, books: Books): ReadTyped {
  const { units, language } = reader;
  return (about, text) => {
    if ("quantity" in about) {
      const read = parseQuantity(text, about.quantity, { units, decimal: decimalMark(language) });
      return read.ok ? read.value : undefined;
    }
    const found = findFact(library, about);
    const spec = found && library.topics.get(found.topic)?.facts[found.fact];
    if (found === undefined || spec === undefined) return undefined;
    const texts = LANGUAGES.flatMap((one) => library.texts[one].topics.get(found.topic)?.facts[found.fact] ?? []);
    const read = readTyped(text, makeFactReader(found.fact, spec, texts), { ...reader, names: listNames(books) });
    if (!read.ok) return undefined;
    if (spec.type === "quantity" && !(Number(read.value) >= spec.min && Number(read.value) <= spec.max))
      return undefined;
    return read.value;
  };
}

/** The fact behind the id that jobs keep it by, in the topic it was told to, else in any other. */
function findFact(
  { topics }: Library,
  { topic, fact }: Extract<TypedFor, { readonly topic: string }>,
): { readonly topic: string; readonly fact: string } | undefined {
  const told = topics.get(topic);
  for (const one of [...(told === undefined ? [] : [told]), ...topics.values()]) {
    const own = ownName(one, fact);
    if (own !== undefined) return { topic: one.id, fact: own };
  }
  return undefined;
}

function ownName({ id, facts }: Topic, kept: string): string | undefined {
  return Object.keys(facts).find((one) => one === kept || keptAs(id, one) === kept);
}
