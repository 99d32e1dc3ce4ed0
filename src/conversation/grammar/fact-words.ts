import type { FactTexts, OptionTexts } from "../../messages/topic-texts.ts";

/** The words of one fact in one language, its own types erased. */
export type FactWords = FactTexts & { readonly options?: Readonly<Record<string, OptionTexts>> };
