import type { Settings } from "../src/boundary/settings.ts";
import { writeCautionsPage } from "./commands/write-cautions.ts";
import { type Page, printPage } from "./print-page.ts";

const PAGE: Page = {
  usage: "npm run --silent cautions -- [--lang en|es] [--units us|si] > cautions.md",
  write: writeCautionsPage,
};

/** Prints the page of every caution on standard output. */
export async function runCautions(settings: Settings, words: readonly string[], root: string): Promise<number> {
  return printPage(PAGE, settings, words, root);
}
