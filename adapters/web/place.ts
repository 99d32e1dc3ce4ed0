import type { ChartBlock } from "../../src/messages/card.ts";
import type { Language } from "../../src/messages/language.ts";
import type { KeptFile } from "../../src/ports/files.ts";
import { DOOR_TEXTS, type DoorTexts } from "./door-texts.ts";

/** Where a block stands: makes ids that no other card of the page has, and knows the reader's language. */
export interface Place {
  readonly id: string;
  readonly texts: DoorTexts["card"];
  /** Where the picture of a chart is found; absent where none are drawn. */
  readonly pictureOf?: (block: ChartBlock) => string;
  /** Where a kept file is found; absent where none are handed over. */
  readonly fileOf?: (file: KeptFile) => string;
}

/**
 * The place of a card.
 * @param id letters, digits, `-` and `_`, different for every card of a page
 */
export function placeCard(id: string, language: Language, found: Pick<Place, "pictureOf" | "fileOf">): Place {
  return { ...found, id, texts: DOOR_TEXTS[language].card };
}

export function placeBlock(card: Place, index: number): Place {
  return { ...card, id: `${card.id}-${index}` };
}
