/** A file as plain data, able to say where in it a path stands. */
export interface BookFile {
  readonly path: string;
  readonly data: unknown;
  /** "line 7: tank.volume" */
  where(at: readonly PropertyKey[]): string;
}

/** A book that cannot be used: one line a fault, each naming the file, the line and what to write. */
export class BooksFault extends Error {
  readonly code = "books_fault";
}
