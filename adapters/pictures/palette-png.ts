import { crc32, deflateSync } from "node:zlib";

/** A picture as the renderer leaves it: four bytes a pixel, red, green, blue and opacity. */
export interface Pixels {
  readonly width: number;
  readonly height: number;
  readonly rgba: Uint8Array;
}

const SIGNATURE = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Colours are told apart by this many bits of red, green and blue, so that the shades of a soft edge count as one. */
const TOLD_BITS = 5;
const CELLS = 2 ** (3 * TOLD_BITS);
/** Chunk header fields of an indexed picture: depth 4 or 8 bits, colour type 3. */
const INDEXED = 3;

/**
 * A PNG of few colours, a fraction of the size of one with all. The pixels must be opaque.
 * @param most colours of the palette: 16 or 256
 * @source W3C, "Portable Network Graphics (PNG) Specification", 4 (chunks), 9 (filters), 11.2 (IHDR, PLTE, IDAT, IEND)
 */
export function encodePalettePng(pixels: Pixels, most: 16 | 256): Uint8Array {
  const counted = countColours(pixels);
  const palette = counted.slice(0, most).map(({ colour }) => colour);
  const indexOf = new Uint8Array(CELLS);
  for (const { cell, colour } of counted) indexOf[cell] = nearest(palette, colour);
  const bits = most === 16 ? 4 : 8;
  const header = new DataView(new ArrayBuffer(13));
  header.setUint32(0, pixels.width);
  header.setUint32(4, pixels.height);
  header.setUint8(8, bits);
  header.setUint8(9, INDEXED);
  const colours = Uint8Array.from(palette.flat());
  const lines = deflateSync(indexLines(pixels, indexOf, bits), { level: 9 });
  const chunks = [
    chunk("IHDR", new Uint8Array(header.buffer)),
    chunk("PLTE", colours),
    chunk("IDAT", lines),
    chunk("IEND", new Uint8Array()),
  ];
  return Buffer.concat([SIGNATURE, ...chunks]);
}

type Colour = readonly [red: number, green: number, blue: number];

function cellOf(rgba: Uint8Array, at: number): number {
  const drop = 8 - TOLD_BITS;
  const [r = 0, g = 0, b = 0] = [rgba[at], rgba[at + 1], rgba[at + 2]];
  return ((r >> drop) << (2 * TOLD_BITS)) | ((g >> drop) << TOLD_BITS) | (b >> drop);
}

/** The mean colour of every cell that has pixels, the commonest first. */
function countColours({ rgba }: Pixels): readonly { readonly cell: number; readonly colour: Colour }[] {
  const counts = new Float64Array(CELLS);
  const sums = new Float64Array(CELLS * 3);
  for (let at = 0; at < rgba.length; at += 4) {
    const cell = cellOf(rgba, at);
    counts[cell] = (counts[cell] ?? 0) + 1;
    for (let part = 0; part < 3; part++) sums[cell * 3 + part] = (sums[cell * 3 + part] ?? 0) + (rgba[at + part] ?? 0);
  }
  const mean = (cell: number, part: number) => Math.round((sums[cell * 3 + part] ?? 0) / (counts[cell] ?? 1));
  return [...counts.keys()]
    .filter((cell) => (counts[cell] ?? 0) > 0)
    .sort((a, b) => (counts[b] ?? 0) - (counts[a] ?? 0))
    .map((cell) => ({ cell, colour: [mean(cell, 0), mean(cell, 1), mean(cell, 2)] as const }));
}

/** One index a pixel, each line led by its filter type 0 (none), which suits indexed pictures best. */
function indexLines({ width, height, rgba }: Pixels, indexOf: Uint8Array, bits: 4 | 8): Uint8Array {
  const bytes = 1 + Math.ceil((width * bits) / 8);
  const lines = new Uint8Array(bytes * height);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const index = indexOf[cellOf(rgba, (y * width + x) * 4)] ?? 0;
      const place = y * bytes + 1 + ((x * bits) >> 3);
      lines[place] = bits === 8 ? index : (lines[place] ?? 0) | (index << (x % 2 === 0 ? 4 : 0));
    }
  return lines;
}

function nearest(palette: readonly Colour[], [r, g, b]: Colour): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [index, [red, green, blue]] of palette.entries()) {
    const distance = (red - r) ** 2 + (green - g) ** 2 + (blue - b) ** 2;
    if (distance < least) [best, least] = [index, distance];
  }
  return best;
}

function chunk(type: string, data: Uint8Array): Uint8Array {
  const named = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(named.length + 8);
  framed.writeUInt32BE(data.length, 0);
  named.copy(framed, 4);
  framed.writeUInt32BE(crc32(named), framed.length - 4);
  return framed;
}
