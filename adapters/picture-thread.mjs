// A worker thread knows no TypeScript of its own; this file teaches it and then hands over.
import { register } from "tsx/esm/api";

register();
export const { drawPicture } = await import("./draw-picture.ts");
