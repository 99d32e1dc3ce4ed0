import { createHash, randomUUID } from "node:crypto";
import { mkdir, open, readFile, rename, rm } from "node:fs/promises";
import { dirname, join } from "node:path";
import { type FileRefusal, type FileStore, MOST_FILE_B } from "../../src/ports/files.ts";
import { sniffType } from "./sniff-type.ts";
import { stripJpeg } from "./strip-jpeg.ts";
import { stripPng } from "./strip-png.ts";
import { stripWebp } from "./strip-webp.ts";

/** Longest name that is kept [characters]. */
const MOST_NAME = 120;
/** For nobody else on the machine. */
const OWNER_ONLY = { folder: 0o700, file: 0o600 } as const;

export interface FileStoreSettings {
  /** Folder that the files stand in; made when the first one comes. */
  readonly folder: string;
  /** True: the company wants to know where its pictures were taken. */
  readonly keepsPlace: boolean;
}

export function createFileStore({ folder, keepsPlace }: FileStoreSettings): FileStore {
  const pathOf = (workspace: string, hash: string) => join(folder, sha256(Buffer.from(workspace)), hash);
  const store = async (workspace: string, bytes: Uint8Array): Promise<string> => {
    const hash = sha256(bytes);
    if ((await readIfThere(pathOf(workspace, hash), hash)) === undefined) await write(pathOf(workspace, hash), bytes);
    return hash;
  };
  return {
    async keep(workspace, name, sent) {
      const checked = check(sent, keepsPlace);
      if (!checked.ok) return checked;
      const { bytes, type } = checked;
      const hash = await store(workspace, bytes);
      return { ok: true, file: { hash, name: tidyName(name), type, size_B: bytes.length } };
    },
    async put(workspace, name, type, bytes) {
      return { hash: await store(workspace, bytes), name: tidyName(name), type, size_B: bytes.length };
    },
    async read(workspace, hash) {
      return /^[0-9a-f]{64}$/.test(hash) ? await readIfThere(pathOf(workspace, hash), hash) : undefined;
    },
  };
}

type Checked =
  | { readonly ok: true; readonly bytes: Uint8Array; readonly type: string }
  | { readonly ok: false; readonly because: FileRefusal };

function check(bytes: Uint8Array, keepsPlace: boolean): Checked {
  if (bytes.length === 0) return { ok: false, because: "empty" };
  if (bytes.length > MOST_FILE_B) return { ok: false, because: "too_large" };
  const type = sniffType(bytes);
  if (type === "heic") return { ok: false, because: "heic" };
  if (type === "unknown") return { ok: false, because: "unknown_type" };
  const stripped = keepsPlace || type === "application/pdf" ? bytes : STRIPPERS[type](bytes);
  return stripped === undefined ? { ok: false, because: "damaged" } : { ok: true, bytes: stripped, type };
}

const STRIPPERS = { "image/jpeg": stripJpeg, "image/png": stripPng, "image/webp": stripWebp } as const;

/** Writes beside and moves into place, so that what stands under a hash is always whole. */
async function write(path: string, bytes: Uint8Array): Promise<void> {
  await mkdir(dirname(path), { recursive: true, mode: OWNER_ONLY.folder });
  const beside = `${path}.${randomUUID()}`;
  try {
    const file = await open(beside, "wx", OWNER_ONLY.file);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(beside, path);
    await syncFolder(dirname(path));
  } catch (error) {
    await rm(beside, { force: true });
    throw error;
  }
}

/** The move itself is on the disk only when the folder is. */
async function syncFolder(path: string): Promise<void> {
  const folder = await open(path, "r");
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

async function readIfThere(path: string, hash: string): Promise<Uint8Array | undefined> {
  try {
    const bytes = await readFile(path);
    return sha256(bytes) === hash ? bytes : undefined;
  } catch (error) {
    if (error instanceof Error && "code" in error && error.code === "ENOENT") return undefined;
    throw error;
  }
}

function sha256(bytes: Uint8Array): string {
  return createHash("sha256").update(bytes).digest("hex");
}

/** A name to show, never a path. */
function tidyName(name: string): string {
  const last = name.split(/[/\\]/).at(-1) ?? "";
  const shown = last.replace(/\p{Cc}/gu, "").trim();
  return shown === "" ? "file" : shown.slice(-MOST_NAME);
}
