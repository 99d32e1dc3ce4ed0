import type { Books } from "../books/books.ts";
import type { CrewMember } from "../crew/crew.ts";
import { nextCrewFact, TASK_ROLES, taskOf } from "../crew/crew-asks.ts";
import { findTruck, PROPOSALS } from "../crew/crew-changes.ts";
import { type CrewChange, standingEvents } from "../crew/crew-event.ts";
import { CREW_FACTS, type CrewFactId, type CrewFacts, type CrewTask } from "../crew/crew-facts.ts";
import {
  CREW_FINDINGS,
  CREW_RESULTS,
  CREW_TABLES,
  type CrewFinding,
  type CrewResultId,
} from "../crew/crew-findings.ts";
import { findPerson, type Named, type Refused, refuseFact } from "../crew/crew-refusal.ts";
import { LEAD_ROLES } from "../crew/crew-rules.ts";
import {
  sayChange,
  tabulateHistory,
  tabulateMember,
  tabulatePeople,
  tabulateStock,
  truckName,
} from "../crew/crew-tables.ts";
import { personName } from "../crew/crew-words.ts";
import { projectCrew } from "../crew/project-crew.ts";
import type { Answer, NextStep } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";

type F = CrewFinding;
type Told = Answer<CrewResultId, F> | Refused;
const RECORD: Source = { basis: "computed", document: "The company's books and what was said since" };

export const crew = declareTopic({
  id: "crew",
  work: "short",
  uses: "crew",
  asksAnew: true,
  facts: CREW_FACTS,
  results: CREW_RESULTS,
  findings: CREW_FINDINGS,
  tables: CREW_TABLES,
  guide: {
    next: (known, books) => {
      const fact = nextCrewFact(known, books);
      return fact === undefined ? undefined : { fact };
    },
    hears: () => false,
  },
  // What is told here is about the crew, not about the job that is open.
  enters: () => [],
  compute: (facts, books) => {
    const task = taskOf((fact) => factOf(facts, fact) !== undefined, facts.task);
    return refuseRole(task, facts, books) ?? tell(task, facts, books);
  },
});

function factOf(facts: CrewFacts, fact: CrewFactId): unknown {
  return facts[fact];
}

/** Whoever may not do it is told who may; the rules of the record refuse it too. */
function refuseRole(task: CrewTask, { part, amount }: CrewFacts, books: Books): Told | undefined {
  const { asker } = books;
  // Everybody may look at what lies in a truck.
  if (task === "stock" && part === undefined && amount === undefined) return undefined;
  const roles = TASK_ROLES[task];
  if (asker === undefined || roles === undefined || roles.includes(asker.role)) return undefined;
  return notice({ code: roles === LEAD_ROLES ? "for_leads" : "for_office", data: {} }, "no");
}

function tell(task: CrewTask, facts: CrewFacts, books: Books): Told {
  switch (task) {
    case "show":
      if (facts.gone === true) return notice({ code: "what_is_gone", data: {} }, "caution");
      return facts.person === undefined ? showAll(books) : showPerson(facts.person, books);
    case "history":
      return showHistory(facts, books);
    case "withdraw":
      return withdraw(facts, books);
    case "stock":
      if (facts.part === undefined && facts.amount === undefined && facts.truck !== undefined)
        return showStock(facts.truck, books);
      return propose(task, facts, books);
    default:
      return propose(task, facts, books);
  }
}

function propose(task: keyof typeof PROPOSALS, facts: CrewFacts, books: Books): Told {
  const proposed = PROPOSALS[task](facts, books);
  if (proposed === "open") return notice({ code: "not_saved", data: {} }, "caution");
  if (proposed.kind === "out-of-range") return proposed;
  if (books.crewEvents === undefined) return notice({ code: "in_chat", data: {} }, "no");
  const foreign = proposed.kind === "calibrated" || proposed.kind === "tool" || proposed.kind === "tool_gone";
  const { asker } = books;
  const mayNot =
    foreign && asker?.role === "technician" && (proposed.kind !== "calibrated" || proposed.person !== asker.id);
  return mayNot ? notice({ code: "for_office", data: {} }, "no") : saved(proposed, books);
}

/** The card of a change shows how the record stands with it. */
function saved(change: CrewChange, books: Books): Told {
  const who = { number: 0, by: "", said_by: "", at_ms: 0, door: "web" as const };
  const after = projectCrew(books, [{ ...who, change }]);
  const next: readonly NextStep<F>[] = [step("step_history", "crew history")];
  const headline = sayChange(change, undefined, after);
  const findings: readonly F[] = [{ code: "adds_on", data: {} }];
  const base = { ...notice(headline, "good"), findings, acts: [{ kind: "crew" as const, change }], next };
  if (change.kind === "stock") return { ...base, tables: [tabulateStock(change.truck, after, change.part)] };
  const member = "person" in change ? after.crew.members.find(({ person }) => person === change.person) : undefined;
  const shown = member === undefined ? [] : tabulateMember(onlyWhatChanged(member, change), after, books.today);
  const about = TABLE_OF[change.kind];
  const tables = about === undefined ? [tabulatePeople(after, books.today)] : shown.filter(({ id }) => id === about);
  return { ...base, tables };
}

/** The card of a change shows what it is about, not all that somebody holds and carries. */
function onlyWhatChanged(member: CrewMember, change: CrewChange): CrewMember {
  switch (change.kind) {
    case "credential":
      return { ...member, credentials: member.credentials.filter(({ kind }) => kind === change.credential.kind) };
    case "tool":
      return { ...member, tools: member.tools.filter(({ id }) => id === change.tool.id) };
    case "calibrated":
      return { ...member, tools: member.tools.filter(({ id }) => id === change.id) };
    default:
      return member;
  }
}

const TABLE_OF: Readonly<Partial<Record<CrewChange["kind"], string>>> = {
  credential: "credentials",
  credential_gone: "credentials",
  training: "training",
  tool: "tools",
  tool_gone: "tools",
  calibrated: "tools",
  hours: "hours",
  off: "off",
  works: "off",
};

function showAll(books: Books): Told {
  const count = new Set([...books.people.map(({ id }) => id), ...books.crew.members.map(({ person }) => person)]).size;
  return {
    ...notice({ code: "listed", data: { people: q("count", count) } }, "info"),
    results: [number("people", count)],
    findings: [{ code: "books_say", data: {} }],
    tables: [tabulatePeople(books, books.today)],
    next: [
      ...(books.asker === undefined ? [] : [show(books.asker.id, books)]),
      ...(mayLead(books) ? [step("step_history", "crew history")] : []),
    ],
  };
}

function showPerson(typed: string, books: Books): Told {
  const named = findPerson(typed, books);
  if ("kind" in named) return named;
  const { id, name, member } = named;
  const { asker } = books;
  if (asker?.role === "technician" && asker.id !== id) return notice({ code: "own_only", data: {} }, "no");
  const held = member === undefined ? [] : tabulateMember(member, books, books.today);
  return {
    ...notice({ code: "shown", data: { name } }, "info"),
    results: countsOf(named, books),
    findings: [
      { code: `role_${books.people.find((one) => one.id === id)?.role ?? "technician"}`, data: {} },
      ...(member?.truck === undefined
        ? []
        : [{ code: "did_truck" as const, data: { name, truck: truckName(member.truck, books) } }]),
      { code: "registers_decide", data: {} },
    ],
    tables: held,
    next: [
      ...(books.today === undefined ? [] : [step("step_ready", `ready person=${id} day=${books.today}`, { name })]),
      ...(mayLead(books) ? [step("step_off", `crew person=${id} task=off`)] : []),
      ...(asker !== undefined && LEAD_ROLES.includes(asker.role)
        ? [step("step_credential", `crew person=${id} task=credential`)]
        : []),
      step("step_tool", `crew person=${id} task=tool`),
    ],
  };
}

function countsOf({ member }: Named, books: Books) {
  if (member === undefined) return [];
  return [
    number("credentials", member.credentials.length),
    number("tools", member.tools.length),
    number("days_off", member.daysOff.filter(({ to }) => to >= (books.today ?? "")).length),
  ];
}

function showStock(typed: string, books: Books): Told {
  const truck = findTruck(typed, books);
  if ("kind" in truck) return truck;
  const table = tabulateStock(truck.id, books);
  return {
    ...notice({ code: "stock_shown", data: { truck: truck.name } }, "info"),
    results: [number("part_kinds", table.rows.length)],
    findings: [{ code: "is_said", data: {} }],
    tables: [table],
  };
}

/** What was said of everybody, or of one. */
function showHistory({ person }: CrewFacts, books: Books): Told {
  const named = person === undefined ? undefined : findPerson(person, books);
  if (named !== undefined && "kind" in named) return named;
  const { asker, crewEvents = [] } = books;
  const whose = named?.id ?? (asker?.role === "technician" ? asker.id : undefined);
  if (asker?.role === "technician" && whose !== asker.id) return notice({ code: "own_only", data: {} }, "no");
  const events = crewEvents.filter(
    ({ change }) => whose === undefined || ("person" in change && change.person === whose),
  );
  if (events.length === 0) return notice({ code: "history_empty", data: {} }, "info");
  const newest = standingEvents(events).at(-1);
  return {
    ...notice({ code: "history_shown", data: { entries: q("count", events.length) } }, "info"),
    results: [number("entries", events.length)],
    tables: [tabulateHistory(events, books)],
    next: newest !== undefined && mayLead(books) ? [step("step_withdraw", `crew withdraw entry=${newest.number}`)] : [],
  };
}

function withdraw({ entry }: CrewFacts, books: Books): Told {
  const { crewEvents } = books;
  if (crewEvents === undefined) return notice({ code: "in_chat", data: {} }, "no");
  if (entry === undefined) return notice({ code: "not_saved", data: {} }, "caution");
  const event = standingEvents(crewEvents).find(({ number: one }) => one === entry);
  if (event === undefined)
    return refuseFact("entry", String(entry), { code: "unknown_entry", data: { entry: q("count", entry) } });
  return {
    ...notice({ code: "did_withdrawn", data: { entry: q("count", entry) } }, "good"),
    findings: [sayChange(event.change, undefined, books)],
    acts: [{ kind: "crew", change: { kind: "withdrawn" }, amends: entry }],
    next: [step("step_history", "crew history")],
  };
}

function mayLead({ asker }: Books): boolean {
  return asker !== undefined && asker.role !== "technician";
}

function show(id: string, books: Books): NextStep<F> {
  return step("step_show", `crew person=${id}`, { name: personName(id, books) });
}

function step<C extends "step_show" | "step_ready">(
  code: C,
  request: string,
  data: { readonly name: string },
): NextStep<F>;
function step(
  code: Exclude<Extract<F["code"], `step_${string}`>, "step_show" | "step_ready">,
  request: string,
): NextStep<F>;
function step(
  code: Extract<F["code"], `step_${string}`>,
  request: string,
  data?: { readonly name: string },
): NextStep<F> {
  if (code === "step_show" || code === "step_ready")
    return { say: { code, data: { name: data?.name ?? "" } }, request };
  return { say: { code, data: {} }, request };
}

function number(id: CrewResultId, value: number) {
  return numberResult(id, q("count", value), "n", {}, RECORD);
}

function notice(headline: F, verdict: "good" | "caution" | "no" | "info"): Answer<CrewResultId, F> {
  return { kind: "answer", verdict, headline, results: [], findings: [] };
}
