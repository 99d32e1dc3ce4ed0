import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { renderCard } from "../../adapters/slack/render-card.ts";
import { renderModal } from "../../adapters/slack/render-modal.ts";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import { renderAdaptive } from "../../adapters/teams/render-adaptive.ts";
import type { Card } from "../../src/messages/card.ts";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import { COMMON } from "../../src/messages/voice.ts";
import { judgeMessage, judgeModal } from "../slack/block-kit-judge.ts";
import { library } from "../support/ask-library.ts";
import { type JobDesk, openJobDesk, TEAM_BOOKS } from "../support/job-desk.ts";
import { buttonsOf, promptOf } from "../support/talk.ts";
import { CardJudge } from "../teams/card-judge.ts";

let judge: CardJudge;
beforeAll(async () => {
  judge = await CardJudge.start();
});
afterAll(async () => {
  await judge.stop();
});

/** Long work is judged by its reviewed cards. */
const SHORT = [...library.topics.values()].filter(({ work }) => work === "short").map(({ id }) => id);
const MOST_QUESTIONS = 60;
/** What only a person can say, typed where no button can offer it. */
const TYPED: Readonly<Record<string, string>> = { complaint: "no hot water", code: "A1", day: "2026-11-30" };
const STEERING = LANGUAGES.flatMap((language) => Object.values(COMMON[language].say)).filter(
  (say) => typeof say === "string",
);

/** Every card that a person meets who asks for a topic, answers by the first button, and asks how it was got. */
async function walk(desk: JobDesk, topic: string, conversation: string): Promise<readonly Card[]> {
  const cards = [await desk.say(topic, undefined, conversation)];
  for (let at = 0; at < MOST_QUESTIONS; at += 1) {
    const card = cards.at(-1);
    if (card === undefined || promptOf(card) === undefined) break;
    const [first] = buttonsOf(card).filter(({ say, aim }) => aim !== undefined && !STEERING.includes(say));
    const fact = first?.aim?.fact ?? "";
    cards.push(
      first === undefined
        ? await desk.say(TYPED[fact] ?? "2026-11-30", undefined, conversation)
        : await desk.press(first, undefined, conversation),
    );
  }
  for (const asked of ["how", `form ${topic}`, `help ${topic}`])
    cards.push(await desk.say(asked, undefined, conversation));
  return cards;
}

async function collect(language: Language, topic: string): Promise<readonly Card[]> {
  const desk = openJobDesk(TEAM_BOOKS, { openSolver: openHighsSolver });
  await desk.say(`language ${language}`);
  const alone = await walk(desk, topic, "alone");
  await desk.say("job new customer=TM town=Ostrowick day=2026-11-25", undefined, "job");
  const ofJob = await walk(desk, topic, "job");
  expect(desk.faults).toEqual([]);
  return [...new Map([...alone, ...ofJob].map((card) => [JSON.stringify(card.blocks), card])).values()];
}

describe.each(LANGUAGES)("in %s", (language) => {
  test.each(SHORT)("every card of %s fits both platforms", { timeout: 120_000 }, async (topic) => {
    const cards = await collect(language, topic);
    expect(cards.length).toBeGreaterThan(3);
    for (const card of cards) {
      const { messages, refused } = renderCard(card);
      expect(refused, card.title).toEqual([]);
      for (const message of messages) expect(judgeMessage(message), card.title).toEqual([]);
      const form = card.blocks.find((block) => block.kind === "form");
      if (form !== undefined) expect(judgeModal(renderModal(card, form, "{}")), card.title).toEqual([]);
      for (const width of [320, 640])
        for (const { card: adaptive } of renderAdaptive(card, { language })) {
          const { complaints, unknownProperties, cutOff } = await judge.judge(adaptive, width);
          expect({ complaints, unknownProperties, cutOff }, card.title).toEqual({
            complaints: [],
            unknownProperties: [],
            cutOff: [],
          });
        }
    }
  });
});
