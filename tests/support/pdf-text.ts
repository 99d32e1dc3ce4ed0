/** One page of a PDF that is not compressed: its size in points, and its text in the order in which it was drawn. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly text: string;
}

/**
 * Reads the words of an uncompressed PDF back, by the tables that say which letter each glyph is.
 * @source ISO 32000-1, 7.3.10 (objects), 9.4.3 (showing text), 9.10.3 (ToUnicode)
 */
export function readPdf(bytes: Uint8Array): readonly PdfPage[] {
  const file = Buffer.from(bytes).toString("latin1");
  const objects = new Map<string, string>();
  for (const [, number = "", body = ""] of file.matchAll(/(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) objects.set(number, body);
  const follow = (body: string, name: string): string =>
    objects.get(new RegExp(`/${name} (\\d+) 0 R`).exec(body)?.[1] ?? "") ?? "";
  const pages = [...objects.values()].filter((body) => /\/Type \/Page\n/.test(body));
  return pages.map((page) => {
    const [, width = "0", height = "0"] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(page) ?? [];
    const fonts = new Map<string, ReadonlyMap<string, string>>();
    for (const [, name = "", number = ""] of follow(page, "Resources").matchAll(/\/(F\d+) (\d+) 0 R/g))
      fonts.set(name, readMap(follow(objects.get(number) ?? "", "ToUnicode")));
    return { width: Number(width), height: Number(height), text: readContent(follow(page, "Contents"), fonts) };
  });
}

function readMap(table: string): ReadonlyMap<string, string> {
  const letters = new Map<string, string>();
  for (const [, start = "0", values = ""] of table.matchAll(/<([\da-f]+)> <[\da-f]+> \[([^\]]*)\]/gi))
    for (const [at, [, code = ""]] of [...values.matchAll(/<([\da-f ]*)>/gi)].entries())
      letters.set((Number.parseInt(start, 16) + at).toString(16).padStart(4, "0"), decode(code.replaceAll(" ", "")));
  return letters;
}

/** UTF-16, two bytes a unit. */
function decode(hex: string): string {
  return (hex.match(/.{4}/g) ?? []).map((unit) => String.fromCharCode(Number.parseInt(unit, 16))).join("");
}

function readContent(content: string, fonts: ReadonlyMap<string, ReadonlyMap<string, string>>): string {
  let letters: ReadonlyMap<string, string> = new Map();
  const lines: string[] = [];
  for (const [, font, shown] of content.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
    if (font !== undefined) letters = fonts.get(font) ?? new Map();
    const glyphs = [...(shown ?? "").matchAll(/<([\da-f]+)>/gi)].flatMap(([, hex = ""]) => hex.match(/.{4}/g) ?? []);
    if (shown !== undefined) lines.push(glyphs.map((glyph) => letters.get(glyph.toLowerCase()) ?? "\uFFFD").join(""));
  }
  return lines.join("\n");
}
