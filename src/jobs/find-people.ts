import type { Books } from "../books/books.ts";
import { type Found, findByName } from "../equipment/find-model.ts";

interface Named {
  readonly id: string;
  readonly name: string;
}

/** Somebody of the company, by the name they go by: their id, their name, or their first name where it is theirs alone. */
export function findPerson(typed: string, { people, crew }: Books): Found<Named> {
  const known = people.map(({ id, name }) => ({ id, name }));
  const others = crew.members.map(({ person }) => ({ id: person, name: person }));
  const found = findByName([...known, ...others], typed);
  if (found.ok) return found;
  const first = known.filter(({ name }) => name.split(" ")[0]?.toLowerCase() === typed.trim().toLowerCase());
  const [only] = first;
  return only !== undefined && first.length === 1 ? { ok: true, entry: only } : found;
}

/** What stands between the names of several people, in both languages. */
const BETWEEN = /\s*(?:,|;|&|\+|\band\b|\by\b|\bcon\b|\bwith\b)\s*/i;

/**
 * Several people by the names they go by.
 * @returns their ids in the order they were named, or the first name that nobody has
 */
export function findPeople(
  typed: string,
  books: Books,
):
  | { readonly ok: true; readonly ids: readonly string[] }
  | { readonly ok: false; readonly typed: string; readonly nearest: readonly string[] } {
  const ids: string[] = [];
  for (const name of typed.split(BETWEEN).filter((part) => part.trim() !== "")) {
    const found = findPerson(name, books);
    if (!found.ok) return { ok: false, typed: name, nearest: found.nearest };
    ids.push(found.entry.id);
  }
  return { ok: true, ids: [...new Set(ids)] };
}

/** The name that somebody goes by. */
export function nameOfPerson(id: string, { people }: Books): string {
  return people.find((one) => one.id === id)?.name ?? id;
}
