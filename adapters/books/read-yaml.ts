import { readFile } from "node:fs/promises";
import { isNode, LineCounter, parseDocument } from "yaml";

/** A file as plain data, able to say on which line a path stands. */
export interface YamlFile {
  readonly data: unknown;
  lineOf(path: readonly PropertyKey[]): number;
}

/** A book that cannot be used: one line a fault, each naming the file, the line and what to write. */
export class BooksFault extends Error {
  readonly code = "books_fault";
}

/** Reads a YAML file, refusing it when it is missing or is no YAML. */
export async function readYaml(path: string): Promise<YamlFile> {
  const lines = new LineCounter();
  const document = parseDocument(await readText(path), { lineCounter: lines, prettyErrors: false });
  const [fault] = [...document.errors, ...document.warnings];
  if (fault) throw new BooksFault(`${path} line ${lines.linePos(fault.pos[0]).line}: ${fault.message}`);
  const lineOf = (at: readonly PropertyKey[]): number => {
    const node = at.length === 0 ? document.contents : document.getIn(at, true);
    if (isNode(node) && node.range) return lines.linePos(node.range[0]).line;
    return at.length === 0 ? 1 : lineOf(at.slice(0, -1));
  };
  return { data: document.toJS(), lineOf };
}

async function readText(path: string): Promise<string> {
  try {
    return await readFile(path, "utf8");
  } catch (cause) {
    throw new BooksFault(`${path}: cannot be read. Put the company's books there, or set OLDHAND_COMPANY.`, { cause });
  }
}
