import { mkdtemp, readdir, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from "vitest";
import { runManifest } from "../../adapters/run-manifest.ts";
import { readSettings } from "../../src/boundary/settings.ts";

const ROOT = new URL("../..", import.meta.url).pathname;
const APP_ID = "11111111-2222-4333-8444-555555555555";
const TEAMS = ["teams", "--app-id", APP_ID, "--website", "https://plumbing.invalid"];
const read = readSettings({});
if (!read.ok) throw new Error("the empty settings are not taken");
const { settings } = read;

let folder = "";
let printed = "";
let complained = "";
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "oldhand-package-"));
});
afterAll(() => rm(folder, { recursive: true }));
beforeEach(() => {
  [printed, complained] = ["", ""];
  vi.spyOn(process.stdout, "write").mockImplementation((text) => {
    printed += String(text);
    return true;
  });
  vi.spyOn(process.stderr, "write").mockImplementation((text) => {
    complained += String(text);
    return true;
  });
});
afterEach(() => {
  vi.restoreAllMocks();
});

test("the package that is written holds the manifest that is printed", async () => {
  expect(await runManifest(settings, TEAMS, ROOT)).toBe(0);
  const manifest: unknown = JSON.parse(printed);
  const out = join(folder, "oldhand-teams.zip");
  expect(await runManifest(settings, [...TEAMS, "--out", out], ROOT)).toBe(0);
  const packed = unzipSync(await readFile(out))["manifest.json"] ?? new Uint8Array();
  expect(JSON.parse(Buffer.from(packed).toString())).toEqual(manifest);
});

test.each([
  { name: "a file that is no zip file", out: "manifest.json", says: /--out is a zip file, such as oldhand-teams\.zip/ },
  { name: "a folder that is not there", out: join("nowhere", "a.zip"), says: /could not be written/ },
])("$name is refused with what to type, and nothing is written", async ({ out, says }) => {
  const before = await readdir(folder);
  expect(await runManifest(settings, [...TEAMS, "--out", join(folder, out)], ROOT)).toBe(2);
  expect(complained).toMatch(says);
  expect(await readdir(folder)).toEqual(before);
});
