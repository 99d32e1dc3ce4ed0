import { createHash } from "node:crypto";
import type { ChartBlock } from "../../src/messages/card.ts";

export type DrawSvg = (block: ChartBlock) => Promise<string>;

/** Pictures of the latest answers, drawn when a page asks for them. */
export interface PictureShelf {
  /** Keeps a chart and says where its picture will be found. */
  placeOf(block: ChartBlock): string;
  /** The picture of that name; nothing when it is no longer kept. */
  draw(name: string): Promise<string | undefined>;
}

/** A day's work on one machine; older answers keep their words and numbers. */
const MOST_PICTURES = 200;

export function createPictureShelf(drawSvg: DrawSvg): PictureShelf {
  const charts = new Map<string, ChartBlock>();
  return {
    placeOf(block) {
      const name = `${createHash("sha256").update(JSON.stringify(block)).digest("hex").slice(0, 32)}.svg`;
      charts.delete(name);
      charts.set(name, block);
      const [oldest] = charts.keys();
      if (charts.size > MOST_PICTURES && oldest !== undefined) charts.delete(oldest);
      return `/pictures/${name}`;
    },
    async draw(name) {
      const block = charts.get(name);
      return block && (await drawSvg(block));
    },
  };
}
