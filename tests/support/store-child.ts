import { openStore } from "../../adapters/database/open-store.ts";
import { BOOKS } from "./sample-books.ts";
import { card, exchangeOf, stateWith } from "./store-samples.ts";

/**
 * A process of its own that opens the store at `path` and commits `count` exchanges under deliveries `name 0`,
 * `name 1`, ... It prints each number once its commit has returned; the parent may kill it at any moment.
 */
const [path = "", name = "", count = "0"] = process.argv.slice(2);
const caller = { door: "terminal", organisation: "local", user: "teo", name: "Teo" } as const;
const store = await openStore({ path, books: BOOKS, ownOrganisations: [] });
const workspace = await store.openWorkspace(caller);
const person = await workspace.findPerson(caller);
process.stdout.write("open\n");
for (let number = 0; number < Number(count); number += 1) {
  const said = { delivery: `${name} ${number}`, conversation: `${name} ${number}`, card: card(`${name} ${number}`) };
  await workspace.commit(exchangeOf(person, { ...said, state: stateWith(`${number}`) }));
  process.stdout.write(`${number}\n`);
}
await store.close();
