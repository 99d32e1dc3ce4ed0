// A worker thread knows no TypeScript of its own.
import { loadSource } from "./load-source.mjs";

export const { runLongWork } = await loadSource("run-long-work");
