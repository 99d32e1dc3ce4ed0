type Rgb = readonly [number, number, number];

/**
 * Contrast ratio of two colours, 1..21.
 * @source W3C, Web Content Accessibility Guidelines 2.2, definitions of "contrast ratio" and "relative luminance"
 */
export function contrastRatio(one: Rgb, other: Rgb): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return ((light ?? 0) + 0.05) / ((dark ?? 0) + 0.05);
}

function luminance([r, g, b]: Rgb): number {
  const linear = (part: number) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * linear(r) + 0.7152 * linear(g) + 0.0722 * linear(b);
}

/** The parts of a colour such as "#14212a". */
export function readHex(colour: string): Rgb {
  const [, r = "", g = "", b = ""] = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour) ?? [];
  return [Number.parseInt(r, 16), Number.parseInt(g, 16), Number.parseInt(b, 16)];
}
