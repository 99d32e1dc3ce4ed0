/**
 * Where a number or an equation comes from. `basis` says how sure we may be of it:
 * published = the document or a copy of it was read; computed = exact arithmetic or physics;
 * common_practice = trade habit without a source; from_memory = not looked up; invented = demo data.
 */
export interface Source {
  readonly basis: "published" | "computed" | "common_practice" | "from_memory" | "invented";
  readonly document: string;
  readonly section?: string;
  readonly edition?: string;
}

/** One line that names a source, the same in every language because titles are not translated. */
export function citeSource(source: Source): string {
  return [source.document, source.edition, source.section].filter((part) => part !== undefined).join(", ");
}
