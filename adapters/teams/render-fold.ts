import type { AdaptiveElement } from "./adaptive-card.ts";
import { MOST_TITLE_CHARACTERS } from "./limits.ts";
import { cutText, plainLine, run } from "./plain-text.ts";
import { FOLD_SIGN } from "./signs.ts";

/** As high as a fingertip. @source WCAG 2.2, 2.5.5 target size (enhanced): 44 px */
const TARGET_HEIGHT = "44px";

/**
 * Details under a line that opens and closes them.
 * @param id unlike that of any other fold of the card
 */
export function renderFold(title: string, items: readonly AdaptiveElement[], id: string): readonly AdaptiveElement[] {
  const line = cutText(plainLine(title), MOST_TITLE_CHARACTERS);
  return [
    {
      type: "Container",
      style: "emphasis",
      spacing: "small",
      minHeight: TARGET_HEIGHT,
      verticalContentAlignment: "center",
      selectAction: { type: "Action.ToggleVisibility", title: line, targetElements: [id] },
      items: [{ type: "RichTextBlock", inlines: [run(`${FOLD_SIGN} ${line}`, { weight: "bolder" })] }],
    },
    { type: "Container", id, isVisible: false, items },
  ];
}
