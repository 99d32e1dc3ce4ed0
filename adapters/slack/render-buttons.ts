import type { Button as SlackButton } from "@slack/types";
import type { Button } from "../../src/messages/card.ts";
import type { Rendered } from "./block-groups.ts";
import { writeButtonValue } from "./button-value.ts";
import { chunk, jsonSize } from "./chunk.ts";
import { LIMITS } from "./limits.ts";
import { plainObject } from "./rich-text.ts";

/** What a button belongs to: `answer` to a card that is done with once it is pressed, a question or how far work is; `say` to any other. */
export type ButtonKind = "answer" | "say";
/** Every button that Oldhand offers; one pattern for the listener. */
export const BUTTON_ACTION = /^(?:answer|say)_\d+$/;
/** The button stands in a card that is done with once it is pressed. */
export const ANSWER_ACTION = /^answer_/;

/** Rows of buttons; a button whose text does not fit into its value is refused, never cut. */
export function renderButtons(buttons: readonly Button[], firstNumber: number, kind: ButtonKind): Rendered {
  const made = buttons.map((button, index) => renderButton(button, `${kind}_${firstNumber + index}`));
  const fit = made.filter((button) => button !== undefined);
  const rows = chunk(fit, { mostItems: LIMITS.actionElements, mostSize: LIMITS.blockSize }, jsonSize);
  return {
    groups: rows.map((elements) => [{ type: "actions", elements: [...elements] }]),
    refused: buttons.filter((_, index) => made[index] === undefined),
  };
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
