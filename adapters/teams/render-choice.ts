import type { Aim, Button, QuestionBlock } from "../../src/messages/card.ts";
import { isDay } from "../../src/messages/field-values.ts";
import type { AdaptiveElement } from "./adaptive-card.ts";
import { MANY_ANSWERS, MOST_SAY_CHARACTERS } from "./limits.ts";
import { breakLongWords, plainLine } from "./plain-text.ts";
import { type Ask, CHOICE_PREFIX, choiceData } from "./submit-data.ts";

/**
 * Many answers to one question as a list, named after the question, with a button that sends the choice.
 * @param index tells the lists of one card apart
 * @returns nothing where they are few, or are not all answers to the same question
 */
export function renderChoice(
  buttons: readonly Button[],
  ask: Ask | undefined,
  index: number,
): readonly AdaptiveElement[] | undefined {
  const aim = aimOfAll(buttons);
  const label = ask?.title;
  const isList =
    buttons.length > MANY_ANSWERS && buttons.every(({ say }) => say !== "" && say.length <= MOST_SAY_CHARACTERS);
  if (ask === undefined || aim === undefined || label === undefined || !isList) return undefined;
  const id = `${CHOICE_PREFIX}${index}`;
  const choices = buttons.map((button) => ({
    title: breakLongWords(plainLine(button.label) || button.say),
    value: button.say,
  }));
  const shared = { id, label: breakLongWords(label), errorMessage: breakLongWords(label) };
  const data = choiceData(id, aim, ask);
  return [
    { type: "Input.ChoiceSet", ...shared, style: "compact", wrap: true, isRequired: true, choices },
    {
      type: "ActionSet",
      actions: [{ type: "Action.Submit", title: "OK", style: "positive", associatedInputs: "auto", data }],
    },
  ];
}

/**
 * A calendar under a question for a day, named after it, with a button that sends the day picked.
 * @param index tells the fields of one card apart
 */
export function renderDayPick(
  { aim, value }: NonNullable<QuestionBlock["day"]>,
  prompt: string,
  ask: Ask,
  index: number,
): readonly AdaptiveElement[] {
  const id = `${CHOICE_PREFIX}${index}`;
  const label = breakLongWords(plainLine(prompt)) || aim.fact;
  const data = choiceData(id, aim, ask);
  return [
    {
      type: "Input.Date",
      id,
      label,
      errorMessage: label,
      isRequired: true,
      ...(value !== undefined && isDay(value) && { value }),
    },
    {
      type: "ActionSet",
      actions: [{ type: "Action.Submit", title: "OK", style: "positive", associatedInputs: "auto", data }],
    },
  ];
}

function aimOfAll([first, ...others]: readonly Button[]): Aim | undefined {
  const aim = first?.aim;
  const isShared = others.every((one) => one.aim?.walk === aim?.walk && one.aim?.fact === aim?.fact);
  return isShared ? aim : undefined;
}
