import type { FileRef } from "./fetch-file.ts";
import { isRecord, readString } from "./read-record.ts";

/** Files of one message that are taken: own limit; Slack's own is ten (from memory). */
const MOST_FILES = 10;

/** The files of a message or of `files.info`; what was deleted, or is none, is left out. */
export function readFiles(files: unknown): readonly FileRef[] {
  if (!Array.isArray(files)) return [];
  return files.flatMap((file: unknown) => readFile(file) ?? []).slice(0, MOST_FILES);
}

export function readFile(file: unknown): FileRef | undefined {
  const id = readString(file, "id");
  if (id === undefined || readString(file, "mode") === "tombstone") return undefined;
  const url = readString(file, "url_private_download") ?? readString(file, "url_private");
  const size_B = isRecord(file) && typeof file["size"] === "number" ? file["size"] : undefined;
  // What is shared from another organisation is told by its id alone.
  const isTold = readString(file, "file_access") !== "check_file_info";
  return {
    id,
    name: readString(file, "name") ?? readString(file, "title") ?? id,
    ...(isTold && size_B !== undefined && { size_B }),
    ...(isTold && url !== undefined && { url }),
  };
}
