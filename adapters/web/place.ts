import type { Language } from "../../src/messages/language.ts";
import { DOOR_TEXTS, type DoorTexts } from "./door-texts.ts";

/** Where a block stands: makes ids that no other card of the page has, and knows the reader's language. */
export interface Place {
  readonly id: string;
  readonly texts: DoorTexts["card"];
}

/**
 * The place of a card.
 * @param id letters, digits, `-` and `_`, different for every card of a page
 */
export function placeCard(id: string, language: Language): Place {
  return { id, texts: DOOR_TEXTS[language].card };
}

export function placeBlock(card: Place, index: number): Place {
  return { ...card, id: `${card.id}-${index}` };
}
