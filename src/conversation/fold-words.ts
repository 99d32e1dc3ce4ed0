import { foldText } from "../units/fold-text.ts";

/** Lower case without accents, outer marks or doubled spaces, so that "¿Cómo?" and "como" are the same words. */
export function foldWords(text: string): string {
  return foldText(text)
    .replace(/[\s_]+/g, " ")
    .replace(/^[\s¿¡/]+|[\s?!.,;:]+$/g, "");
}
