import PDFDocument from "pdfkit";
import type { RecordPaper } from "../../src/ports/papers.ts";
import { FONTS } from "./fonts.ts";
import { tidyText } from "./tidy-text.ts";

const MARGINS = { top: 58, bottom: 72, left: 50, right: 50 } as const;
const SIZES = { letter: "LETTER", a4: "A4" } as const;

export const INK = "#000000";
/** Dark enough to be read on a poor print. */
export const QUIET = "#444444";
export const RULE = "#888888";
export const SHADE = "#e6e6e6";

export type Doc = InstanceType<typeof PDFDocument>;
type Element = ReturnType<Doc["struct"]>;

/** A document that is being laid out: everything that is drawn is put in the order in which it is read aloud. */
export interface Sheet {
  readonly doc: Doc;
  readonly root: Element;
  readonly left: number;
  readonly width: number;
  /** Lowest point that may be drawn on. */
  readonly bottom: number;
}
interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}
export interface TextStyle {
  readonly size: number;
  readonly isBold?: boolean;
  readonly colour?: string;
}

export const BODY: TextStyle = { size: 9 };
export const STRONG: TextStyle = { size: 9, isBold: true };
export const SMALL: TextStyle = { size: 7.5, colour: QUIET };
export const LINE_GAP = 1.5;

/** Opens a document in the paper's language; its date is that of the record, so that the same record is the same file. */
export function openSheet(paper: RecordPaper, compress: boolean): Sheet {
  const at = new Date(paper.at_ms);
  const doc = new PDFDocument({
    size: SIZES[paper.sheet],
    margins: MARGINS,
    bufferPages: true,
    compress,
    pdfVersion: "1.7",
    tagged: true,
    lang: paper.language,
    displayTitle: true,
    font: FONTS.plain,
    info: {
      Title: paper.title,
      Subject: paper.subject,
      Author: paper.company,
      Creator: "Oldhand",
      Producer: "Oldhand",
      CreationDate: at,
      ModDate: at,
    },
  });
  doc.registerFont("plain", FONTS.plain);
  doc.registerFont("bold", FONTS.bold);
  const root = doc.struct("Document", { title: paper.title });
  doc.addStructure(root);
  const { width, height } = doc.page;
  return {
    doc,
    root,
    left: MARGINS.left,
    width: width - MARGINS.left - MARGINS.right,
    bottom: height - MARGINS.bottom,
  };
}

export function setStyle({ doc }: Sheet, { size, isBold = false, colour = INK }: TextStyle): Doc {
  return doc
    .font(isBold ? "bold" : "plain")
    .fontSize(size)
    .fillColor(colour);
}

/** How high a text stands in this width. */
export function heightOf(sheet: Sheet, style: TextStyle, text: string, width: number): number {
  return setStyle(sheet, style).heightOfString(tidyText(text) || " ", { width, lineGap: LINE_GAP });
}

/** Sets a text at a place, which the next one does not follow. */
export function setText(sheet: Sheet, style: TextStyle, text: string, x: number, y: number, width: number): void {
  setStyle(sheet, style).text(tidyText(text) || " ", x, y, { width, lineGap: LINE_GAP });
}

/** A paragraph over the whole width, on to the next page where it does not fit; what follows stands under it. */
export function setParagraph(sheet: Sheet, style: TextStyle, text: string, tag: "P" | "H1" | "H2" = "P"): void {
  setTagged(sheet, tag, () => setText(sheet, style, text, sheet.left, sheet.doc.y, sheet.width));
}

/** Something that is read aloud as what the tag says. */
export function setTagged({ doc, root }: Sheet, tag: "P" | "H1" | "H2" | "Caption", draw: () => void): void {
  root.add(doc.struct(tag, {}, [draw]));
}

/** A picture with the words that stand for it. */
export function setFigure({ doc, root }: Sheet, said: string, box: Box, draw: () => void): void {
  const { x, y, width, height } = box;
  // Where it stands is known to the library and not to its types.
  const options = { alt: tidyText(said), bbox: [x, y, x + width, y + height] };
  root.add(doc.struct("Figure", options, [draw]));
}

/** Begins a new page where less than this is left. */
export function makeRoom({ doc, bottom }: Sheet, height: number): void {
  if (doc.y + height > bottom) doc.addPage();
}

/** What is drawn for the eye alone and not read aloud. */
export function drawArtifact({ doc }: Sheet, draw: () => void): void {
  doc.markContent("Artifact", { type: "Layout" });
  draw();
  doc.endMarkedContent();
}

/** What stands at the head and foot of each page, once it is known how many there are. */
export function finishPages(sheet: Sheet, paper: RecordPaper): void {
  const { doc, left, width } = sheet;
  const { count } = doc.bufferedPageRange();
  for (let page = 0; page < count; page += 1) {
    doc.switchToPage(page);
    // Text below the margin would begin a page of its own.
    doc.page.margins.bottom = 0;
    doc.markContent("Artifact", { type: "Pagination" });
    const y = doc.page.height - MARGINS.bottom + 16;
    doc
      .lineWidth(0.5)
      .strokeColor(RULE)
      .moveTo(left, y)
      .lineTo(left + width, y)
      .stroke();
    const number = `${paper.mark}   ${paper.page} ${page + 1} ${paper.of} ${count}`;
    const foot = paper.warning === undefined ? paper.foot : `${paper.warning}\n${paper.foot}`;
    setText(sheet, SMALL, foot, left, y + 5, width * 0.66);
    setStyle(sheet, SMALL).text(tidyText(number), left + width * 0.66, y + 5, { width: width * 0.34, align: "right" });
    if (page > 0) setText(sheet, SMALL, `${paper.company}. ${paper.subject}`, left, 34, width);
    doc.endMarkedContent();
  }
}
