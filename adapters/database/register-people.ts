import type { BookPerson } from "../../src/books/books.ts";
import type { Door } from "../../src/ports/store.ts";
import type { Scope } from "./scope.ts";

interface Organisation {
  readonly door: Door;
  readonly organisation: string;
}

/**
 * Makes the people in the company's books known at its doors. The books say name and role; language and units are
 * theirs to begin with and the person's own from then on. Who has left the books keeps the past and loses the role.
 */
export async function registerPeople(
  scope: Scope,
  people: readonly BookPerson[],
  doors: readonly Organisation[],
): Promise<void> {
  const ids = people.map(({ id }) => id);
  await scope
    .changePeople({ role: "technician", in_books: 0 })
    .where("in_books", "=", 1)
    .where("id", "not in", ids)
    .execute();
  for (const person of people) {
    const { id, name, role, language, units } = person;
    await scope
      .addPerson({ id, name, role, language, units, in_books: 1 })
      .onConflict((conflict) => conflict.columns(["workspace", "id"]).doUpdateSet({ name, role, in_books: 1 }))
      .execute();
    for (const { door, organisation } of doors) {
      const user = userAt(person, door);
      if (user !== undefined) await joinDoor(scope, { door, organisation, user }, id);
    }
  }
}

/** From now on this caller is this person. */
export async function joinDoor(
  scope: Scope,
  { door, organisation, user }: Organisation & { readonly user: string },
  person: string,
): Promise<void> {
  await scope
    .addPersonDoor({ door, organisation, user, person })
    .onConflict((conflict) => conflict.columns(["workspace", "door", "organisation", "user"]).doUpdateSet({ person }))
    .execute();
}

function userAt(person: BookPerson, door: Door): string | undefined {
  if (door === "slack") return person.slackUser;
  if (door === "teams") return person.teamsUser;
  return person.id;
}
