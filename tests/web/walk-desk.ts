import type { Inbound } from "../../src/desk.ts";
import type { Card } from "../../src/messages/card.ts";
import { noteCard, ScriptedDesk } from "./scripted-desk.ts";

const QUESTIONS = [
  { fact: "tank", prompt: "How big is the tank?", answers: ["50 gal", "80 gal"] },
  { fact: "cold", prompt: "How cold is the incoming water?", answers: ["40 °F", "50 °F"] },
] as const;

function questionCard(at: number): Card {
  const { fact, prompt, answers } = QUESTIONS[at] ?? QUESTIONS[0];
  return {
    title: "Expansion tank",
    summary: `Question ${at + 1} of 2: ${prompt}`,
    blocks: [
      { kind: "question", prompt, progress: `${at + 1} of 2` },
      { kind: "buttons", buttons: answers.map((label) => ({ label, say: label, aim: { walk: "w1", fact } })) },
    ],
  };
}

/** A desk that asks two questions, by words or by buttons, and then answers; the figures are invented. */
export function walkDesk(): ScriptedDesk {
  const given: string[] = [];
  return new ScriptedDesk((inbound: Inbound) => {
    if (inbound.text === "expansion") return questionCard(0);
    given.push(inbound.text);
    if (given.length < QUESTIONS.length) return questionCard(given.length);
    return {
      verdict: { kind: "good", word: "Good" },
      title: "Expansion tank",
      summary: `Good: for ${given.join(" and ")} take 4.5 gal.`,
      blocks: [{ kind: "headline", text: `4.5 gal for ${given.join(" and ")}` }],
    };
  });
}

/** A desk that answers "form" with a form of two fields, and a sent form with what was in it. */
export function formDesk(): ScriptedDesk {
  return new ScriptedDesk((inbound) => {
    const fields = inbound.form?.fields;
    if (fields && fields["run"] !== "60 apples") return noteCard(`Run ${fields["run"]} at ${fields["supply"]}`);
    const problem = fields && { value: fields["run"] ?? "", problem: "I could not read “60 apples” as a length." };
    return {
      title: "Circuit",
      summary: "Form: circuit.",
      blocks: [
        {
          kind: "form",
          topic: "circuit",
          title: "Electric circuit",
          submit: "Work it out",
          fields: [
            { fact: "run", label: "Length of the run", required: true, input: { type: "text" }, ...problem },
            {
              fact: "supply",
              label: "Supply",
              required: true,
              ...(fields && { value: fields["supply"] ?? "" }),
              input: { type: "choice", options: ["208", "240"].map((value) => ({ value, label: `${value} V` })) },
            },
          ],
        },
      ],
    };
  });
}
