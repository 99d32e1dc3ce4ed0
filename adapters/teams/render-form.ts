import type { FormBlock, FormField } from "../../src/messages/card.ts";
import { inputThatShows } from "../../src/messages/field-values.ts";
import type { AdaptiveElement, AdaptiveInput, AdaptiveSubmit } from "./adaptive-card.ts";
import { MOST_LABEL_CHARACTERS } from "./limits.ts";
import { breakLongWords, cutToWidth, isFreeOfMarkdown, paragraphs, plainLine, plainText } from "./plain-text.ts";
import { headingElements } from "./render-text.ts";
import { PROBLEM_SIGN } from "./signs.ts";
import { type Ask, formData } from "./submit-data.ts";

/** Up to this many choices stand open one under the other; more fold into a list. Our own choice. */
const MOST_OPEN_CHOICES = 5;

/** A form with its own send button; `index` tells the fields of two forms of one card apart. */
export function renderForm(form: FormBlock, index: number, ask: Ask | undefined): AdaptiveElement[] {
  const prefix = `f${index}_`;
  const send: AdaptiveSubmit = {
    type: "Action.Submit",
    title: cutToWidth(plainLine(form.submit), MOST_LABEL_CHARACTERS) || "OK",
    style: "positive",
    associatedInputs: "auto",
    data: formData(form, prefix, ask),
  };
  return [
    ...headingElements(form.title),
    ...form.fields.flatMap((field) => renderField(field, prefix)),
    { type: "ActionSet", actions: [send] },
  ];
}

function renderField(field: FormField, prefix: string): AdaptiveElement[] {
  const problem = field.problem
    ? paragraphs(`${PROBLEM_SIGN} ${field.problem}`, { color: "attention", weight: "bolder" }, "medium")
    : [];
  const help = field.help ? paragraphs(field.help, { isSubtle: true, size: "small" }, "small") : [];
  return [...problem, renderInput(field, prefix), ...help];
}

function renderInput(field: FormField, prefix: string): AdaptiveInput {
  const label = breakLongWords(plainLine(field.label) || field.fact);
  const shared = {
    id: `${prefix}${field.fact}`,
    label,
    ...(field.required && {
      isRequired: true as const,
      errorMessage: `${PROBLEM_SIGN} ${field.help ? breakLongWords(plainLine(field.help)) : label}`,
    }),
  };
  const choices = field.input.type === "choice" ? readChoices(field.input.options) : [];
  if (choices.length > 0)
    return {
      type: "Input.ChoiceSet",
      ...shared,
      style: canStandOpen(choices) ? "expanded" : "compact",
      wrap: true,
      choices,
      ...(choices.some(({ value }) => value === field.value) && { value: field.value }),
    };
  const input = inputThatShows(field);
  if (input.type === "day") return { type: "Input.Date", ...shared, ...(field.value && { value: field.value }) };
  if (input.type === "number") {
    const { min, max } = input;
    return {
      type: "Input.Number",
      ...shared,
      ...(min !== undefined && { min }),
      ...(max !== undefined && { max }),
      ...(field.value && { value: Number(field.value) }),
    };
  }
  const placeholder = input.type === "text" && plainLine(input.placeholder ?? "");
  return {
    type: "Input.Text",
    ...shared,
    ...(placeholder && { placeholder }),
    ...(field.value && { value: plainText(field.value) }),
  };
}

interface Choice {
  readonly title: string;
  readonly value: string;
}

/** Choices that stand open are read as Markdown; in a folded list they are not. */
function canStandOpen(choices: readonly Choice[]): boolean {
  return choices.length <= MOST_OPEN_CHOICES && choices.every(({ title }) => isFreeOfMarkdown(title));
}

function readChoices(options: readonly { readonly value: string; readonly label: string }[]): readonly Choice[] {
  return options
    .filter(({ value }) => value !== "")
    .map(({ value, label }) => ({ title: breakLongWords(plainLine(label) || value), value }));
}
