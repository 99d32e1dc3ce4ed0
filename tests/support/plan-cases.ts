import type { PersonDay, PlanCase, PlanJob, PlanPerson } from "../../src/crew/plan-model.ts";
import type { SkillId } from "../../src/crew/skills-table.ts";

const HOUR_s = 3600;
export const [MON, TUE] = ["2026-11-30", "2026-12-01"] as const;

export function planJob(id: string, rest: Partial<PlanJob> = {}): PlanJob {
  return {
    id,
    days: [MON],
    named: [],
    isPromised: false,
    skills: ["skill_plumbing"],
    tools: [],
    people: 1,
    work_s: 4 * HOUR_s,
    drive_s: HOUR_s / 2,
    parts: [],
    ...rest,
  };
}

export function personDay(hours: number, skills: readonly SkillId[], rest: Partial<PersonDay> = {}): PersonDay {
  const time_s = hours * HOUR_s;
  return { free_s: time_s, usual_s: time_s, skills: new Set(skills), tools: new Set(), ...rest };
}

export function planPerson(id: string, day: PersonDay, days: readonly string[] = [MON, TUE]): PlanPerson {
  return { id, days: Object.fromEntries(days.map((one) => [one, day])) };
}

export function planOf(
  jobs: readonly PlanJob[],
  people: readonly PlanPerson[],
  rest: Partial<PlanCase> = {},
): PlanCase {
  return { jobs, people, days: [MON], stock: {}, ...rest };
}
