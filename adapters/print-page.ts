import type { Settings } from "../src/boundary/settings.ts";
import { LANGUAGES } from "../src/messages/language.ts";
import type { Reader } from "../src/messages/voice.ts";
import { readWords } from "./commands/read-words.ts";
import { openShelf } from "./open-house.ts";

const UNITS = ["us", "si"] as const;

type Shelf = Awaited<ReturnType<typeof openShelf>>;

/** One command that prints a page in a language and a system of units. */
export interface Page {
  /** How the command is typed, for who typed it otherwise. */
  readonly usage: string;
  readonly write: (library: Shelf["library"], code: Shelf["books"]["code"], reader: Reader) => string;
}

/**
 * Prints a page on standard output, for the reader that the words name.
 *
 * @returns what the process ends with: 2 when the words cannot be read, which is said on standard error
 */
export async function printPage(
  page: Page,
  settings: Settings,
  words: readonly string[],
  root: string,
): Promise<number> {
  const read = readWords(words, ["lang", "units"], page.usage);
  const language = read.ok ? LANGUAGES.find((one) => one === (read.options["lang"] ?? "en")) : undefined;
  const units = read.ok ? UNITS.find((one) => one === (read.options["units"] ?? "us")) : undefined;
  if (!read.ok || read.first !== undefined || language === undefined || units === undefined) {
    process.stderr.write(`${read.ok ? `Type: ${page.usage}` : read.say}\n`);
    return 2;
  }
  const { library, books } = await openShelf(settings, root);
  process.stdout.write(page.write(library, books.code, { language, units }));
  return 0;
}
