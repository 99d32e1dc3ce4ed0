import type { PaperPhoto } from "../../src/ports/papers.ts";
import {
  BODY,
  LINE_GAP,
  makeRoom,
  RULE,
  type Sheet,
  SMALL,
  setFigure,
  setParagraph,
  setStyle,
  setTagged,
  setText,
} from "./sheet.ts";
import { tidyText } from "./tidy-text.ts";

const GAP = 14;
const PICTURE = 168;
const CAPTION = 34;
/** How high a row of photos stands with what is written under it [pt]. */
export const PHOTO_ROW = PICTURE + CAPTION;

export type PrintedPhotos = ReadonlyMap<string, Uint8Array | undefined>;

/** Photos two to a row with who sent them and when; those that cannot be printed are named under them. */
export function drawPhotos(sheet: Sheet, photos: readonly PaperPhoto[], printed: PrintedPhotos): void {
  const { doc, left, width } = sheet;
  const shown = photos.flatMap((photo) => {
    const bytes = printed.get(photo.file.hash);
    return bytes === undefined ? [] : [{ photo, bytes }];
  });
  const wide = (width - GAP) / 2;
  for (let at = 0; at < shown.length; at += 2) {
    makeRoom(sheet, PHOTO_ROW);
    const top = doc.y;
    for (const [column, { photo, bytes }] of shown.slice(at, at + 2).entries())
      drawPhoto(sheet, photo, bytes, left + column * (wide + GAP), top, wide);
    doc.y = top + PHOTO_ROW;
  }
  for (const { file, elsewhere, missing } of photos) {
    if (printed.get(file.hash) !== undefined) continue;
    setParagraph(sheet, BODY, printed.has(file.hash) ? elsewhere : missing);
  }
}

function drawPhoto(
  sheet: Sheet,
  { caption, elsewhere }: PaperPhoto,
  bytes: Uint8Array,
  x: number,
  top: number,
  width: number,
): void {
  const { doc } = sheet;
  setFigure(sheet, caption, { x, y: top, width, height: PICTURE }, () => {
    doc.rect(x, top, width, PICTURE).lineWidth(0.5).stroke(RULE);
    const place = { fit: [width - 4, PICTURE - 4] as [number, number], align: "center", valign: "center" } as const;
    try {
      doc.image(Buffer.from(bytes), x + 2, top + 2, place);
    } catch {
      // What the library cannot read is named in its place.
      setText(sheet, SMALL, elsewhere, x + 6, top + 6, width - 12);
    }
  });
  const below = { width, height: CAPTION - 8, ellipsis: true, lineGap: LINE_GAP };
  setTagged(sheet, "Caption", () => setStyle(sheet, SMALL).text(tidyText(caption), x, top + PICTURE + 3, below));
}
