import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { Level } from "../faults/knowledge.ts";

/** A code that a unit's display shows, as the company's own book explains it from the unit's manual. */
export interface DisplayCodeEntry {
  /** Model of the company's catalogue. */
  readonly model: string;
  readonly code: string;
  /** In the company's own words. */
  readonly meaning: string;
  readonly pointsTo: readonly CodePointer[];
}
/** What a code speaks for, and how strongly: a cause, a symptom, or an outcome of a check. */
export interface CodePointer {
  /** Id of a cause or symptom; of a check where there is an outcome. */
  readonly id: string;
  readonly outcome?: string;
  readonly level: Level;
}

type Codes = { readonly displayCodes: readonly DisplayCodeEntry[]; readonly catalogue: readonly CatalogueModel[] };

/**
 * What the company's books say of a code.
 * @param books its book of codes first, then the codes of the catalogue that it leaves out
 * @param code as typed; case, blanks, dots and hyphens do not matter
 * @param model where it is known
 * @returns every entry with this code, in the order of the books; none when the books do not have it
 */
export function findDisplayCodes(books: Codes, code: string, model?: string): readonly DisplayCodeEntry[] {
  const wanted = foldCode(code);
  const isMeant = (entry: DisplayCodeEntry) =>
    foldCode(entry.code) === wanted && (model === undefined || entry.model === model);
  const written = books.displayCodes.filter(isMeant);
  const ofCatalogue = books.catalogue
    .flatMap(({ id, displayCodes }) => displayCodes.map((one) => ({ ...one, model: id, pointsTo: [] })))
    .filter(isMeant);
  return [...written, ...ofCatalogue.filter((one) => !written.some(({ model: of }) => of === one.model))];
}

/** A code as it is compared: "e-04", "E 04" and "E04" are one. */
export function foldCode(code: string): string {
  return code.toUpperCase().replace(/[\s.\-_]/g, "");
}
