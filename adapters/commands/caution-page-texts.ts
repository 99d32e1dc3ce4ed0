import type { Bound, CodeArea } from "../../src/cautions/code.ts";
import type { Language } from "../../src/messages/language.ts";

interface CautionPageTexts {
  readonly title: string;
  readonly intro: string;
  readonly adopted: string;
  readonly assumed: string;
  readonly area: string;
  readonly code: string;
  readonly areas: Readonly<Record<CodeArea, string>>;
  readonly limits: string;
  readonly limit: string;
  readonly value: string;
  readonly followed: string;
  readonly others: string;
  readonly bounds: Readonly<Record<Bound, (value: string) => string>>;
  readonly cautions: (count: number) => string;
  readonly document: string;
  readonly basis: string;
  readonly checkedOn: string;
  readonly fires: string;
  readonly silent: string;
}

/** The words of the page of cautions. */
export const CAUTION_PAGE_TEXTS: Readonly<Record<Language, CautionPageTexts>> = {
  en: {
    title: "Cautions",
    intro:
      "Every caution in our own words, as it reads in one example of its own. Local code, the authority having " +
      "jurisdiction and licensed people decide; a caution that stays silent is no proof that a job is right.",
    adopted: "Code at the company's own place",
    assumed: "The company has not said what was adopted; these model codes are taken.",
    area: "For",
    code: "Code",
    areas: { plumbing: "Plumbing", electrical: "Electrical", mechanical: "Mechanical" },
    limits: "Numbers that codes set",
    limit: "Limit",
    value: "Value",
    followed: "Followed",
    others: "Others that differ",
    bounds: { at_most: (value) => `at most ${value}`, at_least: (value) => `at least ${value}` },
    cautions: (count) => `${count} cautions, worst first`,
    document: "Document",
    basis: "How sure",
    checkedOn: "Looked at",
    fires: "Raised by",
    silent: "Silent for",
  },
  es: {
    title: "Advertencias",
    intro:
      "Cada advertencia con palabras propias, como se lee en uno de sus ejemplos. Deciden el código local, la autoridad " +
      "competente y el personal con licencia; que una advertencia calle no prueba que el trabajo esté bien.",
    adopted: "Código en el lugar de la compañía",
    assumed: "La compañía no ha dicho qué se adoptó; se toman estos códigos modelo.",
    area: "Para",
    code: "Código",
    areas: { plumbing: "Plomería", electrical: "Electricidad", mechanical: "Mecánica" },
    limits: "Números que fijan los códigos",
    limit: "Límite",
    value: "Valor",
    followed: "Se sigue",
    others: "Otros que difieren",
    bounds: { at_most: (value) => `máximo ${value}`, at_least: (value) => `mínimo ${value}` },
    cautions: (count) => `${count} advertencias, de la más grave a la menos`,
    document: "Documento",
    basis: "Qué tan seguro",
    checkedOn: "Visto el",
    fires: "La dan",
    silent: "Calla con",
  },
};
