import { buildNoticeCard } from "../../src/messages/build-notice-card.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";

const SENTENCES: Readonly<Record<Language, (name: string) => string>> = {
  en: (name) => `This question is for ${name || "somebody else"}. Ask me your own and I will answer you.`,
  es: (name) => `Esta pregunta es para ${name || "otra persona"}. Hágame la suya y le contesto.`,
};

/** Says that a question in a group was asked of somebody else. */
export function notYoursCard(language: Language, name: string): Card {
  return buildNoticeCard("", [SENTENCES[language](name)], [], "problem");
}
