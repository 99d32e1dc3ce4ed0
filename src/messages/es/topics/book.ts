import type { book } from "../../../topics/book.ts";
import type { TopicTexts } from "../../topic-texts.ts";
import { commonFacts } from "../common-facts.ts";

export const texts: TopicTexts<typeof book> = {
  title: "Código de pantalla",
  names: ["código", "código de error", "libro"],
  summary: "Qué quiere decir un código de la pantalla, según el libro de la empresa, y de ahí a la falla.",
  examples: ["código A1 model=hollin-50", "código H2 model=hollin-80"],
  facts: {
    code: {
      label: "Código",
      question: "¿Qué muestra la pantalla?",
      help: "Letras y números tal como están.",
      words: ["pantalla", "muestra"],
    },
    model: commonFacts.model,
  },
  results: { entries: "Entradas en el libro" },
  findings: {
    means: ({ code, meaning }) => `${code}: ${meaning}.`,
    means_by_model: ({ code }) => `${code} quiere decir cosas distintas, según el modelo.`,
    entry: ({ model, meaning }) => `${model}: ${meaning}.`,
    manual_decides: () => "Sobre sus códigos decide el manual del equipo.",
    not_in_book: ({ code, company }) =>
      `Los libros de ${company} no tienen ${code}. Búsquelo en el manual y pida que lo agreguen.`,
    unknown_model: ({ typed, nearest }) => `No hay modelo “${typed}” en los libros. Los más parecidos: ${nearest}.`,
    step_find_fault: ({ code }) => `Buscar la falla detrás de ${code}`,
  },
};
