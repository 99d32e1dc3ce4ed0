import type { Card } from "../../src/messages/card.ts";
import { renderText } from "./render-text.ts";
import { wrapText } from "./wrap-text.ts";

/** A line for every quarter of the work: what is printed cannot be taken back. */
const STEPS = 4;

/**
 * Prints how far work is: first the whole card, with what can be pressed, and then a line now and then.
 * @param hasInterrupt Ctrl-C does what the card's buttons do, which is said beside them
 * @param onOffer is given the card whose buttons are on the screen
 */
export function showProgress(
  output: NodeJS.WritableStream,
  columns: number,
  hasInterrupt: boolean,
  onOffer: (card: Card) => void,
): (card: Card) => void {
  let shown = -1;
  return (card) => {
    const step = stepOf(card);
    if (step <= shown) return;
    const isFirst = shown < 0;
    shown = step;
    if (!isFirst) {
      output.write(`${wrapText(card.summary, columns).join("\n")}\n`);
      return;
    }
    onOffer(card);
    output.write(`${renderText(hasInterrupt ? nameKey(card) : card, columns)}\n`);
  };
}

function stepOf({ blocks }: Card): number {
  const progress = blocks.find((block) => block.kind === "progress");
  return progress === undefined || progress.total <= 0 ? 0 : Math.floor((progress.done / progress.total) * STEPS);
}

function nameKey(card: Card): Card {
  const blocks = card.blocks.map((block) =>
    block.kind === "buttons"
      ? { ...block, buttons: block.buttons.map((button) => ({ ...button, label: `${button.label} (Ctrl-C)` })) }
      : block,
  );
  return { ...card, blocks };
}
