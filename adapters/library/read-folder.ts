import { existsSync } from "node:fs";
import { readdir } from "node:fs/promises";
import { basename, join, relative } from "node:path";
import { importFile } from "./import-file.ts";

/** A source file and everything it exports. */
export interface LoadedFile {
  /** The file's name without its ending. */
  readonly name: string;
  /** The file as a fault names it: from the folder that holds `src`. */
  readonly file: string;
  readonly exports: Readonly<Record<string, unknown>>;
}
interface FailedFile {
  readonly name: string;
  readonly fault: string;
}
export interface FolderRead {
  readonly files: readonly LoadedFile[];
  readonly faults: readonly FailedFile[];
}

/** Imports every source file of a folder, in the order of their names; a folder that is not there is empty. */
export async function readFolder(root: string, ...folder: readonly string[]): Promise<FolderRead> {
  const path = join(root, ...folder);
  const names = existsSync(path) ? await readdir(path) : [];
  const sources = names.filter((name) => name.endsWith(".ts")).toSorted();
  const reads = await Promise.all(sources.map((source) => loadFile(root, join(path, source))));
  return {
    files: reads.flatMap((read) => ("exports" in read ? [read] : [])),
    faults: reads.flatMap((read) => ("fault" in read ? [read] : [])),
  };
}

/** The folders within a folder, in the order of their names. */
export async function foldersIn(root: string, folder: string): Promise<readonly string[]> {
  const path = join(root, folder);
  const entries = existsSync(path) ? await readdir(path, { withFileTypes: true }) : [];
  return entries.flatMap((entry) => (entry.isDirectory() ? [entry.name] : [])).toSorted();
}

async function loadFile(root: string, path: string): Promise<LoadedFile | FailedFile> {
  const file = relative(join(root, ".."), path);
  const name = basename(path, ".ts");
  try {
    return { name, file, exports: await importFile(path) };
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    return { name, fault: `${file}: cannot be loaded: ${said.split("\n").slice(0, 2).join(" ")}` };
  }
}
