import { foldText } from "../units/fold-text.ts";

/** A part that a remedy asks for, and what the truck's list calls it; left out when it is not on the list. */
export interface PartOnTruck {
  readonly part: string;
  readonly listed?: string;
}

/**
 * Looks up parts in the list of what is on a truck: a listed thing will do when it has every word of the part.
 * @limits words only; whether it fits this model is for the person who holds it to see
 */
export function findOnTruck(parts: readonly string[], truck: readonly string[]): readonly PartOnTruck[] {
  const stock = truck.map((listed) => ({ listed, words: new Set(wordsOf(listed)) }));
  return parts.map((part) => {
    const found = stock.find(({ words }) => wordsOf(part).every((word) => words.has(word)));
    return { part, ...(found && { listed: found.listed }) };
  });
}

function wordsOf(text: string): readonly string[] {
  const words = foldText(text).split(/[^\p{L}\p{N}]+/u);
  return words.filter((word) => word !== "").map((word) => word.replace(/(?<=...)s$/, ""));
}
