import { createPictures } from "./pictures/draw-chart.ts";
import type { DrawnPicture, PictureWork } from "./workers/picture-work.ts";

const pictures = createPictures();

/** Draws one picture in this thread. */
export function drawPicture(work: PictureWork): DrawnPicture {
  if (work.kind === "svg") return { svg: pictures.drawSvg(work.block) };
  const { block, most_B } = work;
  const png = most_B === undefined ? pictures.drawPng(block) : pictures.drawPngWithin(block, most_B);
  return png === undefined ? {} : { png };
}
