import type { AnyCaution } from "../../src/cautions/caution.ts";
import type { Topic } from "../../src/declaration/topic.ts";
import type { AnyTopicTexts } from "../../src/messages/topic-texts.ts";

/** Whether the sentences of a topic are exactly those that its declaration asks for. */
export function checkTopicTexts(topic: Topic, texts: AnyTopicTexts): readonly string[] {
  return [
    ...compare("fact", Object.keys(topic.facts), Object.keys(texts.facts)),
    ...compare("result", topic.results, Object.keys(texts.results)),
    ...compare("finding", Object.keys(topic.findings), Object.keys(texts.findings)),
    ...compareColumns("table", topic.tables ?? {}, texts.tables ?? {}),
    ...compareColumns("chart", topic.charts ?? {}, texts.charts ?? {}),
    ...Object.entries(topic.facts).flatMap(([id, spec]) => {
      const options = spec.type === "choice" ? spec.options : [];
      return compare(`option of fact ${id}`, options, Object.keys(texts.facts[id]?.options ?? {}));
    }),
    ...Object.entries(texts.facts).flatMap(([id, { words }]) =>
      words
        .filter((word) => word !== word.toLowerCase())
        .map((word) => `fact ${id}: "${word}" is not in small letters`),
    ),
  ];
}

/** What the compiler cannot see in a caution's declaration. */
export function checkCaution(caution: AnyCaution, name: string): readonly string[] {
  return caution.id === name.replaceAll("-", "_") ? [] : [`its id is "${caution.id}", but the file is called ${name}`];
}

type Columns = Readonly<Record<string, readonly string[]>>;
type Titled = Readonly<Record<string, { readonly columns: Readonly<Record<string, string>> }>>;

function compareColumns(what: string, declared: Columns, written: Titled): readonly string[] {
  return [
    ...compare(what, Object.keys(declared), Object.keys(written)),
    ...Object.entries(declared).flatMap(([id, columns]) =>
      compare(`column of ${what} ${id}`, columns, Object.keys(written[id]?.columns ?? {})),
    ),
  ];
}

function compare(what: string, declared: readonly string[], written: readonly string[]): readonly string[] {
  return [
    ...declared.filter((id) => !written.includes(id)).map((id) => `the words for ${what} "${id}" are missing`),
    ...written.filter((id) => !declared.includes(id)).map((id) => `there are words for ${what} "${id}", not declared`),
  ];
}
