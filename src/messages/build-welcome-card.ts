import { preferenceButtons } from "./build-help-card.ts";
import type { Button, Card, TextBlock } from "./card.ts";
import { examplesOf, type Voice } from "./voice.ts";

const QUESTIONS_TO_TRY = 3;

/** The first thing a person sees: what this is, three questions to try, and the way to language and units. */
export function buildWelcomeCard(
  voice: Voice,
  company: { readonly name: string; readonly isInvented: boolean },
  notes: readonly TextBlock[],
  offers: readonly Button[],
): Card {
  const { common } = voice;
  const questions = firstExamples(voice);
  const invented: TextBlock[] = company.isInvented
    ? [{ kind: "text", tone: "quiet", text: common.inventedCompany(company.name) }]
    : [];
  return {
    title: common.welcomeTitle,
    blocks: [
      ...notes,
      { kind: "text", tone: "plain", text: common.welcome },
      { kind: "text", tone: "plain", text: common.tryOneOf },
      { kind: "buttons", buttons: [...questions.map((text) => ({ label: text, say: text })), ...offers] },
      {
        kind: "buttons",
        buttons: [{ label: common.help, say: common.say.help() }, ...preferenceButtons(voice)],
      },
      ...invented,
    ],
    summary: `${common.welcome} ${common.tryOneOf} ${questions.join(" · ")}`,
  };
}

/** The first example of each of the first topics. */
function firstExamples(voice: Voice): readonly string[] {
  return [...voice.topics.keys()].flatMap((id) => examplesOf(voice, id).slice(0, 1)).slice(0, QUESTIONS_TO_TRY);
}
