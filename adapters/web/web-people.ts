import type { Language } from "../../src/messages/language.ts";
import type { Caller, Role } from "../../src/ports/store.ts";

/** Somebody who may be picked as the one who speaks. */
export interface WebPerson {
  /** The id under which the books know the person. */
  readonly user: string;
  readonly name: string;
  readonly role: Role;
}

/** The language that a person reads now; it changes when they ask for it. */
export type FindLanguage = (caller: Caller) => Promise<Language>;

/** The caller that the desk sees when this person is picked in the page. */
export function callerOf({ user, name }: WebPerson): Caller {
  return { door: "web", organisation: "local", user, name };
}
