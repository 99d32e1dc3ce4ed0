import type { Language } from "../../src/messages/language.ts";
import type { AdaptiveElement, AdaptiveInput, AdaptiveRichText } from "./adaptive-card.ts";
import { plainLine, run } from "./plain-text.ts";
import type { CardMessage } from "./port.ts";
import { renderAdaptive } from "./render-adaptive.ts";
import { ANSWERED_SIGN } from "./signs.ts";
import { CHOICE_PREFIX, type Pressed } from "./submit-data.ts";

/** The same card with nothing left to press: the answer that was given stands where the buttons and fields were. */
export function closeCard(message: CardMessage, pressed: Pressed): CardMessage {
  const body = message.card.body.flatMap((element) => closeElement(element, pressed));
  return { ...message, card: { ...message.card, body: [...body, ...answeredLine(pressed)] } };
}

/** A closed card for a question whose own card is not known any more, as after a restart. */
export function closedQuestion(asked: string, pressed: Pressed, language: Language): CardMessage {
  const [message] = renderAdaptive({ title: asked, summary: asked, blocks: [] }, { language });
  const typed =
    pressed.kind === "form" ? Object.entries(pressed.fields).map(([fact, value]) => fieldLine(fact, value)) : [];
  return closeCard({ ...message, card: { ...message.card, body: [...message.card.body, ...typed] } }, pressed);
}

function answeredLine(pressed: Pressed): AdaptiveRichText[] {
  if (pressed.kind === "form") return [];
  return [
    { type: "RichTextBlock", inlines: [run(`${ANSWERED_SIGN} ${plainLine(pressed.label)}`, { weight: "bolder" })] },
  ];
}

function closeElement(element: AdaptiveElement, pressed: Pressed): AdaptiveElement[] {
  switch (element.type) {
    case "ActionSet":
      return [];
    case "Container":
      return [{ ...element, items: element.items.flatMap((item) => closeElement(item, pressed)) }];
    case "Input.Text":
    case "Input.Date":
    case "Input.Number":
    case "Input.ChoiceSet":
      // What was chosen in a list of answers stands at the end, as what was pressed.
      if (element.id.startsWith(CHOICE_PREFIX)) return [];
      return [fieldLine(element.label, typedInto(element, pressed))];
    default:
      return [element];
  }
}

function typedInto(input: AdaptiveInput, pressed: Pressed): string {
  if (pressed.kind !== "form") return "";
  const [, typed = ""] = Object.entries(pressed.fields).find(([fact]) => input.id.endsWith(`_${fact}`)) ?? [];
  const choice = input.type === "Input.ChoiceSet" ? input.choices.find(({ value }) => value === typed) : undefined;
  return choice?.title ?? typed;
}

function fieldLine(label: string, value: string): AdaptiveRichText {
  const typed = plainLine(value);
  const inlines = [run(`${plainLine(label)}: `, { weight: "bolder" }), run(typed === "" ? "–" : typed)];
  return { type: "RichTextBlock", inlines, spacing: "small" };
}
