import type { Books } from "../books/books.ts";
import { type CrewEntry, type CrewEvent, standingEvents } from "../crew/crew-event.ts";
import { type CrewRefusal, refuseCrewEntry } from "../crew/crew-rules.ts";
import { projectCrew } from "../crew/project-crew.ts";
import type { Job, JobEntry, JobEvent } from "../jobs/job.ts";
import { CREW_TEXTS } from "../messages/crew-texts.ts";
import type { CrewWriting, Person } from "../ports/store.ts";
import type { JobWriting } from "./write-job.ts";

/** What a message says of people, trucks and stock, while it is written. */
export interface CrewDraft {
  readonly person: Person;
  /** The books as they would be with all of it. */
  readonly books: Books;
  readonly events: readonly CrewEvent[];
  readonly entries: readonly CrewEntry[];
  /** Said under the card. */
  readonly notes: readonly string[];
}

export function startCrew({ person, own }: Pick<JobWriting, "person" | "own">): CrewDraft {
  return { person, books: own.books, events: own.crewEvents, entries: [], notes: [] };
}

/** One more entry, or why the rules refuse it. */
export function tellCrew(draft: CrewDraft, entry: CrewEntry): CrewDraft | CrewRefusal {
  return refuseCrewEntry(draft.books, draft.events, entry, draft.person) ?? addEntry(draft, entry);
}

function addEntry(draft: CrewDraft, entry: CrewEntry): CrewDraft {
  const { person, books, events, entries } = draft;
  const number = (events.at(-1)?.number ?? 0) + 1;
  const event: CrewEvent = { number, by: person.name, said_by: person.id, at_ms: 0, door: "web", ...entry };
  // Only the standing events matter, so what is taken back needs all of them anew; the rest goes on top.
  const after = entry.amends === undefined ? projectCrew(books, [event]) : books;
  return { ...draft, books: after, events: [...events, event], entries: [...entries, entry] };
}

/**
 * Parts used on a job come off the truck of whoever did it, as far as they were on it; taken back in the job, they are back
 * on the truck. What lies in no known truck is nobody's to count.
 */
export function useParts(draft: CrewDraft, job: Job | undefined, event: JobEvent, amends?: number): CrewDraft {
  if (job === undefined) return draft;
  if (amends !== undefined) return putBack(draft, job, amends);
  if (event.change.kind !== "parts") return draft;
  const truck = truckOf(job, draft);
  if (truck === undefined) return draft;
  const onIt = Object.entries(event.change.parts).filter(([part]) => (truck.stock[part] ?? 0) > 0);
  if (onIt.length === 0) return draft;
  const texts = CREW_TEXTS[draft.person.language];
  const parts = Object.fromEntries(onIt);
  const used = addEntry(draft, {
    change: { kind: "used", truck: truck.id, job: job.number, entry: event.number, parts },
  });
  return { ...used, notes: [...used.notes, texts.offTruck(truck.name, job.number, String(onIt.length))] };
}

function putBack(draft: CrewDraft, job: Job, amends: number): CrewDraft {
  const said = standingEvents(draft.events).find(
    ({ change }) => change.kind === "used" && change.job === job.number && change.entry === amends,
  );
  if (said === undefined || said.change.kind !== "used") return draft;
  const truck = said.change.truck;
  const name = draft.books.crew.trucks.trucks.find(({ id }) => id === truck)?.name ?? truck;
  const back = addEntry(draft, { change: { kind: "withdrawn" }, amends: said.number });
  return { ...back, notes: [...back.notes, CREW_TEXTS[draft.person.language].backOnTruck(name, job.number)] };
}

/** The truck of the first of the crew who has one, else of whoever says so. */
function truckOf(job: Job, { books, person }: CrewDraft) {
  const { members, trucks } = books.crew;
  const truckIds = [...job.people, person.id].flatMap(
    (id) => members.find((member) => member.person === id)?.truck ?? [],
  );
  return trucks.trucks.find(({ id }) => id === truckIds[0]);
}

/** Takes events back one after the other; nothing of it where one may not be. */
export function takeBackCrew(draft: CrewDraft, events: readonly number[]): CrewDraft | CrewRefusal {
  return events.reduce<CrewDraft | CrewRefusal>(
    (soFar, amends) => ("code" in soFar ? soFar : tellCrew(soFar, { change: { kind: "withdrawn" }, amends })),
    draft,
  );
}

/** Numbers of the events that undo takes back; what follows from a job's parts is put right there. */
export function enteredCrew({ events, entries }: CrewDraft): readonly number[] {
  return events
    .slice(events.length - entries.length)
    .flatMap(({ number, change }) => (change.kind === "used" || change.kind === "withdrawn" ? [] : [number]));
}

/** What is committed; a plan is only good while the crew is as it was seen, whether or not anything is said of it. */
export function crewWriting(draft: CrewDraft, jobs: readonly JobEntry[]): CrewWriting | undefined {
  const rests = jobs.some(({ change }) => change.kind === "planned");
  if (draft.entries.length === 0 && !rests) return undefined;
  const version = draft.events.length - draft.entries.length;
  return { version, entries: draft.entries };
}

export function crewNotes({ notes }: CrewDraft): readonly string[] {
  return notes;
}
