import type { Books } from "../books/books.ts";
import {
  type Answer,
  type AnswerTable,
  type FindingOf,
  type FindingSpecs,
  type NextStep,
  type OutOfRange,
  q,
} from "../declaration/answer.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { RATING } from "../equipment/test-procedure/rating-conditions.ts";
import { DAYS_A_YEAR } from "../household/calendar.ts";
import {
  compareDays,
  hasDearHours,
  type ProgramYear,
  planSchedule,
  type SchedulePlan,
} from "../household/schedule-plan.ts";
import { programLines, scheduleChart, scheduleResults } from "../household/schedule-results.ts";
import { planUnit, UNIT_REFUSALS, type UnitCase } from "../household/unit-case.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  model: commonFacts.model,
  people: commonFacts.people,
  mixing_valve: commonFacts.mixing_valve,
  setpoint: { ...commonFacts.setpoint, ask: true, default: { value: toBase(125, "F"), source: RATING.source } },
  rate: { ...commonFacts.rate, default: { value: "time_of_use", source: OUR_HABIT } },
  bathrooms: commonFacts.bathrooms,
  wanted: commonFacts.wanted,
  place: commonFacts.place,
  mode: commonFacts.mode,
  supply: { ...commonFacts.supply, byNameOnly: true },
} as const satisfies FactSpecs;

const RESULTS = [
  "saving_per_year",
  "cost_per_year",
  "cost_left_alone",
  "energy_per_year",
  "changes_a_day",
  "cold_days",
  "cold_days_left_alone",
  "dear_share",
  "dear_share_left_alone",
] as const;

const FINDINGS = {
  ...UNIT_REFUSALS,
  no_schedule: { model: "word" },
  no_dear_hours: { plan: "word" },
  wanted_above_setpoint: { wanted: "temperature", setpoint: "temperature" },
  follow_it: { saving: "money", changes: "count" },
  leave_it_alone: { tried: "count" },
  check_valve_first: { storage: "temperature" },
  nobody_colder: { cold: "count", alone: "count", days: "count" },
  day_by_day: { both: "count", only_with: "count", only_alone: "count", short: "volume", short_alone: "volume" },
  refused_cheaper: { saving: "money", cold: "count", alone: "count" },
  cools_in_dear_hours: { lowest: "temperature" },
  moves_out_of_dear: { before: "share", after: "share" },
  within_limit: { changes: "count", limit: "count" },
  valve_would_help: {},
  set_clock: {},
  searched: { tried: "count", days: "count", whole: "count", all: "count" },
  prices_set: { plan: "word", day: "word" },
  weekdays: { months: "word" },
  weekends: { months: "word" },
  heat_pump_only: {},
  heat_pump_first: {},
  both_together: {},
  elements_only: {},
  left_alone: {},
  program: {},
  cheaper_but_colder: {},
  step_with_valve: {},
  step_cost: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const schedule = declareTopic({
  id: "schedule",
  work: "long",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    program: ["days", "from", "mode", "setpoint"],
    compared: ["way", "cost", "energy", "cold_days", "short"],
  },
  charts: { schedule_day: ["setpoint", "price", "heat_ahead", "dear_hours"] },
  asides: {
    results: ["energy_per_year", "dear_share", "dear_share_left_alone"],
    findings: ["day_by_day", "searched", "prices_set"],
    tables: ["compared"],
  },
  compute: (facts, books, report): Answer<Id, F> | OutOfRange<F> => {
    const unit = planUnit(facts, books);
    if (!unit.ok) return unit.refused;
    return refuse(facts, unit.known) ?? answer(facts, unit.known, planSchedule(unit.known, facts, report), books);
  },
  site: ({ setpoint_C, mixing_valve }) => ({
    storage_C: setpoint_C,
    ...(mixing_valve !== undefined && { hasMixingValve: mixing_valve }),
  }),
});

/** Below this a tank that stays there grows Legionella: WHO, 25 to 45 °C. */
const GROWS_BELOW_C = 45;

function refuse(facts: Facts, { model, plan }: UnitCase): OutOfRange<F> | undefined {
  if (model.changesADay === 0)
    return refusal("model", facts.model, { code: "no_schedule", data: { model: model.name } });
  if (!hasDearHours(plan))
    return refusal("rate", facts.rate ?? "", { code: "no_dear_hours", data: { plan: plan.name } });
  const wanted = q("temperature", facts.wanted_C);
  const setpoint = q("temperature", facts.setpoint_C);
  if (wanted.value <= setpoint.value) return undefined;
  return refusal("wanted", wanted, { code: "wanted_above_setpoint", data: { wanted, setpoint } });
}

function refusal(fact: keyof typeof FACTS, value: OutOfRange["value"], reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}

function answer(facts: Facts, known: UnitCase, found: SchedulePlan, books: Books): Answer<Id, F> {
  const { best } = found;
  return {
    kind: "answer",
    verdict: best === undefined ? "info" : "good",
    headline: headline(found),
    results: scheduleResults(known, found, books),
    findings: [
      ...programFindings(known, found),
      ...refusedFindings(facts, found),
      searched(found),
      { code: "prices_set", data: { plan: known.plan.name, day: books.prices.setOn } },
    ],
    tables: [...(best === undefined ? [] : [programTable(known, best)]), comparedTable(found)],
    charts: [scheduleChart(known.plan, best?.program)],
    next: nextSteps(facts, known),
    assumed: known.assumed,
  };
}

function headline({ leftAlone, best, tried }: SchedulePlan): F {
  if (best === undefined) return { code: "leave_it_alone", data: { tried: q("count", tried) } };
  const saving = q("money", leftAlone.cost_usd - best.cost_usd);
  return { code: "follow_it", data: { saving, changes: q("count", best.changes) } };
}

function searched({ tried, lookedAt_days, ranWhole }: SchedulePlan): F {
  const days = { days: q("count", lookedAt_days), all: q("count", DAYS_A_YEAR) };
  return { code: "searched", data: { tried: q("count", tried), whole: q("count", ranWhole), ...days } };
}

/** What the same days came to with the program and without it. */
function dayByDay(best: ProgramYear, leftAlone: ProgramYear): F {
  const { both, onlyWith, onlyAlone } = compareDays(best, leftAlone);
  const counts = { both: q("count", both), only_with: q("count", onlyWith), only_alone: q("count", onlyAlone) };
  const short = { short: q("volume", best.shortfall_L), short_alone: q("volume", leftAlone.shortfall_L) };
  return { code: "day_by_day", data: { ...counts, ...short } };
}

function programFindings({ model, setpoint_C }: UnitCase, { leftAlone, best }: SchedulePlan): readonly F[] {
  if (best === undefined) return [];
  const { settings } = best.program;
  const found: F[] = [];
  if (settings.before.setpoint_C > setpoint_C)
    found.push({ code: "check_valve_first", data: { storage: q("temperature", settings.before.setpoint_C) } });
  const counts = { cold: q("count", best.coldDays), alone: q("count", leftAlone.coldDays) };
  found.push({ code: "nobody_colder", data: { ...counts, days: q("count", DAYS_A_YEAR) } }, dayByDay(best, leftAlone));
  const shares = { before: q("share", leftAlone.dearShare), after: q("share", best.dearShare) };
  found.push({ code: "moves_out_of_dear", data: shares });
  if (settings.dear.setpoint_C < GROWS_BELOW_C)
    found.push({ code: "cools_in_dear_hours", data: { lowest: q("temperature", settings.dear.setpoint_C) } });
  const changes = { changes: q("count", best.changes), limit: q("count", model.changesADay) };
  return [...found, { code: "within_limit", data: changes }, { code: "set_clock", data: {} }];
}

function refusedFindings({ mixing_valve }: Facts, { leftAlone, refused }: SchedulePlan): readonly F[] {
  const found: F[] = [];
  if (refused !== undefined) {
    const saving = q("money", leftAlone.cost_usd - refused.cost_usd);
    const counts = { cold: q("count", refused.coldDays), alone: q("count", leftAlone.coldDays) };
    found.push({ code: "refused_cheaper", data: { saving, ...counts } });
  }
  if (mixing_valve !== true) found.push({ code: "valve_would_help", data: {} });
  return found;
}

function programTable({ plan }: UnitCase, { program }: ProgramYear): AnswerTable<F> {
  return {
    id: "program",
    rows: programLines(program, plan).map(({ days, months, hour, setting }) => [
      { code: days, data: { months } },
      `${hour}:00`,
      { code: setting.mode, data: {} },
      q("temperature", setting.setpoint_C),
    ]),
  };
}

function comparedTable({ leftAlone, best, refused }: SchedulePlan): AnswerTable<F> {
  const row = (code: "left_alone" | "program" | "cheaper_but_colder", run: ProgramYear | undefined) =>
    run === undefined
      ? []
      : [
          [
            { code, data: {} } as const,
            q("money", run.cost_usd),
            q("energy", run.energy_kWh),
            q("count", run.coldDays),
            q("volume", run.shortfall_L),
          ],
        ];
  return {
    id: "compared",
    rows: [...row("left_alone", leftAlone), ...row("program", best), ...row("cheaper_but_colder", refused)],
  };
}

function nextSteps(facts: Facts, { model, mode }: UnitCase): readonly NextStep<F>[] {
  const { place, rate, supply_V } = facts;
  const told = {
    model: model.id,
    people: q("count", facts.people),
    setpoint: q("temperature", facts.setpoint_C),
    bathrooms: q("count", facts.bathrooms),
    wanted: q("temperature", facts.wanted_C),
    supply: supply_V === undefined ? undefined : q("voltage", supply_V),
    mode,
    place,
    rate,
  };
  const cost: NextStep<F> = { say: { code: "step_cost", data: {} }, request: writeRequest("cost", told) };
  if (facts.mixing_valve === true) return [cost];
  const valve = writeRequest("schedule", { ...told, mixing_valve: true });
  return [{ say: { code: "step_with_valve", data: {} }, request: valve }, cost];
}
