interface Size {
  readonly width: number;
  readonly height: number;
}

/** Frame headers, which say the size; 0xC4, 0xC8 and 0xCC in between are tables. @source ITU-T T.81, table B.1 */
const isFrame = (marker: number) => marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);

/** Size of a JPEG picture as it is stored, before it is turned. @source ITU-T T.81, B.2.2 */
export function sizeOfJpeg(bytes: Uint8Array): Size | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 2; at + 9 <= bytes.length; ) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) at += 1;
    else if (isFrame(marker)) return known(view.getUint16(at + 7), view.getUint16(at + 5));
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

/** Size of a PNG picture. @source ISO/IEC 15948, 11.2.2 (IHDR) */
export function sizeOfPng(bytes: Uint8Array): Size | undefined {
  if (bytes.length < 24) return undefined;
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  return known(view.getUint32(16), view.getUint32(20));
}

function known(width: number, height: number): Size | undefined {
  return width > 0 && height > 0 ? { width, height } : undefined;
}
