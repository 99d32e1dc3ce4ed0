import { Piscina } from "piscina";
import type { ChartBlock } from "../../src/messages/card.ts";
import type { RecordPaper } from "../../src/ports/papers.ts";
import type { DrawnPicture, PictureWork } from "./picture-work.ts";

/** Draws pictures and papers in another thread, so that no door waits while the plotting library works. */
export interface PicturePool {
  drawSvg(block: ChartBlock): Promise<string>;
  drawPng(block: ChartBlock): Promise<Uint8Array>;
  /** The best picture that is no larger [bytes]; nothing when even the smallest is. */
  drawPngWithin(block: ChartBlock, most_B: number): Promise<Uint8Array | undefined>;
  /** A photo small enough for a paper; nothing where it cannot be printed. */
  printPhoto(bytes: Uint8Array, type: string): Promise<Uint8Array | undefined>;
  drawRecord(paper: RecordPaper, photos: ReadonlyMap<string, Uint8Array | undefined>): Promise<Uint8Array>;
  /** A picture that is being drawn is given up. */
  close(): Promise<void>;
}

/** The library takes most of a second to load, so the thread is kept for a while. */
const IDLE_ms = 120_000;

/** @param workerFile file that draws one picture in a thread */
export function createPicturePool(workerFile: string): PicturePool {
  let pool: Piscina<PictureWork, DrawnPicture> | undefined;
  const draw = async (work: PictureWork): Promise<DrawnPicture> => {
    pool ??= new Piscina<PictureWork, DrawnPicture>({
      filename: workerFile,
      name: "drawPicture",
      minThreads: 0,
      maxThreads: 1,
      idleTimeout: IDLE_ms,
    });
    return await pool.run(work);
  };
  return {
    drawSvg: async (block) => needed((await draw({ kind: "svg", block })).svg),
    drawPng: async (block) => needed((await draw({ kind: "png", block })).png),
    drawPngWithin: async (block, most_B) => (await draw({ kind: "png", block, most_B })).png,
    printPhoto: async (bytes, type) => (await draw({ kind: "photo", bytes, type })).photo,
    drawRecord: async (paper, photos) => needed((await draw({ kind: "record", paper, photos })).pdf),
    async close() {
      await pool?.destroy();
    },
  };
}

function needed<T>(drawn: T | undefined): T {
  if (drawn === undefined) throw new Error("a thread came back without the picture");
  return drawn;
}
