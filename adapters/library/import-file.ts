import { pathToFileURL } from "node:url";

/** Everything that a source file exports; in a bundle a table of all such files stands in place of this one. */
export async function importFile(path: string): Promise<Readonly<Record<string, unknown>>> {
  return await import(pathToFileURL(path).href);
}
