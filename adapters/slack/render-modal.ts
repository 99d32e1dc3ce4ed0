import type { InputBlock, KnownBlock, ModalView, PlainTextOption, NumberInput as SlackNumber } from "@slack/types";
import type { Block, Card, FormBlock, FormField, NumberInput } from "../../src/messages/card.ts";
import { inputThatShows } from "../../src/messages/field-values.ts";
import { dayInput } from "./day-input.ts";
import { LIMITS } from "./limits.ts";
import { renderAll } from "./render-card.ts";
import { forView } from "./render-home.ts";
import { plain, plainObject, richParagraphs } from "./rich-text.ts";
import { PROBLEM_SHAPE } from "./shapes.ts";
import { fitRaw, splitText } from "./slack-text.ts";

/** Names the modal of every form; which topic it is for stands in its private metadata. */
export const FORM_CALLBACK = "form";
/** The one input of each block; the block is named after the fact. */
export const FIELD_ACTION = "value";

/**
 * A topic's form as a modal, with what else the card says above it.
 * @param metadata comes back when the form is sent; at most 3,000 characters, or Slack refuses the modal
 */
export function renderModal(card: Card, form: FormBlock, metadata: string): ModalView {
  const heading: Block = { kind: "text", tone: "heading", text: form.title };
  const fields = form.fields.flatMap(renderField).slice(0, LIMITS.viewBlocks);
  const above = renderAll([heading, ...card.blocks.filter(isShown).flatMap(forView)], card.title);
  const room = LIMITS.viewBlocks - fields.length;
  return {
    type: "modal",
    callback_id: FORM_CALLBACK,
    private_metadata: metadata,
    title: plainObject(card.title, LIMITS.viewTitle),
    submit: plainObject(form.submit, LIMITS.viewTitle),
    blocks: [...above.groups.flat().slice(0, room), ...fields],
  };
}

/** Buttons of a message do nothing in a modal, and the form itself is its fields. */
function isShown({ kind }: Block): boolean {
  return kind !== "form" && kind !== "buttons";
}

function renderField(field: FormField): readonly KnownBlock[] {
  const problem =
    field.problem === undefined
      ? []
      : richParagraphs(fitRaw(`${PROBLEM_SHAPE} ${field.problem}`, LIMITS.fieldError), plain);
  const hint = field.help === undefined ? {} : { hint: plainObject(field.help, LIMITS.inputHint) };
  const input: InputBlock = {
    type: "input",
    block_id: field.fact,
    optional: !field.required,
    label: plainObject(field.label, LIMITS.inputLabel),
    element: renderInput(field),
    ...hint,
  };
  return [...problem, input];
}

function renderInput(field: FormField): InputBlock["element"] {
  const { value } = field;
  const input = inputThatShows(field);
  if (input.type === "text") return textInput(value, input.placeholder);
  if (input.type === "day") return dayInput(FIELD_ACTION, value);
  if (input.type === "number") return numberInput(input, value);
  const options = input.options.map(renderOption);
  const isChoosable =
    options.length > 0 &&
    options.length <= LIMITS.selectOptions &&
    input.options.every((option) => option.value.length <= LIMITS.optionValue);
  if (!isChoosable) return textInput(value, undefined);
  const chosen = options.find((option) => option.value === value);
  const type = options.length <= LIMITS.fewOptions ? "radio_buttons" : "static_select";
  return { type, action_id: FIELD_ACTION, options, ...(chosen && { initial_option: chosen }) };
}

/** Slack checks the range itself, and takes no field whose ends are in the wrong order. */
function numberInput({ min, max, whole }: NumberInput, value: string | undefined): SlackNumber {
  const hasRange = min === undefined || max === undefined || min <= max;
  return {
    type: "number_input",
    action_id: FIELD_ACTION,
    is_decimal_allowed: whole !== true,
    ...(hasRange && min !== undefined && { min_value: String(min) }),
    ...(hasRange && max !== undefined && { max_value: String(max) }),
    ...(value !== undefined && value !== "" && { initial_value: value }),
  };
}

function textInput(value: string | undefined, placeholder: string | undefined): InputBlock["element"] {
  const line = value?.replaceAll("\n", " ").trim() ?? "";
  const [initial] = line === "" ? [] : splitText(line, LIMITS.inputText, false);
  return {
    type: "plain_text_input",
    action_id: FIELD_ACTION,
    max_length: LIMITS.inputText,
    ...(initial !== undefined && { initial_value: initial }),
    ...(placeholder !== undefined && { placeholder: plainObject(placeholder, LIMITS.placeholder) }),
  };
}

function renderOption({ value, label }: { readonly value: string; readonly label: string }): PlainTextOption {
  return { text: plainObject(label, LIMITS.optionText), value };
}
