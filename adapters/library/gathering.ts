import { join } from "node:path";
import type { FileRead } from "../../src/boundary/library-files.ts";
import { LibraryFault } from "./library-fault.ts";
import { type LoadedFile, readFolder } from "./read-folder.ts";

/** How one kind of file is read. */
export interface FileKind<T> {
  /** The name under which a file of this name exports what it is about. */
  readonly exportedAs: (name: string) => string;
  readonly read: (exported: unknown) => FileRead<T>;
  readonly check: (value: T, name: string) => readonly string[];
}

/** Reads folders of source files, and keeps every fault until the end so that all are told at once. */
export class Gathering {
  readonly root: string;
  readonly #faults: string[] = [];
  readonly #failed = new Set<string>();

  constructor(root: string) {
    this.root = root;
  }

  /** What the files of a folder export, by the files' names. A file with a fault is left out. */
  async gather<T>(folder: readonly string[], kind: FileKind<T>): Promise<Map<string, T>> {
    const { files, faults } = await readFolder(this.root, ...folder);
    for (const { name, fault } of faults) this.#fail(name, fault);
    const gathered = new Map<string, T>();
    for (const file of files) {
      const value = this.#take(file, kind);
      if (value !== undefined) gathered.set(file.name, value);
    }
    return gathered;
  }

  /** True when a file of this name could not be read: what depends on it is not worth a second line. */
  hasFailed(name: string): boolean {
    return this.#failed.has(name);
  }

  /** Faults every file that is wanted and was not read at all. */
  requireAll(folder: readonly string[], names: readonly string[], found: ReadonlyMap<string, unknown>): void {
    for (const name of names) {
      const file = join("src", ...folder, `${name}.ts`);
      if (!found.has(name) && !this.hasFailed(name))
        this.#faults.push(`${file}: is missing; ${name} needs its sentences there`);
    }
  }

  /** Faults a file that was read, for what only the other files tell. */
  refuse(folder: readonly string[], name: string, fault: string): void {
    this.#faults.push(`${join("src", ...folder, `${name}.ts`)}: ${fault}`);
  }

  throwFaults(): void {
    if (this.#faults.length > 0) throw new LibraryFault(this.#faults);
  }

  #take<T>({ name, file, exports }: LoadedFile, kind: FileKind<T>): T | undefined {
    const wanted = kind.exportedAs(name);
    if (exports[wanted] === undefined) return this.#fail(name, `${file}: does not export "${wanted}"`);
    const read = kind.read(exports[wanted]);
    if (!read.ok) return this.#fail(name, `${file}: ${read.reason}`);
    this.#faults.push(...kind.check(read.value, name).map((fault) => `${file}: ${fault}`));
    return read.value;
  }

  #fail(name: string, fault: string): undefined {
    this.#faults.push(fault);
    this.#failed.add(name);
    return undefined;
  }
}
