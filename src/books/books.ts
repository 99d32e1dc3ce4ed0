import type { CatalogueModel } from "../equipment/catalogue.ts";
import type { Language } from "../messages/language.ts";
import type { Role } from "../ports/store.ts";
import type { UnitSystem } from "../units/quantity-kinds.ts";
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

/** Names that people may pick from, by the list they stand in. */
export type NameLists = Readonly<Record<"model" | "place", readonly string[]>>;

/** The names of the books, in their order. */
export function listNames({ catalogue, places }: Books): NameLists {
  return { model: catalogue.map(({ id }) => id), place: places.map(({ id }) => id) };
}
