import type { PaperBlock, RecordPaper } from "../../src/ports/papers.ts";
import { drawGauges } from "./draw-gauges.ts";
import { drawPhotos, PHOTO_ROW, type PrintedPhotos } from "./draw-photos.ts";
import { drawTable, leastOfTable } from "./draw-table.ts";
import {
  BODY,
  drawArtifact,
  finishPages,
  heightOf,
  INK,
  makeRoom,
  openSheet,
  QUIET,
  type Sheet,
  SMALL,
  STRONG,
  setParagraph,
  setTagged,
  setText,
  type TextStyle,
} from "./sheet.ts";
import { leavesOut } from "./tidy-text.ts";

const TITLE: TextStyle = { size: 19, isBold: true };
const SUBJECT: TextStyle = { size: 11 };
const HEADING: TextStyle = { size: 11, isBold: true };
const TEXTS = { plain: BODY, quiet: SMALL, strong: STRONG } as const;
const HEADING_HEIGHT = 20;
/** Some lines of what is set as it comes. */
const SOME_LINES = 44;
const SIGNATURE = 58;

/** Left out: as small as it gets. Tests read what is not compressed. */
export interface DrawOptions {
  readonly compress?: boolean;
}

/** Lays a record out as a PDF. Nothing is read from a clock, so the same record and photos are the same bytes. */
export async function drawRecordPdf(
  paper: RecordPaper,
  photos: PrintedPhotos,
  { compress = true }: DrawOptions = {},
): Promise<Uint8Array> {
  const sheet = openSheet(paper, compress);
  const done = collect(sheet);
  drawTop(sheet, paper);
  for (const [at, block] of paper.blocks.entries()) drawBlock(sheet, block, paper.blocks.slice(at + 1), photos);
  if (leavesOut(JSON.stringify(paper))) drawLeftOut(sheet, paper);
  sheet.root.end();
  finishPages(sheet, paper);
  sheet.doc.end();
  return await done;
}

function collect({ doc }: Sheet): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  return new Promise((resolve, reject) => {
    doc.on("data", (chunk: Buffer) => chunks.push(chunk));
    doc.on("end", () => resolve(Buffer.concat(chunks)));
    doc.on("error", reject);
  });
}

function drawTop(sheet: Sheet, { company, title, subject, warning }: RecordPaper): void {
  const { doc, left, width } = sheet;
  doc.y = 44;
  if (company !== "") setParagraph(sheet, STRONG, company);
  setParagraph(sheet, TITLE, title, "H1");
  setParagraph(sheet, SUBJECT, subject);
  if (warning !== undefined) {
    doc.y += 4;
    const top = doc.y;
    const height = heightOf(sheet, STRONG, warning, width - 12) + 6;
    drawArtifact(sheet, () => doc.rect(left, top, width, height).lineWidth(0.75).stroke(INK));
    setTagged(sheet, "P", () => setText(sheet, STRONG, warning, left + 6, top + 4, width - 12));
    doc.y = top + height;
  }
  doc.y += 8;
}

/** @param after what follows: a heading is not left alone at the foot of a page */
function drawBlock(sheet: Sheet, block: PaperBlock, after: readonly PaperBlock[], photos: PrintedPhotos): void {
  const { doc } = sheet;
  switch (block.kind) {
    case "heading":
      doc.y += 6;
      makeRoom(sheet, HEADING_HEIGHT + leastOf(sheet, after, photos));
      setParagraph(sheet, HEADING, block.text, "H2");
      doc.y += 2;
      return;
    case "text":
      // Who wrote it is not left alone at the foot of a page.
      if (block.tone === "quiet") makeRoom(sheet, SOME_LINES);
      setParagraph(sheet, TEXTS[block.tone], block.text);
      doc.y += 2;
      return;
    case "table":
      drawTable(sheet, block);
      return;
    case "pairs":
      drawPairs(sheet, block.pairs);
      return;
    case "gauges":
      drawGauges(sheet, block);
      return;
    case "photos":
      drawPhotos(sheet, block.photos, photos);
      return;
    case "signatures":
      drawSignatures(sheet, block.lines);
      return;
  }
}

/** How much of what follows a heading must stand on the same page. */
function leastOf(sheet: Sheet, [next, ...rest]: readonly PaperBlock[], photos: PrintedPhotos): number {
  switch (next?.kind) {
    case "table":
      return leastOfTable(sheet, next);
    case "photos":
      return next.photos.some(({ file }) => photos.get(file.hash) !== undefined) ? PHOTO_ROW : SOME_LINES;
    case "signatures":
      return SIGNATURE * next.lines.length;
    case "text":
      // A quiet line belongs to what stands under it.
      return next.tone === "quiet" ? 14 + leastOf(sheet, rest, photos) : SOME_LINES;
    default:
      return SOME_LINES;
  }
}

function drawLeftOut(sheet: Sheet, { leftOut }: RecordPaper): void {
  makeRoom(sheet, SOME_LINES);
  sheet.doc.y += 8;
  setParagraph(sheet, SMALL, leftOut);
}

/** Label and value, two of them beside each other. */
function drawPairs(sheet: Sheet, pairs: Extract<PaperBlock, { readonly kind: "pairs" }>["pairs"]): void {
  const { doc, left, width } = sheet;
  const wide = width / 2 - 8;
  const labelWidth = wide * 0.36;
  const valueWidth = wide - labelWidth - 6;
  for (let at = 0; at < pairs.length; at += 2) {
    const two = pairs.slice(at, at + 2);
    const height = Math.max(
      ...two.map(([label, value]) =>
        Math.max(heightOf(sheet, BODY, label, labelWidth), heightOf(sheet, STRONG, value, valueWidth)),
      ),
    );
    makeRoom(sheet, height);
    const top = doc.y;
    for (const [column, [label, value]] of two.entries()) {
      const x = left + column * (wide + 16);
      setTagged(sheet, "P", () => {
        setText(sheet, { ...BODY, colour: QUIET }, label, x, top, labelWidth);
        setText(sheet, STRONG, value, x + labelWidth + 6, top, valueWidth);
      });
    }
    doc.y = top + height + 2;
  }
  doc.y += 4;
}

function drawSignatures(sheet: Sheet, lines: Extract<PaperBlock, { readonly kind: "signatures" }>["lines"]): void {
  const { doc, left, width } = sheet;
  makeRoom(sheet, SIGNATURE * lines.length);
  for (const { who, date } of lines) {
    const line = doc.y + SIGNATURE - 18;
    const [name, day] = [width * 0.66, width * 0.28];
    drawArtifact(sheet, () => {
      doc
        .lineWidth(0.75)
        .strokeColor(INK)
        .moveTo(left, line)
        .lineTo(left + name, line)
        .stroke();
      doc
        .moveTo(left + width - day, line)
        .lineTo(left + width, line)
        .stroke();
    });
    setTagged(sheet, "P", () => {
      setText(sheet, SMALL, who, left, line + 3, name);
      setText(sheet, SMALL, date, left + width - day, line + 3, day);
    });
    doc.y = line + 18;
  }
}
