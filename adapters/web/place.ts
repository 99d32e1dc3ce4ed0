import type { ChartBlock } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import { DOOR_TEXTS, type DoorTexts } from "./door-texts.ts";

/** Where a block stands: makes ids that no other card of the page has, and knows the reader's language. */
export interface Place {
  readonly id: string;
  readonly texts: DoorTexts["card"];
  /** Where the picture of a chart is found; absent where none are drawn. */
  readonly pictureOf?: (block: ChartBlock) => string;
}

/**
 * The place of a card.
 * @param id letters, digits, `-` and `_`, different for every card of a page
 */
export function placeCard(id: string, language: Language, pictureOf?: Place["pictureOf"]): Place {
  return { id, texts: DOOR_TEXTS[language].card, ...(pictureOf && { pictureOf }) };
}

export function placeBlock(card: Place, index: number): Place {
  return { ...card, id: `${card.id}-${index}` };
}
