import type { Books } from "../books/books.ts";
import { type AnswerTable, q, type TableCell } from "../declaration/answer.ts";
import { type CrewMember, type Stock, WEEKDAYS } from "./crew.ts";
import { type CrewChange, type CrewEvent, SHOP } from "./crew-event.ts";
import type { CrewFinding } from "./crew-findings.ts";
import { partAmount, partWord, personName } from "./crew-words.ts";
import { writeHours } from "./read-hours.ts";
import { isCalibrated, standingOf } from "./validity.ts";
import { isDayOff, workSpans } from "./work-hours.ts";
import { dayAt } from "./zone-time.ts";

type Table = AnswerTable<CrewFinding>;
type Cell = TableCell<CrewFinding>;
const NOTHING = "—";

/** Everybody of the crew and the office, with role, truck and whether they work on a day, where one is known. */
export function tabulatePeople(books: Books, day: string | undefined): Table {
  const { crew, people } = books;
  const office = people.filter(({ id }) => !crew.members.some(({ person }) => person === id));
  const rowOf = (id: string, truck: string, today: Cell): readonly Cell[] => [
    personName(id, books),
    roleWord(id, books),
    truck,
    today,
  ];
  return {
    id: "people",
    rows: [
      ...crew.members.map((member) =>
        rowOf(member.person, truckName(member.truck, books), todayOf(member, books, day)),
      ),
      ...office.map(({ id }) => rowOf(id, NOTHING, NOTHING)),
    ],
  };
}

function todayOf(member: CrewMember, { company }: Books, day: string | undefined): Cell {
  if (day === undefined) return NOTHING;
  if (isDayOff(member, day)) return { code: "here_off", data: {} };
  return { code: workSpans(member, day, company.timeZone).length > 0 ? "here_works" : "here_not", data: {} };
}

function roleWord(id: string, { people }: Books): CrewFinding {
  return { code: `role_${people.find((one) => one.id === id)?.role ?? "technician"}`, data: {} };
}

export function truckName(truck: string | undefined, { crew }: Books): string {
  return crew.trucks.trucks.find(({ id }) => id === truck)?.name ?? truck ?? NOTHING;
}

/** What somebody holds, carries and learnt, when they work and when not; tables with nothing in them are left out. */
export function tabulateMember(member: CrewMember, books: Books, day: string | undefined): readonly Table[] {
  const { credentials, tools, training, hours, daysOff } = member;
  const tables: readonly Table[] = [
    {
      id: "credentials",
      rows: credentials.map((one) => [
        { code: one.kind, data: {} },
        one.number,
        one.issuer,
        one.expires ?? NOTHING,
        day === undefined ? NOTHING : standsOf(standingOf(one, day)),
      ]),
    },
    {
      id: "tools",
      rows: tools.map((tool) => [
        partWord(tool.tool, books),
        tool.id,
        tool.calibratedUntil ?? NOTHING,
        day === undefined ? NOTHING : { code: isCalibrated(tool, day) ? "stands_valid" : "stands_lapsed", data: {} },
      ]),
    },
    { id: "training", rows: training.map(({ subject, done, until }) => [subject, done, until ?? NOTHING]) },
    {
      id: "hours",
      rows: WEEKDAYS.map((weekday) => {
        const shifts = hours[weekday] ?? [];
        return [{ code: weekday, data: {} }, shifts.length > 0 ? writeHours(shifts) : { code: "no_work", data: {} }];
      }),
    },
    {
      id: "off",
      rows: [...daysOff]
        .filter(({ to }) => day === undefined || to >= day)
        .sort((a, b) => a.from.localeCompare(b.from))
        .map(({ from, to }) => [from, to]),
    },
  ];
  return tables.filter(({ rows }) => rows.length > 0);
}

function standsOf(standing: ReturnType<typeof standingOf>): CrewFinding {
  if (standing.is === "grace") return { code: "stands_grace", data: { until: standing.until } };
  return { code: `stands_${standing.is}`, data: {} };
}

/** @param only a part that alone is shown */
export function tabulateStock(truck: string, books: Books, only?: string): Table {
  const { trucks, shop } = books.crew.trucks;
  const stock: Stock = truck === SHOP ? shop : (trucks.find(({ id }) => id === truck)?.stock ?? {});
  const shown = Object.entries(stock).filter(([part]) => only === undefined || part === only);
  const rows = shown.map(([part, amount]) => [partWord(part, books), partAmount(part, amount, books)]);
  return { id: "stock", rows };
}

/** More than this nobody reads at once. */
const MOST_ENTRIES = 30;

/** What was said, the newest first, of everybody or of one. */
export function tabulateHistory(events: readonly CrewEvent[], books: Books): Table {
  const newest = [...events].reverse().slice(0, MOST_ENTRIES);
  return {
    id: "history",
    rows: newest.map(({ number, at_ms, by, door, change, amends }) => [
      q("count", number),
      dayAt(books.company.timeZone, at_ms),
      `${by} (${door})`,
      sayEvent(change, amends, books),
    ]),
  };
}

function sayEvent(change: CrewChange, amends: number | undefined, books: Books): Cell {
  const head = sayChange(change, amends, books);
  const more = detailOf(change);
  return more === undefined ? head : [head, more];
}

/** What else a line of the history says, where its sentence has no room for it. */
function detailOf(change: CrewChange): CrewFinding | undefined {
  switch (change.kind) {
    case "credential":
      return { code: change.credential.kind, data: {} };
    case "credential_gone":
      return { code: change.credential, data: {} };
    case "role":
      return { code: `role_${change.role}`, data: {} };
    case "hours":
      return change.weekdays[0] === undefined ? undefined : { code: change.weekdays[0], data: {} };
    default:
      return undefined;
  }
}

/** The sentence of a change. */
export function sayChange(change: CrewChange, amends: number | undefined, books: Books): CrewFinding {
  const name = "person" in change ? personName(change.person, books) : "";
  switch (change.kind) {
    case "joined":
    case "left":
    case "role":
    case "credential":
    case "credential_gone":
    case "hours":
      return { code: `did_${change.kind}`, data: { name } };
    case "training":
      return { code: "did_training", data: { name, subject: change.training.subject } };
    case "tool":
      return { code: "did_tool", data: { name, id: change.tool.id, ...partWordData(change.tool.tool, books) } };
    case "tool_gone":
      return { code: "did_tool_gone", data: { name, id: change.id } };
    case "calibrated":
      return { code: "did_calibrated", data: { name, id: change.id, until: change.until } };
    case "off":
    case "works":
      return { code: `did_${change.kind}`, data: { name, from: change.from, to: change.to } };
    case "truck":
      return change.truck === undefined
        ? { code: "did_no_truck", data: { name } }
        : { code: "did_truck", data: { name, truck: truckName(change.truck, books) } };
    case "stock":
      return {
        code: "did_stock",
        data: { truck: truckName(change.truck, books), ...partWordData(change.part, books) },
      };
    case "used":
      return { code: "did_used", data: { truck: truckName(change.truck, books), job: change.job } };
    case "withdrawn":
      return { code: "did_withdrawn", data: { entry: q("count", amends ?? 0) } };
  }
}

function partWordData(part: string, { crew }: Books): { readonly en: string; readonly es: string } {
  const name = crew.parts.find(({ id }) => id === part)?.name;
  return { en: name?.en ?? part, es: name?.es ?? part };
}
