import type { book } from "../../../topics/book.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof book> = {
  title: "Display code",
  names: ["code", "error code"],
  summary: "What a code on the display means, from the company's own book, and on to the fault.",
  examples: ["book A1 model=hollin-50", "book H2 model=hollin-80"],
  facts: {
    code: {
      label: "Code",
      question: "What does the display show?",
      help: "Letters and digits as they stand there.",
      words: ["display", "shows"],
    },
    model: commonFacts.model,
  },
  results: { entries: "Entries in the book" },
  findings: {
    means: ({ code, meaning }) => `${code}: ${meaning}.`,
    means_by_model: ({ code }) => `${code} means different things, by the model.`,
    entry: ({ model, meaning }) => `${model}: ${meaning}.`,
    manual_decides: () => "The unit's manual has the last word on its codes.",
    not_in_book: ({ code, company }) =>
      `The books of ${company} have no ${code}. Look it up in the manual, and have it added to the book.`,
    unknown_model: ({ typed, nearest }) => `There is no model “${typed}” in the books. Nearest: ${nearest}.`,
    step_find_fault: ({ code }) => `Find the fault behind ${code}`,
  },
};
