import type { Settings } from "../src/boundary/settings.ts";
import { writeManual } from "./commands/write-manual.ts";
import { type Page, printPage } from "./print-page.ts";

const PAGE: Page = {
  usage: "npm run --silent manual -- [--lang en|es] [--units us|si] > manual.md",
  write: writeManual,
};

/** Prints the manual of all topics on standard output. */
export async function runManual(settings: Settings, words: readonly string[], root: string): Promise<number> {
  return printPage(PAGE, settings, words, root);
}
