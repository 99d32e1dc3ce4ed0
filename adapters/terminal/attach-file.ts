import { constants } from "node:fs";
import { access, readFile, stat } from "node:fs/promises";
import { basename } from "node:path";
import type { SentFile } from "../../src/ports/files.ts";
import type { TerminalTexts } from "./terminal-texts.ts";

/** What attaching needs to know of the place. */
interface Here {
  readonly home: string;
  readonly mostFile_bytes: number;
}
type Attached =
  | { readonly ok: true; readonly file: SentFile; readonly words: string }
  | { readonly ok: false; readonly say: string };

const QUOTED = /^(["'])(.+?)\1\s*(.*)$/;
/** As a terminal writes a file that is dropped on it: a backslash before each space. */
const FIRST_WORD = /^((?:\\.|[^\s\\])+)\s+(.*)$/;

/** Finds the file that somebody names after `attach`; words behind it are about it. */
export async function findAttached(rest: string, here: Here, texts: TerminalTexts): Promise<Attached> {
  const told = rest.trim();
  if (told === "") return { ok: false, say: texts.attachHow };
  for (const { path: written, words } of readings(told)) {
    const path = expandHome(written, here.home);
    const found = await stat(path).catch(() => undefined);
    if (found?.isDirectory()) return { ok: false, say: texts.isFolder(written) };
    if (found) return await toSent(path, found.size, words, here, texts);
  }
  return { ok: false, say: texts.noFile(told) };
}

/** The ways in which it may be meant, the likeliest first: a path may hold spaces, and words may follow it. */
function readings(told: string): readonly { readonly path: string; readonly words: string }[] {
  const [, , quoted, after = ""] = QUOTED.exec(told) ?? [];
  if (quoted !== undefined) return [{ path: quoted, words: after }];
  const [, first, words = ""] = FIRST_WORD.exec(told) ?? [];
  return [
    { path: told, words: "" },
    { path: withoutBackslashes(told), words: "" },
    ...(first === undefined ? [] : [{ path: withoutBackslashes(first), words }]),
  ];
}

function withoutBackslashes(path: string): string {
  return path.replace(/\\(.)/g, "$1");
}

async function toSent(
  path: string,
  size_B: number,
  words: string,
  { mostFile_bytes }: Here,
  texts: TerminalTexts,
): Promise<Attached> {
  if (size_B > mostFile_bytes) return { ok: false, say: texts.tooLarge(path, Math.floor(mostFile_bytes / 1_000_000)) };
  const isOpen = await access(path, constants.R_OK).then(
    () => true,
    () => false,
  );
  if (!isOpen) return { ok: false, say: texts.notRead(path) };
  return { ok: true, words, file: { name: basename(path), size_B, read: () => readFile(path) } };
}

/** A path as a shell would read it. */
export function expandHome(path: string, home: string): string {
  return path === "~" || path.startsWith("~/") ? home + path.slice(1) : path;
}
