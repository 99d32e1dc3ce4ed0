import { afterAll, expect, test } from "vitest";
import { createPictures } from "../../adapters/pictures/draw-chart.ts";
import { createPicturePool } from "../../adapters/workers/picture-pool.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

const charts = Object.values(SAMPLE_CARDS).flatMap(({ blocks }) =>
  blocks.flatMap((block) => (block.kind === "chart" ? [block] : [])),
);
const [chart] = charts;
const here = createPictures();
const pool = createPicturePool(new URL("../../adapters/picture-thread.mjs", import.meta.url).pathname);
afterAll(() => pool.close());

function someChart(): ChartBlock {
  if (chart === undefined) throw new Error("the sample cards hold no chart");
  return chart;
}

test("a picture drawn in another thread is the same, byte for byte, and this thread goes on meanwhile", async () => {
  const block = someChart();
  let turns = 0;
  const ticking = setInterval(() => turns++, 1);
  const [svg, png] = await Promise.all([pool.drawSvg(block), pool.drawPng(block)]);
  clearInterval(ticking);
  expect(turns).toBeGreaterThan(0);
  expect(svg).toBe(here.drawSvg(block));
  expect(Buffer.from(png).equals(Buffer.from(here.drawPng(block)))).toBe(true);
});

test("a picture that cannot be made small enough is left out", async () => {
  expect(await pool.drawPngWithin(someChart(), 100)).toBeUndefined();
});
