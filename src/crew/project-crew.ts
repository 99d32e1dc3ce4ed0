import type { BookPerson, Books } from "../books/books.ts";
import type { Role } from "../ports/store.ts";
import type { CrewBooks, CrewMember, DaysOff, Stock, TruckBook } from "./crew.ts";
import { type CrewChange, type CrewEvent, SHOP, standingEvents } from "./crew-event.ts";
import { addDays } from "./days.ts";

/** The books as everything that was said since leaves them: who is in the crew with what, who may do what, what lies where. */
export function projectCrew(books: Books, events: readonly CrewEvent[]): Books {
  const standing = standingEvents(events);
  if (standing.length === 0) return books;
  const crew = standing.reduce((soFar, { change }) => applyChange(soFar, change), books.crew);
  return { ...books, crew, people: projectPeople(books.people, standing) };
}

/**
 * The role of everybody whose role was ever told otherwise than the books have it, taken back or not.
 * @param people the books' own; whoever does not stand there is a technician
 */
export function projectRoles(people: readonly BookPerson[], events: readonly CrewEvent[]): ReadonlyMap<string, Role> {
  const named = events.flatMap(({ change }) => (change.kind === "role" || change.kind === "left" ? change.person : []));
  const base = (id: string): Role => people.find((one) => one.id === id)?.role ?? "technician";
  const roles = new Map(named.map((id) => [id, base(id)] as const));
  for (const { change } of standingEvents(events)) {
    if (change.kind === "role") roles.set(change.person, change.role);
    if (change.kind === "left") roles.set(change.person, "technician");
  }
  return roles;
}

function projectPeople(people: readonly BookPerson[], standing: readonly CrewEvent[]): readonly BookPerson[] {
  const roles = projectRoles(people, standing);
  const known = people.map((one) => ({ ...one, role: roles.get(one.id) ?? one.role }));
  const met = new Map(
    standing.flatMap(({ change }) =>
      change.kind === "joined" && !people.some(({ id }) => id === change.person)
        ? [[change.person, change.name] as const]
        : [],
    ),
  );
  const joined = [...met].map(
    ([id, name]): BookPerson => ({ id, name, role: roles.get(id) ?? "technician", language: "en", units: "us" }),
  );
  return [...known, ...joined];
}

function applyChange(crew: CrewBooks, change: CrewChange): CrewBooks {
  switch (change.kind) {
    case "joined":
      return crew.members.some(({ person }) => person === change.person)
        ? crew
        : { ...crew, members: [...crew.members, newMember(change.person)] };
    case "left":
      return { ...crew, members: crew.members.filter(({ person }) => person !== change.person) };
    case "stock":
    case "used":
      return { ...crew, trucks: applyStock(crew.trucks, change) };
    case "role":
    case "withdrawn":
      return crew;
    default:
      return {
        ...crew,
        members: crew.members.map((member) =>
          member.person === change.person ? applyToMember(member, change) : member,
        ),
      };
  }
}

function newMember(person: string): CrewMember {
  return { person, credentials: [], training: [], tools: [], hours: {}, daysOff: [] };
}

type StockChange = Extract<CrewChange, { readonly kind: "stock" | "used" }>;
type MemberChange = Exclude<CrewChange, StockChange | { readonly kind: "joined" | "left" | "role" | "withdrawn" }>;

function applyToMember(member: CrewMember, change: MemberChange): CrewMember {
  const { credentials, training, tools, daysOff } = member;
  switch (change.kind) {
    case "credential": {
      const { kind, issuer } = change.credential;
      const others = credentials.filter((one) => one.kind !== kind || one.issuer !== issuer);
      return { ...member, credentials: [...others, change.credential] };
    }
    case "credential_gone":
      return { ...member, credentials: credentials.filter(({ kind }) => kind !== change.credential) };
    case "training": {
      const others = training.filter(({ subject }) => subject !== change.training.subject);
      return { ...member, training: [...others, change.training] };
    }
    case "tool":
      return { ...member, tools: [...tools.filter(({ id }) => id !== change.tool.id), change.tool] };
    case "tool_gone":
      return { ...member, tools: tools.filter(({ id }) => id !== change.id) };
    case "calibrated": {
      const until = { calibratedUntil: change.until };
      return { ...member, tools: tools.map((tool) => (tool.id === change.id ? { ...tool, ...until } : tool)) };
    }
    case "hours": {
      const own = Object.fromEntries(change.weekdays.map((weekday) => [weekday, change.shifts]));
      return { ...member, hours: { ...member.hours, ...own } };
    }
    case "off":
      return { ...member, daysOff: [...daysOff, { from: change.from, to: change.to }] };
    case "works":
      return { ...member, daysOff: daysOff.flatMap((off) => withoutDays(off, change)) };
    case "truck": {
      const { truck: _, ...rest } = member;
      return change.truck === undefined ? rest : { ...rest, truck: change.truck };
    }
  }
}

/** What is left of some days off when somebody works on some of them. Days sort as text. */
function withoutDays(off: DaysOff, { from, to }: DaysOff): readonly DaysOff[] {
  if (to < off.from || from > off.to) return [off];
  return [
    ...(from > off.from ? [{ from: off.from, to: addDays(from, -1) }] : []),
    ...(to < off.to ? [{ from: addDays(to, 1), to: off.to }] : []),
  ];
}

function applyStock(book: TruckBook, change: StockChange): TruckBook {
  const apply = (stock: Stock) => (change.kind === "used" ? takeOff(stock, change.parts) : recount(stock, change));
  if (change.truck === SHOP) return { ...book, shop: apply(book.shop) };
  const trucks = book.trucks.map((truck) =>
    truck.id === change.truck ? { ...truck, stock: apply(truck.stock) } : truck,
  );
  return { ...book, trucks };
}

function recount(stock: Stock, { part, how, amount }: Extract<StockChange, { readonly kind: "stock" }>): Stock {
  const now = how === "count" ? amount : (stock[part] ?? 0) + amount;
  return { ...stock, [part]: Math.max(0, now) };
}

/** What was used and had not been on the truck came from elsewhere: a truck never holds less than nothing. */
function takeOff(stock: Stock, parts: Stock): Stock {
  const left = Object.entries(parts).flatMap(([part, amount]) =>
    stock[part] === undefined ? [] : [[part, Math.max(0, stock[part] - amount)] as const],
  );
  return { ...stock, ...Object.fromEntries(left) };
}
