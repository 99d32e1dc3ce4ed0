import { turnOfJpeg } from "./files/strip-jpeg.ts";
import { drawRecordPdf } from "./papers/draw-record.ts";
import { createPictures } from "./pictures/draw-chart.ts";
import { printPhoto } from "./pictures/print-photo.ts";
import type { DrawnPicture, PictureWork } from "./workers/picture-work.ts";

const pictures = createPictures();

/** Draws one picture or paper in this thread. */
export async function drawPicture(work: PictureWork): Promise<DrawnPicture> {
  switch (work.kind) {
    case "svg":
      return { svg: pictures.drawSvg(work.block) };
    case "png": {
      const { block, most_B } = work;
      const png = most_B === undefined ? pictures.drawPng(block) : pictures.drawPngWithin(block, most_B);
      return png === undefined ? {} : { png };
    }
    case "photo": {
      const photo = printPhoto(work.bytes, work.type, turnOfJpeg);
      return photo === undefined ? {} : { photo };
    }
    case "record":
      return { pdf: await drawRecordPdf(work.paper, work.photos) };
  }
}
