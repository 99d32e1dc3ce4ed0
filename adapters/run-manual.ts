import type { Settings } from "../src/boundary/settings.ts";
import { LANGUAGES } from "../src/messages/language.ts";
import { readWords } from "./commands/read-words.ts";
import { writeManual } from "./commands/write-manual.ts";
import { openShelf } from "./open-house.ts";

const USAGE = "npm run --silent manual -- [--lang en|es] [--units us|si] > manual.md";
const UNITS = ["us", "si"] as const;

/** Prints the manual of all topics on standard output. */
export async function runManual(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const read = readWords(words, ["lang", "units"], USAGE);
  const language = read.ok ? LANGUAGES.find((one) => one === (read.options["lang"] ?? "en")) : undefined;
  const units = read.ok ? UNITS.find((one) => one === (read.options["units"] ?? "us")) : undefined;
  if (!read.ok || read.first !== undefined || language === undefined || units === undefined) {
    process.stderr.write(`${read.ok ? `Type: ${USAGE}` : read.say}\n`);
    return 2;
  }
  const { library, books } = await openShelf(settings, root);
  process.stdout.write(writeManual(library, books.code, { language, units }));
  return 0;
}
