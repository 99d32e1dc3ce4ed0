import type { CatalogueModel } from "./catalogue.ts";

/** What a typed name came to: the entry of that name, or the ones that look most like it, nearest first. */
export type Found<T> =
  | { readonly ok: true; readonly entry: T }
  | { readonly ok: false; readonly nearest: readonly string[] };
interface Named {
  readonly id: string;
  readonly name: string;
}

/** A person can choose between this many. */
const MOST_NEAREST = 3;

/** The model of a catalogue that goes by this id or name, however it is spaced. */
export function findModel(catalogue: readonly CatalogueModel[], typed: string): Found<CatalogueModel> {
  return findByName(catalogue, typed);
}

/** The entry of a list that goes by this id or name; letter case, spaces and hyphens do not count. */
export function findByName<T extends Named>(list: readonly T[], typed: string): Found<T> {
  const wanted = plainName(typed);
  const entry = list.find(({ id, name }) => plainName(id) === wanted || plainName(name) === wanted);
  if (entry !== undefined) return { ok: true, entry };
  const likeness = list.map(({ id, name }) => ({
    id,
    share: Math.max(sharedPairs(wanted, plainName(id)), sharedPairs(wanted, plainName(name))),
  }));
  const nearest = likeness.sort((a, b) => b.share - a.share).slice(0, MOST_NEAREST);
  return { ok: false, nearest: nearest.map(({ id }) => id) };
}

function plainName(name: string): string {
  return name.toLowerCase().replace(/[^\p{L}\p{N}]/gu, "");
}

/** Share of letter pairs that two names have in common, 0..1 (Dice's coefficient). */
function sharedPairs(a: string, b: string): number {
  const [pairsOfA, pairsOfB] = [letterPairs(a), letterPairs(b)];
  const left = [...pairsOfB];
  const shared = pairsOfA.filter((pair) => {
    const at = left.indexOf(pair);
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
  return (2 * shared.length) / Math.max(1, pairsOfA.length + pairsOfB.length);
}

function letterPairs(name: string): readonly string[] {
  return Array.from({ length: Math.max(0, name.length - 1) }, (_, at) => name.slice(at, at + 2));
}
