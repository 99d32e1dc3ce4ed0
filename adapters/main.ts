import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { config } from "dotenv";
import { readSettings } from "../src/boundary/settings.ts";
import { COMMAND_NAMES, type CommandName, readCommand } from "./commands/read-command.ts";

const ROOT = fileURLToPath(new URL("..", import.meta.url));
/** Faults that say themselves what to do; any other is ours and shows its trace. */
const PLAIN_FAULTS = new Set<unknown>(["books_fault", "library_fault", "cannot_open"]);

// A reader that has seen enough, such as `head`, is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : 1));
process.exitCode = await run();

/** Reads the settings and does what the command line asks; each command is loaded only when it is wanted. */
async function run(): Promise<number> {
  config({ path: join(ROOT, ".env"), quiet: true });
  const command = readCommand(process.argv.slice(2));
  if ("unknown" in command)
    return complain(`There is no command "${command.unknown}". Type one of: ${COMMAND_NAMES.join(", ")}.`);
  const read = readSettings(process.env);
  if (!read.ok) return complain(read.faults.join("\n"));
  const { settings, warnings } = read;
  const commands: Readonly<Record<CommandName, (words: readonly string[]) => Promise<number>>> = {
    start: async () => (await import("./run-start.ts")).runStart(settings, warnings, ROOT),
    ask: async (words) => (await import("./run-ask.ts")).runAskCommand(settings, words, ROOT),
    chat: async (words) => (await import("./run-chat.ts")).runChat(settings, words, ROOT),
    manual: async (words) => (await import("./run-manual.ts")).runManual(settings, words, ROOT),
    cautions: async (words) => (await import("./run-cautions.ts")).runCautions(settings, words, ROOT),
    manifest: async (words) => (await import("./run-manifest.ts")).runManifest(settings, words, ROOT),
    books: async (words) => (await import("./run-books.ts")).runBooks(words),
    record: async (words) => (await import("./run-record.ts")).runRecord(settings, words, ROOT),
  };
  try {
    return await commands[command.name](command.words);
  } catch (error) {
    return complain(describeFault(error));
  }
}

function describeFault(error: unknown): string {
  if (!(error instanceof Error)) return String(error);
  const isPlain = "code" in error && PLAIN_FAULTS.has(error.code);
  return isPlain ? error.message : (error.stack ?? error.message);
}

function complain(lines: string): number {
  process.stderr.write(`${lines}\n`);
  return 1;
}
