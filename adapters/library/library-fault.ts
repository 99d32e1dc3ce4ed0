/** A topic or a caution that cannot be loaded: one line a fault, each naming the file. */
export class LibraryFault extends Error {
  readonly code = "library_fault";

  constructor(faults: readonly string[]) {
    super(faults.join("\n"));
  }
}
