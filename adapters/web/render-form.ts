import type { FormBlock, FormField, NumberInput } from "../../src/messages/card.ts";
import { inputThatShows } from "../../src/messages/field-values.ts";
import { html, type SafeHtml } from "./html.ts";
import type { Place } from "./place.ts";

/** With more options than this a list that opens is quicker than buttons in a column. */
const MOST_RADIOS = 4;

/** All the facts of one topic as a form; the page sends back what stands in each field. */
export function renderForm(block: FormBlock, place: Place): SafeHtml {
  const fields = block.fields.map((field, index) => renderField(field, { ...place, id: `${place.id}-${index}` }));
  return html`<form class="facts" data-topic="${block.topic}" aria-labelledby="${place.id}-title" autocomplete="off">
<h3 class="block-heading" id="${place.id}-title" dir="auto">${block.title}</h3>
${fields}
<button type="submit" class="button button-primary"><span dir="auto">${block.submit}</span></button>
</form>`;
}

function renderField(field: FormField, place: Place): SafeHtml {
  const { id, texts } = place;
  const help =
    field.help === undefined ? undefined : html`<p class="field-help" id="${id}-help" dir="auto">${field.help}</p>`;
  const problem =
    field.problem === undefined
      ? undefined
      : html`<p class="field-problem" id="${id}-problem" dir="auto">${field.problem}</p>`;
  const needed = field.required ? html` <span class="field-needed">(${texts.needed})</span>` : undefined;
  if (field.input.type === "choice" && field.input.options.length <= MOST_RADIOS)
    return html`<fieldset class="field" role="radiogroup"${invalidMark(field)}${describedBy(field, id)}>
<legend><span dir="auto">${field.label}</span>${needed}</legend>
${help}
${problem}
${renderRadios(field, field.input.options, place)}
</fieldset>`;
  return html`<div class="field">
<label for="${id}"><span dir="auto">${field.label}</span>${needed}</label>
${help}
${problem}
${renderControl(field, place)}
</div>`;
}

function renderControl(field: FormField, place: Place): SafeHtml {
  const input = inputThatShows(field);
  switch (input.type) {
    case "choice":
      return renderSelect(field, input.options, place);
    case "day":
      return renderDay(field, place.id);
    case "number":
      return renderNumber(field, input, place.id);
    case "text":
      return renderInput(field, input.placeholder, place.id);
  }
}

function describedBy(field: FormField, id: string): SafeHtml | undefined {
  const problem = field.problem === undefined ? [] : [`${id}-problem`];
  const described = field.help === undefined ? problem : [...problem, `${id}-help`];
  return described.length === 0 ? undefined : html` aria-describedby="${described.join(" ")}"`;
}

function invalidMark({ problem }: FormField): SafeHtml | undefined {
  return problem === undefined ? undefined : html` aria-invalid="true"`;
}

function marks(field: FormField, id: string): SafeHtml {
  const required = field.required ? html` required` : undefined;
  return html`${required}${invalidMark(field)}${describedBy(field, id)}`;
}

function renderInput(field: FormField, placeholder: string | undefined, id: string): SafeHtml {
  const hint = placeholder === undefined ? undefined : html` placeholder="${placeholder}"`;
  return html`<input type="text" class="input" id="${id}" name="${field.fact}" value="${field.value ?? ""}"${hint} dir="auto" autocapitalize="off" spellcheck="false"${marks(field, id)}>`;
}

function renderDay(field: FormField, id: string): SafeHtml {
  return html`<input type="date" class="input" id="${id}" name="${field.fact}" value="${field.value ?? ""}"${marks(field, id)}>`;
}

function renderNumber(field: FormField, { min, max, whole }: NumberInput, id: string): SafeHtml {
  const least = min === undefined ? undefined : html` min="${String(min)}"`;
  const most = max === undefined ? undefined : html` max="${String(max)}"`;
  return html`<input type="number" class="input" id="${id}" name="${field.fact}" value="${field.value ?? ""}" step="${whole ? "1" : "any"}"${least}${most}${marks(field, id)}>`;
}

type Options = readonly { readonly value: string; readonly label: string }[];

/** A list always shows something: while nothing is chosen that is "not known", and never the first option unasked. */
function renderSelect(field: FormField, options: Options, { id, texts }: Place): SafeHtml {
  const isChosen = options.some(({ value }) => value === field.value);
  const blank = field.required && isChosen ? [] : [{ value: "", label: texts.notSaid }];
  const list = [...blank, ...options].map(
    ({ value, label }) =>
      html`<option value="${value}"${(isChosen ? value === field.value : value === "") ? html` selected` : undefined}>${label}</option>`,
  );
  return html`<select class="input" id="${id}" name="${field.fact}"${marks(field, id)}>${list}</select>`;
}

function renderRadios(field: FormField, options: Options, { id, texts }: Place): SafeHtml {
  const isKnown = options.some(({ value }) => value === field.value);
  const blank = field.required ? [] : [{ value: "", label: texts.notSaid }];
  const radios = [...options, ...blank].map(({ value, label }, index) => {
    const isChosen = isKnown ? value === field.value : value === "";
    return html`<label class="radio" for="${id}-${index}"><input type="radio" id="${id}-${index}" name="${field.fact}" value="${value}"${isChosen ? html` checked` : undefined}${field.required ? html` required` : undefined}><span dir="auto">${label}</span></label>`;
  });
  return html`<div class="radios">${radios}</div>`;
}
