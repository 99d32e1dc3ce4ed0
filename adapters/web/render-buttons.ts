import type { Button, ButtonsBlock, QuestionBlock } from "../../src/messages/card.ts";
import { html, type SafeHtml } from "./html.ts";
import type { Place } from "./place.ts";

/** More answers than this become a list that opens, so that a thumb need not travel past them. */
const MANY_ANSWERS = 15;

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
${question.day && renderDayPick(question.day, question.prompt, { id, texts })}${answers && (renderList(answers.buttons, question.prompt, { id, texts }) ?? renderButtons(answers, { id, texts }))}
</div>`;
}

/** A calendar that opens, with a button that sends the day picked. */
function renderDayPick(
  { aim, value }: NonNullable<QuestionBlock["day"]>,
  prompt: string,
  { id, texts }: Place,
): SafeHtml {
  return html`<div class="choice">
<label class="unseen" for="${id}-day" dir="auto">${prompt}</label>
<input type="date" class="input" id="${id}-day" value="${value ?? ""}" autocomplete="off">
<button type="button" class="button button-primary" data-choice="${id}-day" data-walk="${aim.walk}" data-fact="${aim.fact}"><span>${texts.sendChoice}</span></button>
</div>`;
}

/** Many answers to one question as a list with a button that sends the one picked. */
function renderList(buttons: readonly Button[], prompt: string, { id, texts }: Place): SafeHtml | undefined {
  const aim = buttons[0]?.aim;
  const isShared = buttons.every((one) => one.aim?.walk === aim?.walk && one.aim?.fact === aim?.fact && one.say !== "");
  if (buttons.length <= MANY_ANSWERS || aim === undefined || !isShared) return undefined;
  const options = buttons.map(({ label, say }) => html`<option value="${say}">${label}</option>`);
  return html`<div class="choice">
<label class="unseen" for="${id}-choice" dir="auto">${prompt}</label>
<select class="input" id="${id}-choice" autocomplete="off"><option value="" selected>${texts.pickOne}</option>${options}</select>
<button type="button" class="button button-primary" data-choice="${id}-choice" data-walk="${aim.walk}" data-fact="${aim.fact}"><span>${texts.sendChoice}</span></button>
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
