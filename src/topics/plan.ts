import type { Books } from "../books/books.ts";
import { addDays } from "../crew/days.ts";
import { type Explanation, explainPlan } from "../crew/explain-plan.ts";
import { planCase } from "../crew/plan-case.ts";
import { tabulateFaults } from "../crew/plan-faults.ts";
import { type Plan, type PlanCase, solvePlan } from "../crew/plan-model.ts";
import {
  jobOf,
  PLAN_FINDINGS,
  type PlanFinding,
  placeOf,
  sayNames,
  tabulateLeft,
  tabulatePlaced,
} from "../crew/plan-tables.ts";
import { confirmPlan, unconfirmed, withdrawPlan } from "../crew/settle-plan.ts";
import { readPlan, type ShownPlacement, writePlan } from "../crew/written-plan.ts";
import type { Answer, NextStep, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";

const MOST_DAYS = 7;
const FACTS = {
  day: { type: "day", unless: "confirm" },
  days: {
    type: "quantity",
    quantity: "count",
    min: 1,
    max: MOST_DAYS,
    whole: true,
    usual: [1, 5, 7],
    byNameOnly: true,
    default: { value: 1, source: OUR_HABIT },
  },
  /** A plan in one line, as it was shown; see `written-plan.ts`. */
  confirm: { type: "text", optional: true, unlisted: true, byNameOnly: true },
  withdraw: { type: "flag", optional: true, unlisted: true, byNameOnly: true },
} as const satisfies FactSpecs;

const RESULTS = ["jobs_placed", "jobs_left", "driving", "jobs_confirmed"] as const;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = PlanFinding;

/** More than this would take too long to explain one by one. */
const MOST_EXPLAINED = 8;
const SOLVED: Source = { basis: "computed", document: "HiGHS", section: "mixed-integer program, proven optimum" };

export const plan = declareTopic({
  id: "plan",
  work: "short",
  uses: "office",
  facts: FACTS,
  results: RESULTS,
  findings: PLAN_FINDINGS,
  tables: {
    plan: ["day", "job", "place", "people", "work", "drive", "before"],
    left: ["job", "place", "reason", "placed_by"],
    confirmed: ["day", "job", "place", "people"],
    faults: ["job", "reason"],
  },
  // What is told here is about the plan, not about the job that is open.
  enters: () => [],
  compute: (facts, books) =>
    facts.confirm === undefined ? proposeFrom(facts, books) : settle(facts.confirm, facts.withdraw === true, books),
});

function proposeFrom({ day = "", days }: Facts, books: Books): Answer<Id, F> | OutOfRange<F> {
  return refuse(day, books) ?? propose(day, days, books);
}

/** Confirms what was shown, or takes it back; nothing of it where any of it no longer holds. */
function settle(typed: string, isWithdrawn: boolean, books: Books): Answer<Id, F> | OutOfRange<F> {
  const placements = readPlan(typed);
  if ("unreadable" in placements) {
    const reason: F = { code: "unreadable", data: { typed: placements.unreadable } };
    return { kind: "out-of-range", fact: "confirm", value: typed, reason };
  }
  const { asker } = books;
  if (asker === undefined) return said({ code: "in_chat", data: {} }, "no", 0);
  if (asker.role === "technician") return said({ code: "for_office", data: {} }, "no", 0);
  const settled = isWithdrawn ? withdrawPlan(placements, books) : confirmPlan(placements, books);
  if ("faults" in settled)
    return { ...said({ code: "not_confirmed", data: {} }, "no", 0), tables: [tabulateFaults(settled.faults, books)] };
  const jobs = q("count", placements.length);
  const plain = placements.map(({ version: _, ...placement }) => placement);
  return {
    ...said({ code: isWithdrawn ? "withdrawn" : "confirmed", data: { jobs } }, "good", placements.length),
    tables: [
      {
        id: "confirmed",
        rows: placements.map(({ job, day, people }) => [day, job, placeOf(job, books), sayNames(people, books)]),
      },
    ],
    acts: settled.acts,
    next: isWithdrawn
      ? []
      : [{ say: { code: "step_withdraw", data: {} }, request: `plan withdraw=yes confirm=${writePlan(plain)}` }],
  };
}

function said(headline: F, verdict: "good" | "no", jobs: number): Answer<Id, F> {
  const results = [numberResult("jobs_confirmed" as const, q("count", jobs), "n", {}, SOLVED)];
  return { kind: "answer", verdict, headline, results, findings: [] };
}

function refuse(day: string, { crew }: Books): OutOfRange<F> | undefined {
  if (crew.members.length > 0) return undefined;
  return { kind: "out-of-range", fact: "day", value: day, reason: { code: "no_crew_book", data: {} } };
}

function propose(day: string, days: number, books: Books): Answer<Id, F> | OutOfRange<F> {
  const range = Array.from({ length: days }, (_, index) => addDays(day, index));
  const known = planCase(books, range);
  if (known.jobs.length === 0) return nothingToPlan(day);
  const { solve } = books;
  if (solve === undefined) throw new Error("the plan needs a solver, and none was lent");
  const solved = solvePlan(known, solve);
  if (solved === undefined)
    return { kind: "out-of-range", fact: "days", value: q("count", days), reason: { code: "too_long", data: {} } };
  const explained = { ...solved, left: solved.left.slice(0, MOST_EXPLAINED) };
  return answer(day, known, solved, explainPlan(known, explained, solve), books);
}

function nothingToPlan(day: string): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: "info",
    headline: { code: "no_jobs", data: { day } },
    results: [numberResult("jobs_placed", q("count", 0), "n", {}, SOLVED)],
    findings: [],
    next: [{ say: { code: "step_ready", data: { day } }, request: `ready day=${day}` }],
  };
}

function answer(
  day: string,
  known: PlanCase,
  solved: Plan,
  explained: readonly Explanation[],
  books: Books,
): Answer<Id, F> {
  const [placed, left] = [q("count", solved.placed.length), q("count", solved.left.length)];
  const open = unconfirmed(solved, books.jobs);
  const drive_s = solved.placed.reduce((sum, one) => sum + one.people.length * jobOf(known, one.job).drive_s, 0);
  return {
    kind: "answer",
    verdict: judge(solved),
    headline: headline(solved),
    results: [
      numberResult("jobs_placed", placed, "max n", {}, SOLVED),
      numberResult("jobs_left", left, "n", {}, SOLVED),
      numberResult("driving", q("time", drive_s), "min sum t", {}, SOLVED),
    ],
    findings: [
      { code: open.length > 0 || solved.placed.length === 0 ? "proposed" : "stands_already", data: {} },
      { code: "hours_are_habit", data: {} },
      { code: "drive_counted", data: {} },
    ],
    tables: [
      ...(solved.placed.length > 0 ? [tabulatePlaced(known, solved, books)] : []),
      ...(explained.length > 0 ? [tabulateLeft(explained, books)] : []),
    ],
    next: [
      ...(mayConfirm(books) ? offerConfirming(open) : []),
      { say: { code: "step_ready", data: { day } }, request: `ready day=${day}` },
      ...(known.days.length < MOST_DAYS
        ? [{ say: { code: "step_week" as const, data: { day } }, request: `plan day=${day} days=${MOST_DAYS}` }]
        : []),
    ],
  };
}

function mayConfirm({ asker }: Books): boolean {
  return asker !== undefined && asker.role !== "technician";
}

/** A button carries no more than this [characters]; platforms take about twice as much. */
const MOST_CARRIED = 900;

/** One button for all of it, or one a day where all would not fit. */
function offerConfirming(open: readonly ShownPlacement[]): readonly NextStep<F>[] {
  if (open.length === 0) return [];
  const whole = writePlan(open);
  if (whole.length <= MOST_CARRIED)
    return [{ say: { code: "step_confirm", data: {} }, request: `plan confirm=${whole}` }];
  return [...new Set(open.map(({ day }) => day))].map((day) => ({
    say: { code: "step_confirm_day", data: { day } },
    request: `plan confirm=${writePlan(open.filter((one) => one.day === day))}`,
  }));
}

function judge({ placed, left }: Plan): "good" | "caution" | "no" {
  if (left.length === 0) return "good";
  return placed.length === 0 ? "no" : "caution";
}

function headline({ placed, left }: Plan): F {
  if (left.length === 0) return { code: "all_placed", data: { placed: q("count", placed.length) } };
  if (placed.length === 0) return { code: "none_placed", data: { left: q("count", left.length) } };
  return { code: "some_left", data: { placed: q("count", placed.length), left: q("count", left.length) } };
}
