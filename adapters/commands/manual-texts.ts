import type { Language } from "../../src/messages/language.ts";

interface ManualTexts {
  readonly title: string;
  readonly intro: string;
  readonly facts: string;
  readonly results: string;
  readonly cautions: string;
  readonly cautionsIntro: string;
  readonly id: string;
  readonly meaning: string;
  readonly allowed: string;
  readonly unsaid: string;
  readonly words: string;
}

/** The words of the manual that belong to no topic. */
export const MANUAL_TEXTS: Readonly<Record<Language, ManualTexts>> = {
  en: {
    title: "What Oldhand answers",
    intro:
      "Local code, the authority having jurisdiction and licensed people decide; an answer never replaces them. " +
      "The ids in the first column are the ones that scripts read, and they stay as they are.",
    facts: "What it goes by",
    results: "What it gives",
    cautions: "Cautions",
    cautionsIntro: "Each as it reads in one example of its own.",
    id: "Id",
    meaning: "What it is",
    allowed: "From, to",
    unsaid: "When it is not said",
    words: "Words for it",
  },
  es: {
    title: "Lo que Oldhand responde",
    intro:
      "Deciden el código local, la autoridad competente y el personal con licencia; una respuesta nunca los reemplaza. " +
      "Los identificadores de la primera columna son los que leen los programas, y no cambian.",
    facts: "Con qué cuenta",
    results: "Qué da",
    cautions: "Advertencias",
    cautionsIntro: "Cada una como se lee en uno de sus propios ejemplos.",
    id: "Id",
    meaning: "Qué es",
    allowed: "De, a",
    unsaid: "Si no se dice",
    words: "Palabras",
  },
};
