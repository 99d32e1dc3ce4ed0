import { isNode, LineCounter, parseDocument } from "yaml";
import { type BookFile, BooksFault } from "./book-file.ts";

/** Reads a YAML file, refusing it when it is no YAML. */
export function readYaml(path: string, text: string): BookFile {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const [fault] = [...document.errors, ...document.warnings];
  if (fault) throw new BooksFault(`${path} line ${lines.linePos(fault.pos[0]).line}: ${fault.message}`);
  const lineOf = (at: readonly PropertyKey[]): number => {
    const node = at.length === 0 ? document.contents : document.getIn(at, true);
    if (isNode(node) && node.range) return lines.linePos(node.range[0]).line;
    return at.length === 0 ? 1 : lineOf(at.slice(0, -1));
  };
  return {
    path,
    data: document.toJS(),
    where: (at) => `line ${lineOf(at)}: ${at.length === 0 ? "the file" : at.map(String).join(".")}`,
  };
}
