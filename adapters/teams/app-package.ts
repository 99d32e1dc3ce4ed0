import { readFile } from "node:fs/promises";
import { strToU8, zipSync } from "fflate";
import { COLOR_ICON, OUTLINE_ICON, type TeamsManifest } from "./manifest.ts";

/** Sizes that Teams takes. @source Microsoft Teams, "App icons": colour 192 px, outline 32 px, white on transparent */
const COLOR_px = 192;
const OUTLINE_px = 32;
/** The earliest moment that a zip file can name, so that the same package has the same bytes: noon of this day. */
const PACKED = new Date(1980, 0, 2, 12);

export type DrawIcon = (svg: string, width_px: number) => Uint8Array;

/** The app package that an administrator uploads: manifest and icons in one zip file. */
export async function packApp(manifest: TeamsManifest, draw: DrawIcon): Promise<Uint8Array> {
  const [color, outline] = await Promise.all(["color.svg", "outline.svg"].map(readIcon));
  return zipSync(
    {
      "manifest.json": strToU8(`${JSON.stringify(manifest, null, 2)}\n`),
      [COLOR_ICON]: draw(color ?? "", COLOR_px),
      [OUTLINE_ICON]: draw(outline ?? "", OUTLINE_px),
    },
    { mtime: PACKED },
  );
}

async function readIcon(name: string): Promise<string> {
  return await readFile(new URL(`icons/${name}`, import.meta.url), "utf8");
}
