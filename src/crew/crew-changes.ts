import type { Books } from "../books/books.ts";
import { findByName } from "../equipment/find-model.ts";
import { parseQuantity } from "../units/parse-quantity.ts";
import { type Credential, type Part, WEEKDAYS, type Weekday } from "./crew.ts";
import type { CrewChange } from "./crew-event.ts";
import { SHOP } from "./crew-event.ts";
import type { CrewFacts, CrewTask } from "./crew-facts.ts";
import { findInCrew, findPerson, type Refused, refuseFact } from "./crew-refusal.ts";
import { readHours } from "./read-hours.ts";

/** "open": something that the change needs was passed over. */
export type Proposed = CrewChange | Refused | "open";
type Proposal = (facts: CrewFacts, books: Books) => Proposed;

/** Makes a change of what was told, a task each. */
export const PROPOSALS: Readonly<Record<Exclude<CrewTask, "show" | "history" | "withdraw">, Proposal>> = {
  off: (facts, books) => proposeDays("off", facts, books),
  works: (facts, books) => proposeDays("works", facts, books),
  hours: proposeHours,
  truck: proposeTruck,
  credential: proposeCredential,
  training: proposeTraining,
  tool: proposeTool,
  stock: proposeStock,
  role: proposeRole,
  add: proposeJoining,
  remove: proposeLeaving,
};

function proposeDays(kind: "off" | "works", { person, from, until }: CrewFacts, books: Books): Proposed {
  if (person === undefined || from === undefined) return "open";
  const named = findInCrew(person, books);
  if ("kind" in named) return named;
  const to = until ?? from;
  if (to < from) return refuseFact("until", to, { code: "ends_before", data: { from } });
  const { id, name, member } = named;
  const isOff = member.daysOff.some((off) => off.from <= to && off.to >= from);
  if (kind === "works" && !isOff) return refuseFact("from", from, { code: "not_off", data: { name, from } });
  return { kind, person: id, from, to };
}

function proposeHours({ person, weekday, hours }: CrewFacts, books: Books): Proposed {
  if (person === undefined || weekday === undefined || hours === undefined) return "open";
  const named = findInCrew(person, books);
  if ("kind" in named) return named;
  const shifts = readHours(hours);
  if (shifts === undefined) return refuseFact("hours", hours, { code: "unreadable_hours", data: { typed: hours } });
  const weekdays: readonly Weekday[] = weekday === "workdays" ? WEEKDAYS.slice(0, 5) : [weekday];
  return { kind: "hours", person: named.id, weekdays, shifts };
}

function proposeTruck({ person, truck, gone }: CrewFacts, books: Books): Proposed {
  if (person === undefined || (truck === undefined && gone !== true)) return "open";
  const named = findInCrew(person, books);
  if ("kind" in named) return named;
  if (truck === undefined || gone === true) return { kind: "truck", person: named.id };
  const found = findByName(books.crew.trucks.trucks, truck);
  return found.ok ? { kind: "truck", person: named.id, truck: found.entry.id } : unknownTruck(truck, found.nearest);
}

function proposeCredential(facts: CrewFacts, books: Books): Proposed {
  const { person, credential: kind, gone } = facts;
  if (person === undefined || kind === undefined) return "open";
  const named = findInCrew(person, books);
  if ("kind" in named) return named;
  const held = named.member.credentials.filter((one) => one.kind === kind);
  if (gone === true)
    return held.length > 0
      ? { kind: "credential_gone", person: named.id, credential: kind }
      : refuseFact("credential", kind, { code: "has_no_such", data: { name: named.name } });
  const before = held.find(({ issuer }) => issuer === facts.issuer) ?? held[0];
  const number = facts.card_number ?? before?.number;
  const issuer = facts.issuer ?? before?.issuer;
  if (number === undefined || issuer === undefined) return "open";
  const credential: Credential = {
    ...before,
    kind,
    number,
    issuer,
    ...(facts.expires !== undefined && { expires: facts.expires }),
    ...(facts.checked !== undefined && { checked: facts.checked }),
  };
  return { kind: "credential", person: named.id, credential };
}

function proposeTraining({ person, subject, done, until }: CrewFacts, books: Books): Proposed {
  const day = done ?? books.today;
  if (person === undefined || subject === undefined || day === undefined) return "open";
  const named = findInCrew(person, books);
  if ("kind" in named) return named;
  if (until !== undefined && until < day)
    return refuseFact("until", until, { code: "ends_before", data: { from: day } });
  const training = { subject, done: day, ...(until !== undefined && { until }) };
  return { kind: "training", person: named.id, training };
}

/** A tool that somebody carries by its own id; a new one needs to say what it is and its id. */
function proposeTool({ person, tool, serial, until, gone }: CrewFacts, books: Books): Proposed {
  const whose = person ?? books.asker?.id;
  if (whose === undefined || tool === undefined) return "open";
  const named = findInCrew(whose, books);
  if ("kind" in named) return named;
  const { id: who, name, member } = named;
  const wanted = tool.toLowerCase();
  const own = member.tools.find(({ id }) => id.toLowerCase() === (serial ?? wanted).toLowerCase());
  if (gone === true) {
    if (own === undefined) return refuseFact("tool", tool, { code: "not_theirs", data: { name, typed: tool } });
    return { kind: "tool_gone", person: who, id: own.id };
  }
  if (own !== undefined) return until === undefined ? "open" : { kind: "calibrated", person: who, id: own.id, until };
  const found = findByName(namedParts(books, "tool"), tool);
  if (!found.ok) return refuseFact("tool", tool, { code: "not_theirs", data: { name, typed: tool } });
  const ofKind = member.tools.filter((one) => one.tool === found.entry.id);
  const [only] = ofKind;
  if (serial === undefined && only !== undefined && ofKind.length === 1 && until !== undefined)
    return { kind: "calibrated", person: who, id: only.id, until };
  if (serial === undefined) return refuseFact("serial", tool, { code: "not_theirs", data: { name, typed: tool } });
  const calibrated = until !== undefined && { calibratedUntil: until };
  return { kind: "tool", person: who, tool: { tool: found.entry.id, id: serial, ...calibrated } };
}

function proposeStock({ truck, part, amount }: CrewFacts, books: Books): Proposed {
  if (truck === undefined || part === undefined || amount === undefined) return "open";
  const place = findTruck(truck, books);
  if ("kind" in place) return place;
  const found = findByName(namedParts(books, "part"), part);
  if (!found.ok) {
    const data = { typed: part, nearest: found.nearest.join(", ") };
    return refuseFact("part", part, { code: "unknown_part", data });
  }
  const read = readAmount(amount, found.entry.part);
  if (read === undefined) return refuseFact("amount", amount, { code: "unreadable_amount", data: { typed: amount } });
  return { kind: "stock", truck: place.id, part: found.entry.part.id, ...read };
}

/** "+2" and "-1" add and take away; without a sign it is a count. Pieces are whole, and what is cut has a unit. */
function readAmount(typed: string, { measure }: Part): { how: "add" | "count"; amount: number } | undefined {
  const [, sign = "", rest = ""] = /^\s*([+\-−]?)\s*(.*)$/.exec(typed) ?? [];
  const kind = measure === "length" ? "length" : "count";
  const read = parseQuantity(rest, kind, { units: "us", decimal: "point" });
  if (!read.ok || !(read.value >= 0) || read.readAs !== undefined) return undefined;
  if (kind === "count" && !Number.isInteger(read.value)) return undefined;
  return sign === ""
    ? { how: "count", amount: read.value }
    : { how: "add", amount: sign === "+" ? read.value : -read.value };
}

export function findTruck(typed: string, books: Books): { readonly id: string; readonly name: string } | Refused {
  const { trucks } = books.crew.trucks;
  const found = findByName([...trucks.map(({ id, name }) => ({ id, name })), { id: SHOP, name: SHOP }], typed);
  return found.ok ? found.entry : unknownTruck(typed, found.nearest);
}

function unknownTruck(typed: string, nearest: readonly string[]): Refused {
  return refuseFact("truck", typed, { code: "unknown_truck", data: { typed, nearest: nearest.join(", ") } });
}

function namedParts({ crew }: Books, group: Part["group"]) {
  const parts = crew.parts.filter((part) => part.group === group);
  return parts.flatMap((part) => [
    { id: part.id, name: part.name.en, part },
    { id: part.id, name: part.name.es, part },
  ]);
}

function proposeRole({ person, role }: CrewFacts, books: Books): Proposed {
  if (person === undefined || role === undefined) return "open";
  const named = findKnown(person, books);
  return "kind" in named ? named : { kind: "role", person: named.id, role };
}

function proposeJoining({ person }: CrewFacts, books: Books): Proposed {
  if (person === undefined) return "open";
  const named = findKnown(person, books);
  if ("kind" in named) return named;
  const { id, name } = named;
  if (books.crew.members.some((one) => one.person === id))
    return refuseFact("person", person, { code: "in_crew", data: { name } });
  return { kind: "joined", person: id, name };
}

function proposeLeaving({ person }: CrewFacts, books: Books): Proposed {
  if (person === undefined) return "open";
  const named = findPerson(person, books);
  return "kind" in named ? named : { kind: "left", person: named.id };
}

/** Somebody of the books, or whoever wrote to Oldhand before. */
function findKnown(typed: string, books: Books): { readonly id: string; readonly name: string } | Refused {
  const found = findByName([...books.people, ...(books.met ?? [])], typed);
  return found.ok ? found.entry : refuseFact("person", typed, { code: "met_nobody", data: { typed } });
}
