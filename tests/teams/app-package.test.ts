import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import AjvDraft04 from "ajv-draft-04";
import addFormats from "ajv-formats";
import { unzipSync } from "fflate";
import { beforeAll, expect, test } from "vitest";
import { drawIcon } from "../../adapters/pictures/draw-icon.ts";
import { packApp } from "../../adapters/teams/app-package.ts";
import { buildTeamsManifest } from "../../adapters/teams/manifest.ts";
import { decodePng } from "../support/decode-png.ts";
import { APP_ID } from "./fake-platform.ts";

const manifest = buildTeamsManifest({
  appId: APP_ID,
  version: "1.0.0",
  publisher: {
    name: "Invented Plumbing Company",
    websiteUrl: "https://plumbing.invalid",
    privacyUrl: "https://plumbing.invalid/privacy",
    termsOfUseUrl: "https://plumbing.invalid/terms",
  },
  commands: [{ title: "expansion", description: "Size an expansion tank" }],
});
let files: Readonly<Record<string, Uint8Array>>;
beforeAll(async () => {
  files = unzipSync(await packApp(manifest, drawIcon));
});
const open = (name: string) => decodePng(files[name] ?? new Uint8Array());
const pixels = ({ rgba }: { readonly rgba: Uint8Array }) =>
  Array.from({ length: rgba.length / 4 }, (_, i) => [...rgba.subarray(i * 4, i * 4 + 4)]);

test("the package holds the manifest and both icons that it names, at the top, and nothing else", () => {
  expect(Object.keys(files).sort()).toEqual([manifest.icons.color, "manifest.json", manifest.icons.outline].sort());
});

test("its manifest is valid by the platform's schema of its own version", () => {
  // The platform's own schema, as shipped by @microsoft/app-manifest 1.1.2.
  const packed: unknown = JSON.parse(Buffer.from(files["manifest.json"] ?? []).toString());
  const folder = join(createRequire(import.meta.url).resolve("@microsoft/app-manifest"), "..");
  const path = join(folder, `json-schemas/teams/v${manifest.manifestVersion}/MicrosoftTeams.schema.json`);
  const ajv = new AjvDraft04.default({ strict: false, allErrors: true });
  addFormats.default(ajv);
  const validate = ajv.compile(JSON.parse(readFileSync(path, "utf8")));
  validate(packed);
  expect(validate.errors).toBeNull();
  expect(packed).toEqual(manifest);
});

// @source Microsoft Teams, "App icons": colour 192 by 192 px; outline 32 by 32 px, white or transparent
test("the colour icon is 192 px wide and high, and opaque to its edges", () => {
  const icon = open("color.png");
  expect([icon.width, icon.height]).toEqual([192, 192]);
  expect(pixels(icon).every(([, , , opacity]) => opacity === 255)).toBe(true);
  expect(new Set(pixels(icon).map(String)).size).toBeGreaterThan(5);
});

test("the outline icon is 32 px wide and high, and of white and transparent pixels alone", () => {
  const icon = open("outline.png");
  expect([icon.width, icon.height]).toEqual([32, 32]);
  const [seen, clear] = [true, false].map((wanted) => pixels(icon).filter(([, , , a = 0]) => a > 0 === wanted));
  expect([...new Set(seen?.map(String))]).toEqual(["255,255,255,255"]);
  // A mark that can be seen: neither empty nor a full square.
  expect(seen?.length).toBeGreaterThan(150);
  expect(clear?.length).toBeGreaterThan(400);
});

test("the same package has the same bytes", async () => {
  expect(await packApp(manifest, drawIcon)).toEqual(await packApp(manifest, drawIcon));
});
