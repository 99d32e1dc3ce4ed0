// A worker thread knows no TypeScript of its own.
import { loadSource } from "./load-source.mjs";

export const { drawPicture } = await loadSource("draw-picture");
