import { resolve } from "node:path";
import { checkBooks } from "./books/check-books.ts";
import { writeTemplates } from "./books/write-templates.ts";
import { readWords } from "./commands/read-words.ts";
import { loadLibrary } from "./library/load-library.ts";

const USAGE =
  "npm run --silent books -- check FILE_OR_FOLDER [--as BOOK], or: npm run --silent books -- init FOLDER [--keep csv|yaml]";

/** Checks a company's books, or lays out empty ones. Paths are told from the folder that the command was typed in. */
export async function runBooks(words: readonly string[]): Promise<number> {
  const [verb = "", ...rest] = words;
  const read = readWords(rest, verb === "init" ? ["keep"] : ["as"], USAGE);
  if (!read.ok) return complain(read.say);
  const { first: path, options } = read;
  if (path === undefined || (verb !== "check" && verb !== "init")) return complain(`Type: ${USAGE}`);
  const from = resolve(process.cwd(), path);
  if (verb === "check") return await check(from, options["as"]);
  const { keep = "yaml" } = options;
  if (keep !== "csv" && keep !== "yaml") return complain(`--keep is csv or yaml. Type: ${USAGE}`);
  return await init(from, keep === "csv");
}

async function check(path: string, named: string | undefined): Promise<number> {
  const { cautions } = await loadLibrary();
  const checks = await checkBooks(path, cautions, named);
  for (const { says } of checks) process.stdout.write(`${says}\n`);
  return checks.every(({ isGood }) => isGood) ? 0 : 1;
}

async function init(folder: string, asTables: boolean): Promise<number> {
  const { written, kept } = await writeTemplates(folder, asTables);
  const lines = [
    ...written.map((path) => `written: ${path}`),
    ...kept.map((path) => `left as it is: ${path}`),
    `Fill them in, then: npm run --silent books -- check ${folder}`,
    `Oldhand reads them when OLDHAND_COMPANY=${folder} stands in .env.`,
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}

function complain(say: string): number {
  process.stderr.write(`${say}\n`);
  return 2;
}
