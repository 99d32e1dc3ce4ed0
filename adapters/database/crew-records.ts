import type { BookPerson } from "../../src/books/books.ts";
import { parseCrewChange } from "../../src/boundary/stored-crew.ts";
import type { CrewEvent } from "../../src/crew/crew-event.ts";
import { standingEvents } from "../../src/crew/crew-event.ts";
import { projectRoles } from "../../src/crew/project-crew.ts";
import type { CrewWriting, Door } from "../../src/ports/store.ts";
import { DatabaseFault } from "./database-fault.ts";
import type { Scope } from "./scope.ts";
import { readBack, writeDown } from "./stored-rows.ts";

interface WrittenBy {
  readonly person: string;
  readonly by: string;
  readonly door: Door;
  readonly at_ms: number;
}

/** What was said of people, trucks and stock after an event, oldest first. */
export async function crewHistory(scope: Scope, after: number): Promise<readonly CrewEvent[]> {
  const rows = await scope
    .crewEvents()
    .select(["number", "person", "by", "door", "at_ms", "change", "amends"])
    .where("number", ">", after)
    .orderBy("number")
    .execute();
  return rows.map(({ change, amends, person, ...row }) => ({
    ...row,
    said_by: person,
    change: readBack(parseCrewChange(change), `event ${row.number} of the crew`),
    ...(amends !== null && { amends }),
  }));
}

/** Adds what was said, if the crew is still as it was seen; called inside one transaction. */
export async function addCrewEntries(
  scope: Scope,
  { version, entries }: CrewWriting,
  who: WrittenBy,
  people: readonly BookPerson[],
): Promise<void> {
  const before = await crewHistory(scope, 0);
  const last = before.at(-1)?.number ?? 0;
  if (last !== version)
    throw new DatabaseFault("crew_changed", `the crew was changed meanwhile: ${version} was seen, ${last} is there`);
  const standing = new Set(standingEvents(before).map(({ number }) => number));
  for (const [index, { change, amends }] of entries.entries()) {
    if (amends !== undefined && !standing.has(amends))
      throw new DatabaseFault("job_refused", `there is no event ${amends} of the crew to take back`);
    const json = writeDown(change, parseCrewChange);
    await scope.addCrewEvent({ ...who, number: last + index + 1, change: json, amends: amends ?? null }).execute();
  }
  if (entries.length > 0) await setRoles(scope, people);
}

/** Gives everybody the role that the books and what was said since come to. */
export async function setRoles(scope: Scope, people: readonly BookPerson[]): Promise<void> {
  for (const [id, role] of projectRoles(people, await crewHistory(scope, 0)))
    await scope.changePeople({ role }).where("id", "=", id).execute();
}
