import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { contrastRatio, readHex } from "./contrast.ts";

const CSS = readFileSync(new URL("../../adapters/web/static/palette.css", import.meta.url), "utf8");
const [lightCss = "", darkCss = ""] = CSS.split("@media (prefers-color-scheme: dark)");
const readPalette = (css: string) =>
  new Map([...css.matchAll(/--([a-z0-9-]+):\s*(#[0-9a-f]{6});/g)].map(([, name = "", hex = ""]) => [name, hex]));
const light = readPalette(lightCss);
const dark = readPalette(darkCss);

/** WCAG 2.2, success criteria 1.4.3 (text, level AA) and 1.4.11 (edges of what is pressed, signs, focus). */
const TEXT = 4.5;
const EDGE = 3;
const SURFACES = ["enamel", "sheet", "tag"];
const PAIRS: readonly { readonly ink: string; readonly on: readonly string[]; readonly least: number }[] = [
  { ink: "soot", on: [...SURFACES, "scald-wash", "flame-wash", "brass-wash", "frost-wash"], least: TEXT },
  { ink: "slate", on: [...SURFACES, "scald-wash", "flame-wash", "brass-wash", "frost-wash"], least: TEXT },
  { ink: "scald", on: [...SURFACES, "scald-wash"], least: TEXT },
  { ink: "flame", on: [...SURFACES, "flame-wash"], least: TEXT },
  { ink: "brass", on: [...SURFACES, "brass-wash"], least: TEXT },
  { ink: "frost", on: [...SURFACES, "frost-wash"], least: TEXT },
  { ink: "sound", on: SURFACES, least: TEXT },
  { ink: "valve-label", on: ["valve"], least: TEXT },
  { ink: "pipe", on: SURFACES, least: EDGE },
  { ink: "valve", on: SURFACES, least: EDGE },
  { ink: "pilot", on: SURFACES, least: EDGE },
];

describe.each([
  { scheme: "light", palette: light },
  { scheme: "dark", palette: dark },
])("in $scheme", ({ palette }) => {
  const pairs = PAIRS.flatMap(({ ink, on, least }) => on.map((surface) => ({ ink, surface, least })));

  test.each(pairs)("$ink on $surface has at least $least to 1", ({ ink, surface, least }) => {
    const ratio = contrastRatio(readHex(palette.get(ink) ?? ""), readHex(palette.get(surface) ?? ""));
    expect(ratio).toBeGreaterThanOrEqual(least);
  });

  test("the tank has twelve layers, red over blue at the top and blue over red at the bottom", () => {
    const layers = Array.from({ length: 12 }, (_, i) => readHex(palette.get(`layer-${i + 1}`) ?? ""));
    const warmth = layers.map(([r, , b]) => r - b);
    expect(warmth.slice(0, 6).every((one) => one > 0)).toBe(true);
    expect(warmth.slice(7).every((one) => one < 0)).toBe(true);
    expect(new Set(layers.map(String)).size).toBe(12);
  });
});

test("dark names every colour that light names", () => {
  expect([...dark.keys()].sort()).toEqual([...light.keys()].sort());
});

/**
 * The two ends of the scale, by the definition, and a grey just under the limit for text.
 * @source WCAG 2.2, "contrast ratio" (1 to 21); for the grey: github.com/w3c/wcag, issue 200 ("the actual value appears to be 4.48")
 */
const KNOWN = [
  { one: "#000000", other: "#ffffff", ratio: 21 },
  { one: "#ffffff", other: "#ffffff", ratio: 1 },
  { one: "#777777", other: "#ffffff", ratio: 4.48 },
];
test.each(KNOWN)("the ratio of $one on $other is $ratio", ({ one, other, ratio }) => {
  expect(Math.abs(contrastRatio(readHex(one), readHex(other)) - ratio)).toBeLessThan(0.005);
});

test.each(["page.css", "log.css", "card.css", "posts.css", "files.css"])(
  "%s takes every colour from the palette",
  (name) => {
    const css = readFileSync(new URL(`../../adapters/web/static/${name}`, import.meta.url), "utf8");
    expect(css.match(/#[0-9a-f]{3,8}\b|rgba?\(|hsla?\(|oklch\(/gi)).toBe(null);
    const used = [...css.matchAll(/var\(--([a-z0-9-]+)\)/g)].map(([, property = ""]) => property);
    expect(used.length).toBeGreaterThan(5);
    const known = [...light.keys(), "tank", "ink", "wash", "share"];
    expect(used.filter((property) => !known.includes(property))).toEqual([]);
  },
);
