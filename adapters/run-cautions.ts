import type { Settings } from "../src/boundary/settings.ts";
import { LANGUAGES } from "../src/messages/language.ts";
import { readWords } from "./commands/read-words.ts";
import { writeCautionsPage } from "./commands/write-cautions.ts";
import { openShelf } from "./open-house.ts";

const USAGE = "npm run --silent cautions -- [--lang en|es] [--units us|si] > cautions.md";
const UNITS = ["us", "si"] as const;

/** Prints the page of every caution on standard output. */
export async function runCautions(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const read = readWords(words, ["lang", "units"], USAGE);
  const language = read.ok ? LANGUAGES.find((one) => one === (read.options["lang"] ?? "en")) : undefined;
  const units = read.ok ? UNITS.find((one) => one === (read.options["units"] ?? "us")) : undefined;
  if (!read.ok || read.first !== undefined || language === undefined || units === undefined) {
    process.stderr.write(`${read.ok ? `Type: ${USAGE}` : read.say}\n`);
    return 2;
  }
  const { library, books } = await openShelf(settings, root);
  process.stdout.write(writeCautionsPage(library, books.code, { language, units }));
  return 0;
}
