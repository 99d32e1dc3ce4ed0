import type { Books } from "../books/books.ts";
import type { AnswerTable, FindingOf, FindingSpecs } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import type { PlanFault } from "./check-plan.ts";
import { CREW_WORDS, partWord, personName } from "./crew-words.ts";

/** Why an assignment cannot be confirmed, as cells of a table. */
export const PLAN_FAULTS = {
  ...CREW_WORDS,
  fault_unknown_job: {},
  fault_changed: {},
  fault_not_waiting: {},
  fault_twice: {},
  fault_day_passed: {},
  fault_nobody: {},
  fault_not_there: {},
  fault_unknown_person: { name: "word" },
  fault_off: { name: "word" },
  fault_no_hours: { name: "word" },
  fault_hours: { name: "word" },
  fault_two_shared: { name: "word" },
  fault_skill: {},
  fault_tool: {},
  fault_part: {},
  fault_too_few: { needed: "count", given: "count" },
} as const satisfies FindingSpecs;
type F = FindingOf<typeof PLAN_FAULTS>;

export function tabulateFaults(faults: readonly PlanFault[], books: Books): AnswerTable<F> {
  return { id: "faults", rows: faults.map((fault) => [fault.job, sayFault(fault, books)]) };
}

function sayFault(fault: PlanFault, books: Books): F | readonly F[] {
  switch (fault.is) {
    case "unknown_person":
    case "off":
    case "no_hours":
    case "hours":
    case "two_shared":
      return { code: `fault_${fault.is}`, data: { name: personName(fault.person, books) } };
    case "skill":
      return [
        { code: "fault_skill", data: {} },
        { code: fault.skill, data: {} },
      ];
    case "tool":
      return [{ code: "fault_tool", data: {} }, partWord(fault.tool, books)];
    case "part":
      return [{ code: "fault_part", data: {} }, partWord(fault.part, books)];
    case "too_few":
      return { code: "fault_too_few", data: { needed: q("count", fault.needed), given: q("count", fault.given) } };
    default:
      return { code: `fault_${fault.is}`, data: {} };
  }
}
