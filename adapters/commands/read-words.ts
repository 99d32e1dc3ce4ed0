import { type ParseArgsConfig, parseArgs } from "node:util";

/** What stands behind a command, or one sentence that says what to type instead. */
export type WordsRead =
  | { readonly ok: true; readonly first: string | undefined; readonly options: Readonly<Record<string, string>> }
  | { readonly ok: false; readonly say: string };

/**
 * Reads the words behind a command: at most one plain word, and options that each have a value.
 * @param switches options without a value; one that is there reads as "yes"
 */
export function readWords(
  words: readonly string[],
  options: readonly string[],
  usage: string,
  switches: readonly string[] = [],
): WordsRead {
  const known: ParseArgsConfig["options"] = Object.fromEntries([
    ...options.map((name) => [name, { type: "string" }] as const),
    ...switches.map((name) => [name, { type: "boolean" }] as const),
  ]);
  try {
    const { values, positionals } = parseArgs({ args: [...words], allowPositionals: true, options: known });
    if (positionals.length > 1) return { ok: false, say: `"${positionals[1]}" is one word too many. Type: ${usage}` };
    const said = Object.entries(values).map(([name, value]) => [name, value === true ? "yes" : value] as const);
    const given = said.filter((entry): entry is [string, string] => typeof entry[1] === "string");
    return { ok: true, first: positionals[0], options: Object.fromEntries(given) };
  } catch (error) {
    const why = error instanceof Error ? error.message.split("\n")[0] : String(error);
    return { ok: false, say: `${why} Type: ${usage}` };
  }
}
