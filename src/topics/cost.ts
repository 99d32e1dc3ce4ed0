import type { Books } from "../books/books.ts";
import {
  type Answer,
  type AnswerTable,
  type FindingOf,
  type FindingSpecs,
  type NextStep,
  type OutOfRange,
  q,
  type Verdict,
} from "../declaration/answer.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { Assumption, FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { RATING } from "../equipment/test-procedure/rating-conditions.ts";
import { DAYS_A_YEAR } from "../household/calendar.ts";
import {
  type CostPlan,
  OLD_EFFICIENCY_LIMITS,
  OLD_HABIT,
  OLD_HEATERS,
  planCost,
  USUAL_OLD_EFFICIENCY,
  USUAL_OLD_TANK_L,
} from "../household/cost-plan.ts";
import { costChart, savingResults, yearResults } from "../household/cost-results.ts";
import { bookSource, planUnit, UNIT_REFUSALS, type UnitCase } from "../household/unit-case.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  model: commonFacts.model,
  people: commonFacts.people,
  replaces: {
    type: "choice",
    options: OLD_HEATERS,
    ask: true,
    default: { value: "electric_tank", source: OUR_HABIT },
  },
  setpoint: { ...commonFacts.setpoint, ask: true, default: { value: toBase(125, "F"), source: RATING.source } },
  old_efficiency: { type: "quantity", quantity: "share", min: 0.45, max: 0.97, optional: true, byNameOnly: true },
  old_tank: {
    type: "quantity",
    quantity: "volume",
    min: toBase(20, "gal"),
    max: toBase(120, "gal"),
    optional: true,
    byNameOnly: true,
  },
  price: { type: "quantity", quantity: "money", min: 0, max: 50_000, optional: true, byNameOnly: true },
  instead: {
    type: "quantity",
    quantity: "money",
    min: 0,
    max: 50_000,
    byNameOnly: true,
    default: { value: 0, source: OUR_HABIT },
  },
  incentives: { type: "flag", default: { value: true, source: OUR_HABIT } },
  bathrooms: commonFacts.bathrooms,
  wanted: commonFacts.wanted,
  place: commonFacts.place,
  mode: commonFacts.mode,
  supply: { ...commonFacts.supply, byNameOnly: true },
  rate: commonFacts.rate,
} as const satisfies FactSpecs;

const RESULTS = [
  "energy_per_year",
  "cost_per_year",
  "emissions",
  "cop_year",
  "cold_days",
  "saving_per_year",
  "emissions_saved",
  "net_price",
  "payback",
] as const;

const FINDINGS = {
  ...UNIT_REFUSALS,
  efficiency_outside: { lowest: "share", highest: "share" },
  wanted_above_setpoint: { wanted: "temperature", setpoint: "temperature" },
  saves: { cost: "money", saving: "money" },
  costs_more: { cost: "money", more: "money" },
  costs: { cost: "money", energy: "energy" },
  pays_back: { years: "ratio", net: "money" },
  pays_at_once: {},
  never_pays: { net: "money" },
  counts_incentive: { name: "word", amount: "money" },
  check_incentives: {},
  never_cold: { days: "count", wanted: "temperature" },
  runs_cold: { cold: "count", days: "count", wanted: "temperature" },
  colder_than_old: { cold: "count", old: "count" },
  heat_from_room: { heat: "energy" },
  gas_by_equation: { efficiency: "share" },
  gas_work_left_out: {},
  prices_set: { plan: "word", day: "word" },
  factors_set: { day: "word" },
  what_is_left_out: {},
  heat_pump_only: {},
  heat_pump_first: {},
  both_together: {},
  elements_only: {},
  electric_tank: {},
  gas_tank: {},
  not_simulated: {},
  step_heat_pump_only: {},
  step_heat_pump_first: {},
  step_both_together: {},
  step_elements_only: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const cost = declareTopic({
  id: "cost",
  work: "long",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    by_heater: ["heater", "energy", "cost", "emissions", "cold_days"],
    by_plan: ["plan", "cost"],
  },
  charts: { cost_by_month: ["new_heater", "old_heater"] },
  asides: {
    results: ["cop_year", "emissions_saved"],
    findings: ["gas_by_equation", "prices_set", "factors_set"],
    tables: ["by_plan"],
  },
  compute: (facts, books, report) => {
    const unit = planUnit(facts, books);
    if (!unit.ok) return unit.refused;
    return refuse(facts) ?? answer(facts, unit.known, planCost(unit.known, facts, books, report), books);
  },
  site: ({ setpoint_C }) => ({ storage_C: setpoint_C }),
});

/** A share of days from which on somebody will complain: judgement. */
const TOO_MANY_COLD = 0.05;
/** A mode is worth naming from this share of the cost on: judgement. */
const WORTH_NAMING = 0.03;

function refuse(facts: Facts): OutOfRange<F> | undefined {
  const wanted = q("temperature", facts.wanted_C);
  const setpoint = q("temperature", facts.setpoint_C);
  if (wanted.value > setpoint.value)
    return refusal("wanted", wanted, { code: "wanted_above_setpoint", data: { wanted, setpoint } });
  const { replaces, old_efficiency: efficiency } = facts;
  if (replaces === "none" || efficiency === undefined) return undefined;
  const [low, high] = OLD_EFFICIENCY_LIMITS[replaces];
  if (efficiency >= low && efficiency <= high) return undefined;
  const data = { lowest: q("share", low), highest: q("share", high) };
  return refusal("old_efficiency", q("share", efficiency), { code: "efficiency_outside", data });
}

function refusal(fact: keyof typeof FACTS, value: OutOfRange["value"], reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}

function answer(facts: Facts, known: UnitCase, plan: CostPlan, books: Books): Answer<Id, F> {
  return {
    kind: "answer",
    verdict: judge(plan),
    headline: headline(plan),
    results: [...yearResults(known, plan, facts.people, books), ...savingResults(known, plan, books)],
    findings: [...moneyFindings(plan), ...comfortFindings(facts, plan), ...sourceFindings(known, plan, books)],
    tables: [heaterTable(plan), ...(plan.byPlan.length > 1 ? [planTable(plan)] : [])],
    charts: [costChart(plan)],
    next: nextSteps(facts, known, plan),
    assumed: { ...known.assumed, ...assumptions(facts, known, books) },
  };
}

function assumptions(
  { replaces }: Facts,
  { model }: UnitCase,
  { company }: Books,
): Readonly<Record<string, Assumption>> {
  const { unit_usd, installation_usd } = model.price;
  return {
    price: { value: unit_usd + installation_usd, source: bookSource(company, model.name) },
    ...(replaces !== "none" && {
      old_efficiency: { value: USUAL_OLD_EFFICIENCY[replaces], source: OLD_HABIT },
    }),
    ...(replaces === "electric_tank" && { old_tank: { value: USUAL_OLD_TANK_L, source: OLD_HABIT } }),
  };
}

function judge({ chosen, old, purchase }: CostPlan): Verdict {
  if (purchase !== undefined && purchase.saving_usd < 0) return "no";
  const bearable = Math.max(TOO_MANY_COLD * DAYS_A_YEAR, old?.coldDays ?? 0);
  if (chosen.coldDays > bearable) return "caution";
  return purchase === undefined ? "info" : "good";
}

function headline({ chosen, purchase }: CostPlan): F {
  const cost = q("money", chosen.bill.total_usd);
  if (purchase === undefined) return { code: "costs", data: { cost, energy: q("energy", chosen.energy_kWh) } };
  const { saving_usd } = purchase;
  if (saving_usd < 0) return { code: "costs_more", data: { cost, more: q("money", -saving_usd) } };
  return { code: "saves", data: { cost, saving: q("money", saving_usd) } };
}

function moneyFindings({ purchase }: CostPlan): readonly F[] {
  if (purchase === undefined) return [];
  const net = q("money", purchase.net_usd);
  const granted = purchase.incentives.map(
    ({ name, amount_usd }): F => ({ code: "counts_incentive", data: { name, amount: q("money", amount_usd) } }),
  );
  const checked: readonly F[] = granted.length > 0 ? [{ code: "check_incentives", data: {} }] : [];
  return [sayPayback(purchase.payback_years, net), ...granted, ...checked];
}

function sayPayback(years: number | undefined, net: ReturnType<typeof q<"money">>): F {
  if (years === undefined) return { code: "never_pays", data: { net } };
  if (years === 0) return { code: "pays_at_once", data: {} };
  return { code: "pays_back", data: { years: q("ratio", years), net } };
}

function comfortFindings({ wanted_C }: Facts, { chosen, old }: CostPlan): readonly F[] {
  const days = q("count", DAYS_A_YEAR);
  const wanted = q("temperature", wanted_C);
  const cold = q("count", chosen.coldDays);
  const found: F[] = [
    chosen.coldDays === 0
      ? { code: "never_cold", data: { days, wanted } }
      : { code: "runs_cold", data: { cold, days, wanted } },
  ];
  if (old?.coldDays !== undefined && chosen.coldDays > old.coldDays)
    found.push({ code: "colder_than_old", data: { cold, old: q("count", old.coldDays) } });
  if (chosen.heatFromAir_kWh > 0)
    found.push({ code: "heat_from_room", data: { heat: q("energy", chosen.heatFromAir_kWh) } });
  return found;
}

function sourceFindings(known: UnitCase, { old }: CostPlan, { prices }: Books): readonly F[] {
  return [
    ...(old?.kind === "gas_tank"
      ? ([
          { code: "gas_by_equation", data: { efficiency: q("share", old.efficiency) } },
          { code: "gas_work_left_out", data: {} },
        ] as const)
      : []),
    { code: "prices_set", data: { plan: known.plan.name, day: prices.setOn } },
    { code: "factors_set", data: { day: prices.emissions.setOn } },
    { code: "what_is_left_out", data: {} },
  ];
}

function heaterTable({ modes, old }: CostPlan): AnswerTable<F> {
  const rows = [...modes.map((run) => ({ ...run, name: run.mode })), ...(old ? [{ ...old, name: old.kind }] : [])];
  return {
    id: "by_heater",
    rows: rows.map(({ name, energy_kWh, bill, emitted_kg, coldDays }) => [
      { code: name, data: {} },
      q("energy", energy_kWh),
      q("money", bill.total_usd),
      q("emission", emitted_kg),
      coldDays === undefined ? { code: "not_simulated", data: {} } : q("count", coldDays),
    ]),
  };
}

function planTable({ byPlan }: CostPlan): AnswerTable<F> {
  return { id: "by_plan", rows: byPlan.map(({ plan, total_usd }) => [plan.name, q("money", total_usd)]) };
}

/** The cheapest mode that leaves nobody colder, where it is worth the change. */
function nextSteps(facts: Facts, { model, setpoint_C }: UnitCase, { modes, chosen }: CostPlan): readonly NextStep<F>[] {
  const limit_usd = (1 - WORTH_NAMING) * chosen.bill.total_usd;
  const better = modes
    .filter(({ coldDays, bill }) => coldDays <= chosen.coldDays && bill.total_usd < limit_usd)
    .sort((a, b) => a.bill.total_usd - b.bill.total_usd);
  return better.slice(0, 1).map(({ mode }) => ({
    say: { code: `step_${mode}`, data: {} },
    request: writeRequest("cost", { ...toldOf(facts), model: model.id, setpoint: q("temperature", setpoint_C), mode }),
  }));
}

/** What was told beside unit and mode, as it can be typed. */
function toldOf(facts: Facts): Parameters<typeof writeRequest>[1] {
  const { old_efficiency, old_tank_L, price_usd, supply_V, replaces, incentives, place, rate } = facts;
  return {
    people: q("count", facts.people),
    replaces,
    old_efficiency: old_efficiency === undefined ? undefined : q("share", old_efficiency),
    old_tank: old_tank_L === undefined ? undefined : q("volume", old_tank_L),
    price: price_usd === undefined ? undefined : q("money", price_usd),
    instead: q("money", facts.instead_usd),
    incentives,
    bathrooms: q("count", facts.bathrooms),
    wanted: q("temperature", facts.wanted_C),
    supply: supply_V === undefined ? undefined : q("voltage", supply_V),
    place,
    rate,
  };
}
