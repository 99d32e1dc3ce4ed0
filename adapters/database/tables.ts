import type { Generated } from "kysely";
import type { Language } from "../../src/messages/language.ts";
import type { Door, Role } from "../../src/ports/store.ts";
import type { UnitSystem } from "../../src/units/quantity-kinds.ts";

/**
 * Every table by name. All but the first two belong to a workspace and are reached through `scope.ts` alone. What is
 * kept as JSON has its shape in `src/boundary`: a change there needs a migration of the rows that are there already.
 */
export interface Tables {
  readonly workspace: WorkspaceTable;
  readonly workspace_door: WorkspaceDoorTable;
  readonly person: PersonTable;
  readonly person_door: PersonDoorTable;
  readonly conversation: ConversationTable;
  readonly delivery: DeliveryTable;
  readonly link_code: LinkCodeTable;
  readonly exchange: ExchangeTable;
}

interface WorkspaceTable {
  readonly id: string;
  readonly name: string;
}
/** Which workspace an organisation of a platform belongs to. */
interface WorkspaceDoorTable {
  readonly door: Door;
  readonly organisation: string;
  readonly workspace: string;
}
interface PersonTable {
  readonly workspace: string;
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly language: Language;
  readonly units: UnitSystem;
  /** 1: stands in the company's books, which say the name and the role. */
  readonly in_books: 0 | 1;
}
/** How a person is called at a door. */
interface PersonDoorTable {
  readonly workspace: string;
  readonly door: Door;
  readonly organisation: string;
  readonly user: string;
  readonly person: string;
}
interface ConversationTable {
  readonly workspace: string;
  readonly person: string;
  readonly conversation: string;
  /** A `ConversationState` as JSON. */
  readonly state: string;
  /** 1: the state holds an open walk. */
  readonly has_walk: 0 | 1;
  /** Number of the exchange that last touched it; unlike a time it never runs backwards. */
  readonly touched: number;
}
/** What a delivery was answered with, so that the same delivery again gets the same card. */
interface DeliveryTable {
  readonly workspace: string;
  readonly delivery: string;
  /** A `Card` as JSON. */
  readonly card: string;
  readonly at_ms: number;
}
interface LinkCodeTable {
  readonly workspace: string;
  readonly code: string;
  readonly person: string;
  readonly expires_ms: number;
  readonly used_ms: number | null;
}
/** The log: who said what, when, at which door, and what it was answered with. Rows are only ever added. */
interface ExchangeTable {
  readonly number: Generated<number>;
  readonly workspace: string;
  readonly person: string;
  readonly door: Door;
  readonly conversation: string;
  readonly delivery: string;
  readonly at_ms: number;
  readonly said: string;
  readonly card_title: string;
}
