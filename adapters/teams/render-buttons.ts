import type { Button } from "../../src/messages/card.ts";
import type { AdaptiveActions, AdaptiveElement, AdaptiveSubmit } from "./adaptive-card.ts";
import {
  BUTTON_EDGE_CHARACTERS,
  MOST_BUTTONS_IN_A_ROW,
  MOST_LABEL_CHARACTERS,
  MOST_ROW_CHARACTERS,
  MOST_SAY_CHARACTERS,
} from "./limits.ts";
import { cutToWidth, paragraphs, plainLine, widthOf } from "./plain-text.ts";
import { type Ask, buttonData } from "./submit-data.ts";

/**
 * Buttons in rows that fit a phone. A label too long for its button stands above it as well, and a request too long for
 * a button is shown as the text to type.
 */
export function renderButtons(buttons: readonly Button[], ask: Ask | undefined): AdaptiveElement[] {
  const elements: AdaptiveElement[] = [];
  let row: AdaptiveSubmit[] = [];
  const endRow = () => {
    elements.push(...packRows(row));
    row = [];
  };
  for (const button of buttons) {
    const isLong = widthOf(labelOf(button)) > MOST_LABEL_CHARACTERS;
    if (isLong) endRow();
    if (isLong) elements.push(...paragraphs(labelOf(button), {}, "medium"));
    if (button.say.length > MOST_SAY_CHARACTERS) elements.push(...paragraphs(button.say));
    else row.push(renderButton(button, ask));
    if (isLong) endRow();
  }
  endRow();
  return elements;
}

function renderButton(button: Button, ask: Ask | undefined): AdaptiveSubmit {
  return {
    type: "Action.Submit",
    title: cutToWidth(labelOf(button), MOST_LABEL_CHARACTERS),
    ...(button.style && { style: button.style === "danger" ? "destructive" : "positive" }),
    associatedInputs: "none",
    data: buttonData(button, ask),
  };
}

function labelOf(button: Button): string {
  return plainLine(button.label) || plainLine(button.say) || "…";
}

function packRows(actions: readonly AdaptiveSubmit[]): AdaptiveActions[] {
  const rows: AdaptiveSubmit[][] = [];
  let room = 0;
  for (const action of actions) {
    const width = widthOf(action.title) + BUTTON_EDGE_CHARACTERS;
    const row = rows.at(-1);
    if (row && row.length < MOST_BUTTONS_IN_A_ROW && width <= room) {
      row.push(action);
      room -= width;
    } else {
      rows.push([action]);
      room = MOST_ROW_CHARACTERS - width;
    }
  }
  return rows.map((row) => ({ type: "ActionSet", actions: row }));
}
