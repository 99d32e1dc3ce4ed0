import type { Books } from "../books/books.ts";
import type { OutOfRange } from "../declaration/answer.ts";
import { findByName } from "../equipment/find-model.ts";
import type { CrewMember } from "./crew.ts";
import type { CrewFactId } from "./crew-facts.ts";
import type { CrewFinding } from "./crew-findings.ts";
import { personName } from "./crew-words.ts";

/** A value that cannot be used, asked again with why. */
export type Refused = OutOfRange<CrewFinding>;

export function refuseFact(fact: CrewFactId, value: string, reason: CrewFinding): Refused {
  return { kind: "out-of-range", fact, value, reason };
}

/** Somebody with their entry in the crew's book, if they have one. */
export interface Named {
  readonly id: string;
  readonly name: string;
  readonly member?: CrewMember;
}

/** Somebody of the books, by id or name. */
export function findPerson(typed: string, books: Books): Named | Refused {
  const ids = new Set([...books.people.map(({ id }) => id), ...books.crew.members.map(({ person }) => person)]);
  const all = [...ids].map((id) => ({ id, name: personName(id, books) }));
  const found = findByName(all, typed);
  if (!found.ok)
    return refuseFact("person", typed, {
      code: "unknown_person",
      data: { typed, nearest: found.nearest.join(", ") },
    });
  const { id, name } = found.entry;
  const member = books.crew.members.find(({ person }) => person === id);
  return { id, name, ...(member && { member }) };
}

/** Somebody who goes to site. */
export function findInCrew(typed: string, books: Books): Required<Named> | Refused {
  const named = findPerson(typed, books);
  if ("kind" in named) return named;
  const { id, name, member } = named;
  if (member === undefined) return refuseFact("person", typed, { code: "not_in_crew", data: { name } });
  return { id, name, member };
}
