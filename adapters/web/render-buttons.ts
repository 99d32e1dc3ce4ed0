import type { Button, ButtonsBlock, QuestionBlock } from "../../src/messages/card.ts";
import { html, type SafeHtml } from "./html.ts";
import type { Place } from "./place.ts";

/** A guided question and the answers offered for it, as one named group. */
export function renderQuestion(
  question: QuestionBlock,
  answers: ButtonsBlock | undefined,
  { id, texts }: Place,
): SafeHtml {
  const described = question.help === undefined ? undefined : html` aria-describedby="${id}-help"`;
  return html`<div class="question" role="group" aria-labelledby="${id}-prompt"${described}>
${question.progress === undefined ? undefined : html`<p class="question-progress" dir="auto">${question.progress}</p>`}
<h3 class="question-prompt" id="${id}-prompt" dir="auto">${question.prompt}</h3>
${question.help === undefined ? undefined : html`<p class="question-help" id="${id}-help" dir="auto">${question.help}</p>`}
${answers ? html`<ul class="buttons" role="list" aria-label="${texts.choices}">${answers.buttons.map(renderButton)}</ul>` : undefined}
</div>`;
}

/** Buttons outside a question. */
export function renderButtons(block: ButtonsBlock, { texts }: Place): SafeHtml {
  return html`<ul class="buttons" role="list" aria-label="${texts.choices}">${block.buttons.map(renderButton)}</ul>`;
}

function renderButton({ label, say, aim, style }: Button): SafeHtml {
  const aimed = aim && html` data-walk="${aim.walk}" data-fact="${aim.fact}"`;
  return html`<li><button type="button" class="button button-${style ?? "plain"}" data-say="${say}"${aimed}><span dir="auto">${label}</span></button></li>`;
}
