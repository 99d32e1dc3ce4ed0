import { connect, openOn } from "../../adapters/database/open-database.ts";
import { createStore } from "../../adapters/database/open-store.ts";
import { openHighsSolver } from "../../adapters/solver/highs-solver.ts";
import type { Books } from "../../src/books/books.ts";
import type { Card } from "../../src/messages/card.ts";
import type { Caller, Store } from "../../src/ports/store.ts";
import { seedBooks } from "./ask-with-seeds.ts";
import { type JobDesk, openJobDeskOn } from "./job-desk.ts";

/** Somebody of the demo company at its own web chat. */
export function at(user: string): Caller {
  return { door: "web", organisation: "local", user, name: user };
}

/** The demo company's people, jobs and books behind a desk, in a database that is kept in memory. */
export interface CompanyDesk extends JobDesk<Store> {
  as(user: string, text: string): Promise<Card>;
}

export async function openCompanyDesk(books: Books = seedBooks): Promise<CompanyDesk> {
  const store = await createStore(await openOn(connect(":memory:")), { books, ownOrganisations: [] });
  const desk = openJobDeskOn(store, books, { openSolver: openHighsSolver });
  return Object.assign(desk, { as: (user: string, text: string) => desk.say(text, at(user), `c-${user}`) });
}
