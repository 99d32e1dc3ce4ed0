import { stat, writeFile } from "node:fs/promises";
import { basename, join } from "node:path";
import type { FileBlock } from "../../src/messages/card.ts";
import { expandHome } from "./attach-file.ts";
import type { TerminalTexts } from "./terminal-texts.ts";

interface Source {
  readonly home: string;
  readonly readFile: (hash: string) => Promise<Uint8Array | undefined>;
}
interface Wish {
  /** As it was typed. */
  readonly number: string | undefined;
  readonly where: string | undefined;
}

/** Writes a copy of a file that stands on the screen, and never over one that is there. @returns what to say */
export async function saveFile(
  files: readonly FileBlock[],
  { number, where = "" }: Wish,
  source: Source,
  texts: TerminalTexts,
): Promise<string> {
  const place = Number(number ?? 0);
  const file = files[place - 1]?.file;
  if (number !== undefined && !file) return texts.notOnScreen(place, files.length);
  if (!file || where.trim() === "") return texts.saveHow(files.length);
  const bytes = await source.readFile(file.hash);
  if (bytes === undefined) return texts.notKept;
  const told = expandHome(where.trim().replace(/^(["'])(.*)\1$/, "$2"), source.home);
  const isFolder = (await stat(told).catch(() => undefined))?.isDirectory() ?? false;
  const path = isFolder ? join(told, basename(file.name)) : told;
  try {
    await writeFile(path, bytes, { flag: "wx" });
    return texts.saved(path);
  } catch (error) {
    return sayWhy(error, path, texts);
  }
}

function sayWhy(error: unknown, path: string, texts: TerminalTexts): string {
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  if (code === "EEXIST") return texts.isThere(path);
  return code === "ENOENT" || code === "ENOTDIR" ? texts.noFolder(path) : texts.notWritten(path);
}
