// Loads a source file that a program or a thread begins with: from the bundle, or, where none can be written or made, as
// it is. Then whatever is wrong with a file is told by whoever reads it.
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { bundleSources } from "./bundle-sources.mjs";

/** @param {"main" | "run-long-work" | "draw-picture"} name of the file in this folder */
export async function loadSource(name) {
  const folder = await bundleSources().catch(() => undefined);
  if (folder !== undefined) return await import(pathToFileURL(join(folder, `${name}.mjs`)).href);
  const { register } = await import("tsx/esm/api");
  register();
  return await import(`./${name}.ts`);
}
