import { readFile } from "node:fs/promises";
import { isNode, LineCounter, parseDocument } from "yaml";
import { readPlainYaml } from "./read-plain-yaml.ts";

/** A file of the fault knowledge as plain data, able to say where in it something stands. */
export interface FaultFile {
  /** The file as a fault names it. */
  readonly file: string;
  readonly data: unknown;
  /** "line 7: symptoms.puddle" */
  where(at: readonly PropertyKey[]): string;
}
export type FaultFileRead = FaultFile | { readonly fault: string };

/**
 * Reads one file of the fault knowledge; the whole of YAML is brought in only where a file is not plain, or has a fault
 * whose line must be told.
 * @param path where it stands
 * @param file how a fault names it
 * @returns its data, or a line that says why it is no YAML
 */
export async function readFaultFile(path: string, file: string): Promise<FaultFileRead> {
  const text = await readFile(path, "utf8");
  const where = (at: readonly PropertyKey[]) => parseWhole(text).where(at);
  const plain = readPlainYaml(text);
  if (plain !== undefined) return { file, data: plain, where };
  const { data, fault } = parseWhole(text);
  return fault === undefined ? { file, data, where } : { fault: `${file} ${fault}` };
}

function parseWhole(text: string) {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false });
  const [fault] = [...document.errors, ...document.warnings];
  const lineOf = (at: readonly PropertyKey[]): number => {
    const node = at.length === 0 ? undefined : document.getIn(at, true);
    if (isNode(node) && node.range) return lines.linePos(node.range[0]).line;
    return at.length === 0 ? 1 : lineOf(at.slice(0, -1));
  };
  const data: unknown = fault === undefined ? document.toJS() : undefined;
  return {
    data,
    fault: fault && `line ${lines.linePos(fault.pos[0]).line}: ${fault.message}`,
    where: (at: readonly PropertyKey[]) =>
      `line ${lineOf(at)}: ${at.length === 0 ? "the file" : at.map(String).join(".")}`,
  };
}
