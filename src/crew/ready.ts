import type { Books } from "../books/books.ts";
import type { Verdict } from "../declaration/answer.ts";
import type { Job } from "../jobs/job.ts";
import type { CredentialKind } from "./credential-kinds-table.ts";
import type { CrewMember, Stock } from "./crew.ts";
import { type JobNeeds, jobNeeds } from "./job-needs.ts";
import { SKILLS, type SkillId } from "./skills-table.ts";
import { bestStanding, isCalibrated, type Lapse, lapsesOf, mayWork, type Standing, standingOf } from "./validity.ts";
import { isDayOff, workTime_s } from "./work-hours.ts";

/** What is missing. `others` are people who could stand in, by id. */
export type Want =
  | {
      readonly is: "credential";
      readonly kind: CredentialKind;
      readonly standing: Standing;
      readonly others: readonly string[];
    }
  | { readonly is: "training"; readonly subject: string; readonly until: string; readonly others: readonly string[] }
  | { readonly is: "skill"; readonly skill: SkillId; readonly standing?: Standing; readonly others: readonly string[] }
  | { readonly is: "tool"; readonly tool: string; readonly others: readonly string[] }
  | { readonly is: "calibration"; readonly tool: string; readonly until: string; readonly others: readonly string[] }
  | {
      readonly is: "part";
      readonly part: string;
      readonly short: number;
      readonly inShop: boolean;
      /** Ids of other trucks that hold as much. */
      readonly trucks: readonly string[];
    }
  | { readonly is: "hours"; readonly needed_s: number; readonly free_s: number; readonly others: readonly string[] }
  | { readonly is: "off" | "no_hours"; readonly others: readonly string[] }
  | { readonly is: "helpers"; readonly needed: number; readonly given: number; readonly others: readonly string[] }
  | { readonly is: "unknown_person" }
  | { readonly is: "permit" | "survey" };
/** One thing that is missing, of whom or of which job, and whether it stops the work. */
export interface Lack {
  readonly who: string;
  readonly stops: boolean;
  readonly want: Want;
}
export interface Readiness {
  readonly verdict: Extract<Verdict, "good" | "caution" | "no">;
  readonly lacks: readonly Lack[];
  /** What runs out within 90 days, of everybody asked about. */
  readonly lapses: readonly Lapse[];
}

function judge(lacks: readonly Lack[], lapses: readonly Lapse[]): Readiness {
  const some = lacks.length > 0 ? "caution" : "good";
  return { verdict: lacks.some(({ stops }) => stops) ? "no" : some, lacks, lapses };
}

/** Without one of these nobody works on pipes at all; what else has lapsed keeps them from that task alone. */
const WORK_LICENSES: readonly CredentialKind[] = ["master_plumber", "journeyman_plumber", "apprentice_plumber"];

function holdsOther(member: CrewMember, day: string): boolean {
  return mayWork(member, WORK_LICENSES, day);
}

/** Whether somebody may go to work on a day: at work, with a licence to work at all, the rest told with care. */
export function readyPerson(member: CrewMember, day: string, books: Books): Readiness {
  const free = books.crew.members.filter((one) => one.person !== member.person && isAtWork(one, day, books));
  const lacks = [
    ...awayLacks(member, day, books, free),
    ...credentialLacks(member, day, free),
    ...trainingLacks(member, day, free),
    ...calibrationLacks(member, day, free),
  ];
  return judge(lacks, lapsesOf(member, day));
}

function credentialLacks(member: CrewMember, day: string, free: readonly CrewMember[]): readonly Lack[] {
  return member.credentials.flatMap((credential): readonly Lack[] => {
    const { kind } = credential;
    const standing = standingOf(credential, day);
    if (standing.is === "valid") return [];
    const stops = standing.is === "lapsed" && WORK_LICENSES.includes(kind) && !holdsOther(member, day);
    const others = idsOf(free.filter((one) => mayWork(one, kindsInPlaceOf(kind), day)));
    return [{ who: member.person, stops, want: { is: "credential", kind, standing, others } }];
  });
}

/** What allows the same work as a kind of credential, itself with it. */
function kindsInPlaceOf(kind: CredentialKind): readonly CredentialKind[] {
  const allowing = Object.values(SKILLS).flatMap(({ kinds }): readonly CredentialKind[] => kinds);
  const skill = Object.values(SKILLS).find(({ kinds }) => kinds.some((one) => one === kind));
  return allowing.includes(kind) && skill !== undefined ? skill.kinds : [kind];
}

function trainingLacks({ person, training }: CrewMember, day: string, free: readonly CrewMember[]): readonly Lack[] {
  return training.flatMap(({ subject, until }): readonly Lack[] => {
    if (until === undefined || until >= day) return [];
    const others = idsOf(free.filter((one) => isTrained(one, subject, day)));
    return [{ who: person, stops: false, want: { is: "training", subject, until, others } }];
  });
}

/** True: somebody was trained in a subject, and it counts on that day. Days sort as text. */
function isTrained({ training }: CrewMember, subject: string, day: string): boolean {
  return training.some((one) => one.subject === subject && (one.until === undefined || one.until >= day));
}

function calibrationLacks({ person, tools }: CrewMember, day: string, free: readonly CrewMember[]): readonly Lack[] {
  return tools.flatMap((tool): readonly Lack[] => {
    const { calibratedUntil: until } = tool;
    if (isCalibrated(tool, day) || until === undefined) return [];
    const others = idsOf(free.filter((one) => carries(one, tool.tool, day)));
    return [{ who: person, stops: false, want: { is: "calibration", tool: tool.tool, until, others } }];
  });
}

function idsOf(members: readonly CrewMember[]): readonly string[] {
  return members.map(({ person }) => person);
}

/** Whether a job can be done on a day by the people who are down for it. */
export function readyJob(job: Job, day: string, books: Books): Readiness {
  const needs = jobNeeds(job, books);
  const { members } = books.crew;
  const crew = members.filter(({ person }) => job.people.includes(person));
  const free = members.filter((one) => !job.people.includes(one.person) && isAtWork(one, day, books));
  const unknown = job.people.filter((id) => !members.some(({ person }) => person === id));
  const lacks = [
    ...paperLacks(job),
    ...unknown.map((who): Lack => ({ who, stops: true, want: { is: "unknown_person" } })),
    ...crew.flatMap((member) => awayLacks(member, day, books, free)),
    ...helperLacks(job, needs, free),
    ...skillLacks(
      job,
      needs,
      crew.filter((one) => isAtWork(one, day, books)),
      free,
      day,
    ),
    ...toolLacks(job, needs, crew, free, day),
    ...crew.flatMap((member) => hourLacks(member, needs, day, books, free)),
    ...partLacks(job, needs, crew, books),
  ];
  return judge(
    lacks,
    crew.flatMap((member) => lapsesOf(member, day)),
  );
}

/** True: somebody works on that day. */
export function isAtWork(member: CrewMember, day: string, { company }: Books): boolean {
  return workTime_s(member, day, company.timeZone) > 0;
}

function paperLacks(job: Job): readonly Lack[] {
  if (job.status === "called_back") return [];
  const none = (is: "permit" | "survey"): Lack => ({ who: job.number, stops: true, want: { is } });
  return [...(job.permit === undefined ? [none("permit")] : []), ...(job.status === "planned" ? [none("survey")] : [])];
}

function awayLacks(member: CrewMember, day: string, books: Books, free: readonly CrewMember[]): readonly Lack[] {
  if (isAtWork(member, day, books)) return [];
  const others = free.filter((one) => canDoFor(member, one, day)).map(({ person }) => person);
  return [{ who: member.person, stops: true, want: { is: isDayOff(member, day) ? "off" : "no_hours", others } }];
}

/** True: somebody may do all the licensed work that another may. */
function canDoFor(away: CrewMember, one: CrewMember, day: string): boolean {
  return Object.values(SKILLS).every(({ kinds }) => !mayWork(away, kinds, day) || mayWork(one, kinds, day));
}

function helperLacks(job: Job, { people }: JobNeeds, free: readonly CrewMember[]): readonly Lack[] {
  const given = job.people.length;
  if (given >= people) return [];
  const others = free.map(({ person }) => person);
  return [{ who: job.number, stops: true, want: { is: "helpers", needed: people, given, others } }];
}

function skillLacks(
  job: Job,
  { skills }: JobNeeds,
  crew: readonly CrewMember[],
  free: readonly CrewMember[],
  day: string,
): readonly Lack[] {
  return skills.flatMap((skill): Lack[] => {
    const { kinds } = SKILLS[skill];
    const standings = crew.map((member) => bestStanding(member, kinds, day)).filter((one) => one !== undefined);
    if (standings.some(({ is }) => is === "valid")) return [];
    const usable = standings.find(({ is }) => is !== "lapsed");
    const standing = usable ?? standings[0];
    const others = free.filter((one) => mayWork(one, kinds, day)).map(({ person }) => person);
    const want: Want = { is: "skill", skill, others, ...(standing && { standing }) };
    return [{ who: job.number, stops: usable === undefined, want }];
  });
}

/** True: somebody carries a tool whose calibration counts on that day. */
export function carries({ tools }: CrewMember, tool: string, day: string): boolean {
  return tools.some((one) => one.tool === tool && isCalibrated(one, day));
}

function toolLacks(
  job: Job,
  needs: JobNeeds,
  crew: readonly CrewMember[],
  free: readonly CrewMember[],
  day: string,
): readonly Lack[] {
  return needs.tools.flatMap((tool): Lack[] => {
    if (crew.some((member) => carries(member, tool, day))) return [];
    const others = free.filter((one) => carries(one, tool, day)).map(({ person }) => person);
    const stale = crew.flatMap(({ tools }) => tools).find((one) => one.tool === tool)?.calibratedUntil;
    const want: Want =
      stale === undefined ? { is: "tool", tool, others } : { is: "calibration", tool, until: stale, others };
    return [{ who: job.number, stops: true, want }];
  });
}

function hourLacks(
  member: CrewMember,
  { work_s, drive_s }: JobNeeds,
  day: string,
  books: Books,
  free: readonly CrewMember[],
): readonly Lack[] {
  const hoursOf = (one: CrewMember) => workTime_s(one, day, books.company.timeZone);
  const [free_s, needed_s] = [hoursOf(member), work_s + drive_s];
  if (free_s === 0 || free_s >= needed_s) return [];
  const others = free.filter((one) => hoursOf(one) >= needed_s).map(({ person }) => person);
  return [{ who: member.person, stops: true, want: { is: "hours", needed_s, free_s, others } }];
}

/** What rides on the trucks of some people, each truck once. */
export function stockOf(crew: readonly CrewMember[], { trucks }: Books["crew"]): Stock {
  const driven = new Set(crew.map(({ truck }) => truck));
  return addStock(trucks.trucks.filter(({ id }) => driven.has(id)).map(({ stock }) => stock));
}

export function addStock(stocks: readonly Stock[]): Stock {
  const sum = new Map<string, number>();
  for (const stock of stocks)
    for (const [part, amount] of Object.entries(stock)) sum.set(part, (sum.get(part) ?? 0) + amount);
  return Object.fromEntries(sum);
}

function partLacks(job: Job, { parts }: JobNeeds, crew: readonly CrewMember[], books: Books): readonly Lack[] {
  const stock = stockOf(crew, books.crew);
  const others = books.crew.trucks.trucks.filter(({ id }) => !crew.some(({ truck }) => truck === id));
  return parts.flatMap(({ part, amount }): Lack[] => {
    const short = amount - (stock[part] ?? 0);
    if (short <= 0) return [];
    const inShop = (books.crew.trucks.shop[part] ?? 0) >= short;
    const trucks = others.filter((truck) => (truck.stock[part] ?? 0) >= short).map(({ id }) => id);
    return [{ who: job.number, stops: !inShop, want: { is: "part", part, short, inShop, trucks } }];
  });
}
