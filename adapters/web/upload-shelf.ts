import { createHash } from "node:crypto";
import { mkdtemp, open, readFile, rename, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A file that a browser has sent and no message has asked for yet. */
export interface Upload {
  readonly size_B: number;
  read(): Promise<Uint8Array>;
}
/**
 * Holds what browsers send until the message comes that it belongs to, on the disk and not in memory. What is lost from
 * it, by a restart or because it grew old, the browser sends again.
 */
export interface UploadShelf {
  /** Largest file that is taken [bytes]. */
  readonly most_bytes: number;
  /** Takes a file under a key; sent again, it takes the place of the first. */
  take(key: string, body: AsyncIterable<Uint8Array>): Promise<"taken" | "too-large" | "busy">;
  find(key: string): Upload | undefined;
  close(): Promise<void>;
}

export interface UploadLimits {
  /** Largest file [bytes]. */
  readonly most_bytes: number;
  /** All files together; beyond it the oldest goes [bytes]. */
  readonly mostTogether_bytes: number;
  /** Files that may be on their way at once. */
  readonly mostAtOnce: number;
}

interface Kept extends Upload {
  readonly path: string;
}

/** Opens a shelf in a folder of its own, which goes with it. */
export async function openUploadShelf(limits: UploadLimits): Promise<UploadShelf> {
  const folder = await mkdtemp(join(tmpdir(), "oldhand-uploads-"));
  const kept = new Map<string, Kept>();
  let underWay = 0;
  let parts = 0;

  const drop = async (key: string) => {
    const old = kept.get(key);
    kept.delete(key);
    if (old) await rm(old.path, { force: true });
  };
  const makeRoom = async () => {
    const total = () => [...kept.values()].reduce((sum, { size_B }) => sum + size_B, 0);
    for (const key of [...kept.keys()].slice(0, -1)) if (total() > limits.mostTogether_bytes) await drop(key);
  };
  const write = async (key: string, body: AsyncIterable<Uint8Array>) => {
    parts += 1;
    const part = join(folder, `part-${parts}`);
    try {
      const size_B = await writeAtMost(part, body, limits.most_bytes);
      if (size_B === undefined) return "too-large";
      const path = join(folder, createHash("sha256").update(key).digest("hex"));
      await rename(part, path);
      kept.delete(key);
      kept.set(key, { path, size_B, read: () => readFile(path) });
      await makeRoom();
      return "taken";
    } finally {
      await rm(part, { force: true });
    }
  };
  return {
    most_bytes: limits.most_bytes,
    async take(key, body) {
      if (underWay >= limits.mostAtOnce) return "busy";
      underWay += 1;
      try {
        return await write(key, body);
      } finally {
        underWay -= 1;
      }
    },
    find: (key) => kept.get(key),
    close: () => rm(folder, { recursive: true, force: true }),
  };
}

/** @returns how much was written, or nothing when there was more than this [bytes] */
async function writeAtMost(
  path: string,
  body: AsyncIterable<Uint8Array>,
  most_bytes: number,
): Promise<number | undefined> {
  const file = await open(path, "wx", 0o600);
  let size_B = 0;
  try {
    for await (const piece of body) {
      size_B += piece.length;
      if (size_B > most_bytes) return undefined;
      await file.writeFile(piece);
    }
    return size_B;
  } finally {
    await file.close();
  }
}
