import { parseArgs } from "node:util";
import { LANGUAGES } from "../../src/messages/language.ts";
import type { Reader } from "../../src/messages/voice.ts";

/** Which record is to be written, where to, and for whom; what is left out is as the company has it. */
export interface RecordWords {
  readonly job: string;
  readonly out: string;
  readonly isJson: boolean;
  readonly reader: Partial<Reader>;
}
export type RecordWordsRead =
  | { readonly ok: true; readonly words: RecordWords }
  | { readonly ok: false; readonly say: string };

export const RECORD_USAGE = "npm run --silent record -- 1007 --out record.pdf [--lang en|es] [--units us|si] [--json]";
const UNITS = ["us", "si"] as const;

/** Reads the words behind `record`; whatever is wrong with them is one sentence that says what to type instead. */
export function readRecordWords(words: readonly string[]): RecordWordsRead {
  try {
    const { values, positionals } = parseArgs({
      args: [...words],
      allowPositionals: true,
      options: {
        out: { type: "string" },
        lang: { type: "string" },
        units: { type: "string" },
        json: { type: "boolean" },
      },
    });
    const [job, ...more] = positionals;
    if (job === undefined || more.length > 0) return say("Name one job.");
    if (values.out === undefined) return say("Say with --out which file to write.");
    const language = LANGUAGES.find((one) => one === values.lang);
    if (language === undefined && values.lang !== undefined) return say(`--lang is en or es, not "${values.lang}".`);
    const units = UNITS.find((one) => one === values.units);
    if (units === undefined && values.units !== undefined) return say(`--units is us or si, not "${values.units}".`);
    const reader = { ...(language && { language }), ...(units && { units }) };
    return { ok: true, words: { job, out: values.out, isJson: values.json === true, reader } };
  } catch (error) {
    return say(error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error));
  }
}

function say(what: string): RecordWordsRead {
  return { ok: false, say: `${what} Type: ${RECORD_USAGE}` };
}
