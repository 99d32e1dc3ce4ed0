import type { Button as SlackButton, StaticSelect } from "@slack/types";
import type { Button, QuestionBlock } from "../../src/messages/card.ts";
import type { BlockGroup, Rendered } from "./block-groups.ts";
import { writeAim, writeButtonValue } from "./button-value.ts";
import { chunk, jsonSize } from "./chunk.ts";
import { dayInput } from "./day-input.ts";
import { LIMITS } from "./limits.ts";
import { plainObject } from "./rich-text.ts";

/** What a button belongs to: `answer` to a card that is done with once it is pressed, a question or how far work is; `say` to any other. */
export type ButtonKind = "answer" | "say";
/** Every button that Oldhand offers; one pattern for the listener. */
export const BUTTON_ACTION = /^(?:answer|say)_\d+$/;
/** The button stands in a card that is done with once it is pressed. */
export const ANSWER_ACTION = /^answer_/;

/** Rows of buttons, or a list where there are many; a button whose text does not fit its value is refused, never cut. */
export function renderButtons(buttons: readonly Button[], firstNumber: number, kind: ButtonKind): Rendered {
  const list = renderList(buttons, `${kind}_${firstNumber}`);
  if (list !== undefined) return list;
  const made = buttons.map((button, index) => renderButton(button, `${kind}_${firstNumber + index}`));
  const fit = made.filter((button) => button !== undefined);
  const rows = chunk(fit, { mostItems: LIMITS.actionElements, mostSize: LIMITS.blockSize }, jsonSize);
  return {
    groups: rows.map((elements) => [{ type: "actions", elements: [...elements] }]),
    refused: buttons.filter((_, index) => made[index] === undefined),
  };
}

/** Many answers to one question as a list; which question they are for stands in the id of its block. */
function renderList(buttons: readonly Button[], action: string): Rendered | undefined {
  const [first] = buttons;
  const aim = first?.aim && writeAim(first.aim);
  const isList =
    buttons.length > LIMITS.manyAnswers &&
    buttons.length <= LIMITS.selectOptions &&
    aim !== undefined &&
    buttons.every((button) => mayBeOption(button) && button.aim && writeAim(button.aim) === aim);
  if (!isList) return undefined;
  const options = buttons.map(({ label, say }) => ({ text: plainObject(label, LIMITS.optionText), value: say }));
  const list: StaticSelect = { type: "static_select", action_id: action, options };
  return { groups: [[{ type: "actions", block_id: aim, elements: [list] }]], refused: [] };
}

/** A calendar under a question for a day; to pick a day answers it, as to type it would. */
export function renderDayPick({ aim, value }: NonNullable<QuestionBlock["day"]>, number: number): BlockGroup {
  const block = writeAim(aim);
  return block === undefined
    ? []
    : [{ type: "actions", block_id: block, elements: [dayInput(`answer_${number}`, value)] }];
}

/** What an option says comes back as it is: with one of these marks it would come back with entities. */
function mayBeOption({ label, say }: Button): boolean {
  const isShort = label.length <= LIMITS.optionText && say.length <= LIMITS.optionValue;
  return isShort && label.trim() !== "" && say !== "" && !/[&<>]/.test(say);
}

function renderButton(button: Button, action: string): SlackButton | undefined {
  const value = writeButtonValue(button);
  if (value === undefined) return undefined;
  return {
    type: "button",
    action_id: action,
    text: plainObject(button.label.trim() === "" ? button.say : button.label, LIMITS.buttonText),
    value,
    ...(button.style && { style: button.style }),
  };
}
