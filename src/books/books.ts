import type { Code } from "../cautions/code.ts";
import type { CrewBooks } from "../crew/crew.ts";
import type { CrewEvent } from "../crew/crew-event.ts";
import type { LocalText } from "../declaration/answer.ts";
import type { FactValue } from "../declaration/facts.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName } from "../equipment/find-model.ts";
import type { DigestSchedule } from "../jobs/digest/due.ts";
import type { Job, JobEvent } from "../jobs/job.ts";
import type { JobRecord } from "../jobs/job-record.ts";
import type { Language } from "../messages/language.ts";
import type { Channel } from "../ports/outbox.ts";
import type { Solve } from "../ports/solver.ts";
import type { Person, Role } from "../ports/store.ts";
import type { QuantityKind, UnitSystem } from "../units/quantity-kinds.ts";
import type { DisplayCodeEntry } from "./display-codes.ts";
import type { Place } from "./places.ts";
import type { PriceBook } from "./prices.ts";

/** What a company has loaded: the demo company's seeds, or its own. Frozen at start-up. */
export interface Books {
  readonly company: Company;
  readonly people: readonly BookPerson[];
  readonly catalogue: readonly CatalogueModel[];
  /** The first is the company's own. */
  readonly places: readonly Place[];
  readonly prices: PriceBook;
  /** The code at the company's own place. */
  readonly code: Code;
  /** The code at each place of the books, by its id. */
  readonly codes: Readonly<Record<string, Code>>;
  /** What the displays of the company's models show, from its own book; see `findDisplayCodes`. */
  readonly displayCodes: readonly DisplayCodeEntry[];
  /** Jobs that were there before Oldhand kept them, as they stood then; what happened since is in the store. */
  readonly jobs: readonly Job[];
  /** All that happened to them, job by job, oldest first: the store begins with these. */
  readonly jobEvents: readonly JobEvent[];
  /** Who goes to site with what: credentials, tools, hours, trucks, parts, driving times. */
  readonly crew: CrewBooks;
  /** How the causes of faults are called, by id; left out where the books are read without the knowledge of faults. */
  readonly causeNames?: Readonly<Record<string, LocalText>>;
  /** The solver that a topic asked for by `uses`; lent by whoever runs the topic, never written in a book. */
  readonly solve?: Solve;
  /** Who asks; lent by the desk, never written in a book. */
  readonly asker?: Asker;
  /** The job that is talked about, a number for a new one, and the day; lent by the desk, never written in a book. */
  readonly openJob?: Job;
  /** All that happened to that job, oldest first, where a topic shows it or puts it right. */
  readonly openHistory?: readonly JobEvent[];
  /** Number of the job that the conversation is about, which need not be the one that a message names. */
  readonly talkedJob?: string;
  /** Reads what somebody typed, as they write numbers and words. */
  readonly readTyped?: ReadTyped;
  readonly nextJob?: string;
  /** What is kept of the job that is asked for besides how it stands; lent by the desk, never written in a book. */
  readonly openRecord?: OpenRecord;
  readonly today?: string;
  /** What was said of the crew since, and everybody who was ever met; lent by the desk to topics that ask for the crew. */
  readonly crewEvents?: readonly CrewEvent[];
  readonly met?: readonly Asker[];
}

export interface Company {
  readonly name: string;
  /** True: every name and number in these books is invented. */
  readonly isInvented: boolean;
  readonly town: string;
  /** IANA time zone name. */
  readonly timeZone: string;
  /** What somebody reads who is not in the books, until they say otherwise. */
  readonly language: Language;
  readonly units: UnitSystem;
  /** True: pictures keep where they were taken; otherwise that is taken out of them. */
  readonly keepsPhotoPlace?: boolean;
  /** Where the team reads what became of each job. */
  readonly teamChannel?: Channel;
  /** When and where managers read the digests; left out where none are posted. */
  readonly digest?: DigestSchedule;
}

/** Somebody the company knows by name. At the company's own doors (web, terminal) `id` is how they sign in. */
export interface BookPerson {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
  readonly units: UnitSystem;
  /** How a chat platform calls the same person, when the company's books say so. */
  readonly slackUser?: string;
  readonly teamsUser?: string;
}

/** What a typed value is for: a fact under the id that jobs keep it by, with the topic it was told to, or a measured value. */
export type TypedFor = { readonly topic: string; readonly fact: string } | { readonly quantity: QuantityKind };
/** @returns nothing where the text is no such value */
export type ReadTyped = (about: TypedFor, text: string) => FactValue | undefined;
/** The history of a job and what was done about its cautions. */
export type OpenRecord = { readonly job: string } & Pick<JobRecord, "events" | "marks">;

/** Whoever asks, as far as an answer depends on it. */
export type Asker = Pick<Person, "id" | "name" | "role">;

/** Names that people may pick from, by the list they stand in. */
export type NameLists = Readonly<Record<"model" | "place", readonly string[]>> &
  Readonly<Partial<Record<"person" | "job" | "anybody" | "truck" | "part", readonly string[]>>>;

/** The names of the books, in their order. */
export function listNames({ catalogue, places, crew, jobs, people }: Books): NameLists {
  return {
    model: catalogue.map(({ id }) => id),
    place: places.map(({ id }) => id),
    person: crew.members.map(({ person }) => person),
    job: jobs.map(({ number }) => number),
    anybody: people.map(({ id }) => id),
    truck: crew.trucks.trucks.map(({ id }) => id),
    part: crew.parts.filter(({ group }) => group === "part").map(({ id }) => id),
  };
}

/**
 * The code at a place of the books; the company's own where none is named.
 * @param place id or name of a place, as somebody told it
 */
export function codeAt({ code, codes, places }: Books, place: unknown): Code {
  if (typeof place !== "string") return code;
  const known = findByName(places, place);
  return (known.ok ? codes[known.entry.id] : undefined) ?? code;
}
