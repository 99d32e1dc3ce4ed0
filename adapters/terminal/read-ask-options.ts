import { parseArgs } from "node:util";
import { LANGUAGES, type Language } from "../../src/messages/language.ts";
import type { UnitSystem } from "../../src/units/quantity-kinds.ts";

export interface AskOptions {
  readonly text: string;
  readonly json: boolean;
  readonly units: UnitSystem;
  readonly language: Language;
}
export type ReadOptions =
  | { readonly ok: true; readonly options: AskOptions }
  | { readonly ok: false; readonly say: string };

export const ASK_USAGE = `npm run --silent ask -- "expansion 80 gal tank 50F cold 140F hot 60 psi" [--json] [--units us|si] [--lang en|es]`;
const UNITS = ["us", "si"] as const;

/** Reads the words behind `ask`; whatever is wrong with them is one sentence that says what to type instead. */
export function readAskOptions(words: readonly string[]): ReadOptions {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: { json: { type: "boolean" }, units: { type: "string" }, lang: { type: "string" } },
    });
    const text = positionals.join(" ").trim();
    if (text === "") return { ok: false, say: `Type the question in quotes: ${ASK_USAGE}` };
    const units = UNITS.find((one) => one === (values.units ?? "us"));
    if (units === undefined) return { ok: false, say: `--units is us or si, not "${values.units}".` };
    const language = LANGUAGES.find((one) => one === (values.lang ?? "en"));
    if (language === undefined) return { ok: false, say: `--lang is en or es, not "${values.lang}".` };
    return { ok: true, options: { text, json: values.json === true, units, language } };
  } catch (error) {
    const why = error instanceof Error ? error.message.split("\n")[0] : String(error);
    return { ok: false, say: `${why} Type: ${ASK_USAGE}` };
  }
}
