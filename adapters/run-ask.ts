import type { Settings } from "../src/boundary/settings.ts";
import { openShelf } from "./open-house.ts";
import { runAsk } from "./terminal/ask.ts";

const USUAL_COLUMNS = 80;

/** One question from the command line; needs no store and no network. */
export async function runAskCommand(settings: Settings, words: readonly string[], root: string): Promise<number> {
  const shelf = await openShelf(settings, root, Date.now());
  return await runAsk(
    {
      ...shelf,
      columns: process.stdout.columns ?? USUAL_COLUMNS,
      print: (text) => process.stdout.write(`${text}\n`),
      complain: (text) => process.stderr.write(`${text}\n`),
    },
    words,
  );
}
