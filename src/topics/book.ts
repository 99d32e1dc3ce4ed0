import type { Books } from "../books/books.ts";
import { type DisplayCodeEntry, findDisplayCodes, foldCode } from "../books/display-codes.ts";
import { type Answer, type FindingOf, type FindingSpecs, type OutOfRange, q } from "../declaration/answer.ts";
import { commonFacts } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { findModel } from "../equipment/find-model.ts";

const FACTS = {
  code: { type: "text" },
  model: { ...commonFacts.model, optional: true, ask: true },
} as const satisfies FactSpecs;

const FINDINGS = {
  means: { code: "word", meaning: "word" },
  means_by_model: { code: "word" },
  entry: { model: "word", meaning: "word" },
  /** The maker's manual has the last word on its own codes. */
  manual_decides: {},
  not_in_book: { code: "word", company: "word" },
  unknown_model: { typed: "word", nearest: "word" },
  step_find_fault: { code: "word" },
} as const satisfies FindingSpecs;
type F = FindingOf<typeof FINDINGS>;
type Facts = FactsOf<typeof FACTS>;

/** Buttons that a card of codes carries at most. */
const MOST_STEPS = 4;

export const book = declareTopic({
  id: "book",
  work: "short",
  facts: FACTS,
  results: ["entries"],
  findings: FINDINGS,
  compute: (facts, books) => lookUp(facts, books),
});

function lookUp({ code, model }: Facts, books: Books): Answer<"entries", F> | OutOfRange<F> {
  const found = model === undefined ? undefined : findModel(books.catalogue, model);
  if (model !== undefined && found?.ok === false)
    return refuse("model", model, { code: "unknown_model", data: { typed: model, nearest: found.nearest.join(", ") } });
  const entries = findDisplayCodes(books, code, found?.ok ? found.entry.id : undefined);
  const [first, ...others] = entries;
  if (first === undefined)
    return refuse("code", code, { code: "not_in_book", data: { code: foldCode(code), company: books.company.name } });
  const isOneMeaning = others.every(({ meaning }) => meaning === first.meaning);
  return {
    kind: "answer",
    verdict: "info",
    headline: isOneMeaning
      ? { code: "means", data: { code: first.code, meaning: first.meaning } }
      : { code: "means_by_model", data: { code: first.code } },
    results: [
      numberResult(
        "entries",
        q("count", entries.length),
        "n",
        {},
        {
          basis: books.company.isInvented ? "invented" : "published",
          document: `${books.company.name}, books`,
          section: "display codes",
        },
      ),
    ],
    findings: [
      ...(isOneMeaning ? [] : entries.map((entry) => sayEntry(entry, books))),
      { code: "manual_decides", data: {} },
    ],
    next: entries.slice(0, isOneMeaning ? 1 : MOST_STEPS).map((entry) => ({
      say: { code: "step_find_fault", data: { code: entry.code } },
      request: writeRequest("fault", {
        display_code: entry.code,
        ...(model === undefined && isOneMeaning ? {} : { model: entry.model }),
      }),
    })),
  };
}

function sayEntry({ model, meaning }: DisplayCodeEntry, { catalogue }: Books): F {
  const name = catalogue.find(({ id }) => id === model)?.name ?? model;
  return { code: "entry", data: { model: name, meaning } };
}

function refuse(fact: string, value: string, reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}
