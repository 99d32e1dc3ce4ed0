import { createHash } from "node:crypto";
import { mkdtemp, readdir, rm, stat, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { createFileStore } from "../../adapters/files/file-store.ts";
import { sniffType } from "../../adapters/files/sniff-type.ts";
import { JOB_TEXTS } from "../../src/messages/say-job.ts";
import type { FileStore } from "../../src/ports/files.ts";
import { MOST_FILE_B } from "../../src/ports/files.ts";
import { exifSegment, jpegWith, PLACE, webpOf } from "../support/picture-files.ts";

let folder = "";
let files: FileStore;
beforeEach(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-files-"));
  files = createFileStore({ folder: join(folder, "files"), keepsPlace: false });
});
afterEach(() => rm(folder, { recursive: true }));

const photo = jpegWith([exifSegment(6, true)]);
const sha256 = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
const box = (brand: string) => Buffer.from(`\0\0\0\u0018ftyp${brand}\0\0\0\0mif1`, "latin1");

describe("keeping", () => {
  test("a picture is kept under the hash of what is kept, without the place", async () => {
    const kept = await files.keep("w1", "IMG_1.jpg", photo);
    if (!kept.ok) throw new Error(kept.because);
    const bytes = await files.read("w1", kept.file.hash);
    if (bytes === undefined) throw new Error("the file is not there");
    expect(kept.file).toEqual({
      hash: sha256(bytes),
      name: "IMG_1.jpg",
      type: "image/jpeg",
      size_B: bytes.length,
    });
    expect(Buffer.from(bytes).includes(PLACE)).toBe(false);
  });

  test("a company that wants the place keeps the picture as it came", async () => {
    const all = createFileStore({ folder, keepsPlace: true });
    const kept = await all.keep("w1", "IMG_1.jpg", photo);
    expect(kept.ok && kept.file.hash).toBe(sha256(photo));
  });

  test("the same file twice, even at once, stands there once and for its owner alone", async () => {
    const kept = await Promise.all([1, 2, 3].map(() => files.keep("w1", "a.pdf", Buffer.from("%PDF-1.7 invented"))));
    expect(new Set(kept.map((one) => one.ok && one.file.hash)).size).toBe(1);
    const [workspace = ""] = await readdir(join(folder, "files"));
    const names = await readdir(join(folder, "files", workspace));
    expect(names).toHaveLength(1);
    expect((await stat(join(folder, "files", workspace, names[0] ?? ""))).mode & 0o777).toBe(0o600);
  });

  test.each([
    { name: "nothing", bytes: Buffer.alloc(0), because: "empty" },
    { name: "too much", bytes: Buffer.alloc(MOST_FILE_B + 1, "%PDF-"), because: "too_large" },
    { name: "a HEIC picture", bytes: box("heic"), because: "heic" },
    { name: "a program", bytes: Buffer.from("MZ not a picture"), because: "unknown_type" },
    { name: "a page", bytes: Buffer.from("<svg onload=alert(1)>"), because: "unknown_type" },
    { name: "half a picture", bytes: photo.subarray(0, 40), because: "damaged" },
  ] as const)("$name is refused ($because) and leaves nothing behind", async ({ bytes, because }) => {
    expect(await files.keep("w1", "x.jpg", bytes)).toEqual({ ok: false, because });
    expect(await readdir(folder)).toEqual([]);
    for (const { files: sentences } of Object.values(JOB_TEXTS))
      expect(because === "too_large" ? sentences.too_large("10") : sentences[because]).toMatch(/\.$/);
  });

  test("a file as large as allowed is kept", async () => {
    const bytes = Buffer.alloc(MOST_FILE_B, "%PDF-");
    expect(await files.keep("w1", "plan.pdf", bytes)).toMatchObject({ ok: true, file: { size_B: MOST_FILE_B } });
  });

  test.each([
    { sent: "../../etc/passwd", shown: "passwd" },
    { sent: "C:\\photos\\tank.jpg", shown: "tank.jpg" },
    { sent: "a\u0000b\n.jpg", shown: "ab.jpg" },
    { sent: " / ", shown: "file" },
    { sent: `${"x".repeat(300)}.jpg`, shown: `${"x".repeat(116)}.jpg` },
  ])("the name $sent is shown as $shown and is no path", async ({ sent, shown }) => {
    const kept = await files.keep("../w", sent, photo);
    expect(kept.ok && kept.file.name).toBe(shown);
    expect(await readdir(folder)).toEqual(["files"]);
  });
});

describe("keeping a paper of our own", () => {
  const PAPERS = [
    { name: "job-1001-record.pdf", type: "application/pdf", bytes: Buffer.from("%PDF-1.7 invented") },
    { name: "job-1001-record.json", type: "application/json", bytes: Buffer.from("{}\n") },
    { name: "figures.csv", type: "text/csv", bytes: Buffer.alloc(0) },
  ] as const;
  test.each(PAPERS)("$name is kept byte for byte, as the type that is told", async ({ name, type, bytes }) => {
    const file = await files.put("w1", name, type, bytes);
    expect(file).toEqual({ hash: sha256(bytes), name, type, size_B: bytes.length });
    expect(await files.read("w1", file.hash)).toEqual(bytes);
    expect(await files.read("w2", file.hash)).toBeUndefined();
  });

  test("the same paper made again, even at once, stands there once", async () => {
    const [{ name, type, bytes }] = PAPERS;
    const all = await Promise.all([1, 2, 3].map(() => files.put("w1", name, type, bytes)));
    expect(new Set(all.map(({ hash }) => hash)).size).toBe(1);
    const [workspace = ""] = await readdir(join(folder, "files"));
    expect(await readdir(join(folder, "files", workspace))).toEqual([all[0]?.hash]);
  });

  test("a name with a path in it is no path", async () => {
    const file = await files.put("w1", "../../etc/job.pdf", "application/pdf", Buffer.from("%PDF-"));
    expect(file.name).toBe("job.pdf");
    expect(await readdir(folder)).toEqual(["files"]);
  });
});

describe("reading", () => {
  test("nobody reads a file of another workspace, nor anything but a hash", async () => {
    const kept = await files.keep("w1", "a.jpg", photo);
    if (!kept.ok) throw new Error(kept.because);
    expect(await files.read("w2", kept.file.hash)).toBeUndefined();
    expect(await files.read("w1", "../../a")).toBeUndefined();
    expect(await files.read("w1", "0".repeat(64))).toBeUndefined();
  });

  test("a file that somebody has changed is not passed off as the one that was kept, and may be kept anew", async () => {
    const kept = await files.keep("w1", "a.jpg", photo);
    if (!kept.ok) throw new Error(kept.because);
    const [workspace = ""] = await readdir(join(folder, "files"));
    await writeFile(join(folder, "files", workspace, kept.file.hash), "something else");
    expect(await files.read("w1", kept.file.hash)).toBeUndefined();
    await files.keep("w1", "a.jpg", photo);
    expect(await files.read("w1", kept.file.hash)).toBeDefined();
  });
});

test.each([
  ["a JPEG picture", photo, "image/jpeg"],
  ["a WebP picture", webpOf(["VP8 ", Buffer.from([1])]), "image/webp"],
  ["an AVIF picture", box("avif"), "heic"],
  ["a film", box("isom"), "unknown"],
  ["three bytes", Buffer.from([0xff, 0xd8]), "unknown"],
] as const)("%s is told by its bytes", (_name, bytes, type) => {
  expect(sniffType(bytes)).toBe(type);
});
