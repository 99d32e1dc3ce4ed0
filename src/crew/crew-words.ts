import type { Books } from "../books/books.ts";
import { type FindingOf, type FindingSpecs, q } from "../declaration/answer.ts";
import { findByName } from "../equipment/find-model.ts";
import type { Quantity } from "../units/quantity-kinds.ts";
import { CREDENTIAL_WORDS, SKILL_WORDS } from "./skills-table.ts";

/** How people, parts and papers are named in the answers of the office; shared by kit, ready and plan. */
export const CREW_WORDS = {
  ...CREDENTIAL_WORDS,
  ...SKILL_WORDS,
  /** The name of a part or tool in both languages; each catalogue says its own. */
  part: { en: "word", es: "word" },
  training: { subject: "word" },
  working_hours: {},
  helpers: {},
  permit: {},
  survey: {},
  nobody: {},
} as const satisfies FindingSpecs;
export type CrewWord = FindingOf<typeof CREW_WORDS>;

/** The name of a part or tool; its id where the book does not know it. */
export function partWord(id: string, { crew }: Books): CrewWord {
  const { en, es } = crew.parts.find((part) => part.id === id)?.name ?? { en: id, es: id };
  return { code: "part", data: { en, es } };
}

/** So much of a part: counted, or by length. */
export function partAmount(id: string, amount: number, { crew }: Books): Quantity {
  const isCut = crew.parts.find((part) => part.id === id)?.measure === "length";
  return isCut ? q("length", amount) : q("count", amount);
}

/** The name of somebody by their id. */
export function personName(id: string, { people }: Books): string {
  return people.find((person) => person.id === id)?.name ?? id;
}

/** Names with commas between, or the word for nobody. */
export function namesOf(ids: readonly string[], books: Books): string | CrewWord {
  if (ids.length === 0) return { code: "nobody", data: {} };
  return ids.map((id) => personName(id, books)).join(", ");
}

/** Somebody of the crew book by id or name, or who has the nearest names. */
export function findMember(typed: string, books: Books) {
  const named = books.crew.members.map((member) => ({
    id: member.person,
    name: personName(member.person, books),
    member,
  }));
  return findByName(named, typed);
}
