import { expect, test } from "vitest";
import { createPictureShelf } from "../../adapters/web/picture-shelf.ts";
import { renderHtml } from "../../adapters/web/render-html.ts";
import type { ChartBlock } from "../../src/messages/card.ts";
import { SAMPLE_CARDS } from "../support/sample-cards.ts";

const card = SAMPLE_CARDS["chart"] ?? { title: "", summary: "", blocks: [] };
const chart = card.blocks.find((block): block is ChartBlock => block.kind === "chart");
if (chart === undefined) throw new Error("the sample cards have no chart");

test("a chart is drawn when its picture is asked for, under a name that only the chart decides", async () => {
  const drawn: string[] = [];
  const shelf = createPictureShelf(async ({ title }) => {
    drawn.push(title);
    return "<svg/>";
  });
  const place = shelf.placeOf(chart);
  expect(place).toMatch(/^\/pictures\/[0-9a-f]{32}\.svg$/);
  expect(shelf.placeOf({ ...chart })).toBe(place);
  expect(shelf.placeOf({ ...chart, title: "another" })).not.toBe(place);
  expect(drawn).toEqual([]);
  expect(await shelf.draw(place.replace("/pictures/", ""))).toBe("<svg/>");
  expect(await shelf.draw("0".repeat(32))).toBeUndefined();
});

test("of 201 pictures the oldest is no longer kept", async () => {
  const shelf = createPictureShelf(async () => "<svg/>");
  const places = Array.from({ length: 201 }, (_, at) => shelf.placeOf({ ...chart, title: `${at}` }));
  const kept = await Promise.all(places.map((place) => shelf.draw(place.replace("/pictures/", ""))));
  expect(kept.map((svg) => svg !== undefined)).toEqual([false, ...new Array<boolean>(200).fill(true)]);
});

test("a card with pictures shows an image whose alternative is the chart's text", () => {
  const page = renderHtml(card, { id: "d1", language: "en", pictureOf: () => "/pictures/a.svg" });
  expect(page).toContain(`<img class="chart-picture" src="/pictures/a.svg" alt="${chart.alt}">`);
});
