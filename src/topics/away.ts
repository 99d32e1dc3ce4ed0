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
import { type AwayPlan, GROWTH_RANGE_C, type Hold, planAway } from "../household/away-plan.ts";
import { awayResults } from "../household/away-results.ts";
import { coldestSeason } from "../household/season.ts";
import { planUnit, UNIT_REFUSALS, type UnitCase } from "../household/unit-case.ts";
import { toBase } from "../units/convert.ts";

const FACTS = {
  model: commonFacts.model,
  absence: {
    type: "quantity",
    quantity: "time",
    min: toBase(1, "day"),
    max: toBase(365, "day"),
    usual: [3, 7, 14, 30].map((days) => toBase(days, "day")),
  },
  month: { ...commonFacts.month, ask: true },
  setpoint: { ...commonFacts.setpoint, ask: true, default: { value: toBase(125, "F"), source: RATING.source } },
  place: commonFacts.place,
  mode: commonFacts.mode,
  supply: { ...commonFacts.supply, byNameOnly: true },
  rate: commonFacts.rate,
} as const satisfies FactSpecs;

const RESULTS = [
  "hold_temperature",
  "reheat_lead",
  "saving",
  "energy_saved",
  "energy_left_alone",
  "energy_away",
  "growth_time",
  "coolest_tank",
] as const;

const FINDINGS = {
  ...UNIT_REFUSALS,
  hold_cool: { hold: "temperature", saving: "money", lead: "time" },
  switch_off: { saving: "money" },
  hardly_pays: { saving: "money" },
  leave_it: {},
  no_time_to_reheat: {},
  hot_on_arrival: { lead: "time" },
  breaker_locked: {},
  reheat_with_heat_pump: {},
  growth_time: { time: "time", from: "temperature", to: "temperature" },
  hydrogen_first: {},
  scald_first: { storage: "temperature" },
  heat_through: { storage: "temperature" },
  flush_outlets: {},
  people_at_risk: {},
  frost: { air: "temperature" },
  keep_full: {},
  prices_set: { plan: "word", day: "word" },
  left_alone: {},
  cool_hold: {},
  switched_off: {},
  step_longer: { absence: "time" },
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const away = declareTopic({
  id: "away",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { ways: ["way", "energy", "cost", "growth_time", "lead"] },
  compute: (facts, books): Answer<Id, F> | OutOfRange<F> => {
    const unit = planUnit(facts, books);
    if (!unit.ok) return unit.refused;
    return answer(facts, unit.known, books);
  },
  site: ({ setpoint_C }) => ({ storage_C: setpoint_C }),
});

/** Less than this in the whole absence is not worth a walk to the heater: judgement [US dollars]. */
const WORTH_usd = 2;
/** Heater manuals warn of hydrogen in hot water that stood this long; two were read in copies. */
const HYDROGEN_AFTER_s = toBase(14, "day");
/** Storage that kills what grew: OSHA, Legionnaires' disease eTool (archived); with seconds to a burn. */
const HEAT_THROUGH_C = toBase(140, "F");
/** Air from which on pipes may freeze: judgement, with room below for the night [C]. */
const FROST_AIR_C = 5;
/** What a person tries next when an absence hardly pays. */
const LONGER = 4;

function answer(facts: Facts, known: UnitCase, books: Books): Answer<Id, F> {
  const { month } = facts.month === undefined ? coldestSeason(known.place) : { month: Number(facts.month) };
  const plan = planAway(known, facts.absence_s, month);
  return {
    kind: "answer",
    verdict: isAdvised(plan) && plan.hold.growth_s > 0 ? "caution" : "info",
    headline: headline(plan),
    results: awayResults(known, plan, facts.absence_s, books),
    findings: [...comingBack(facts, known, plan), ...leaving(plan), sayPrices(known, books)],
    tables: [waysTable(plan)],
    next: nextSteps(facts, known, plan),
    assumed: { ...known.assumed, month: { value: String(month), source: OUR_HABIT } },
  };
}

function isAdvised(plan: AwayPlan): plan is AwayPlan & { readonly hold: Hold } {
  return plan.hold !== undefined && savingOf(plan, plan.hold) >= WORTH_usd;
}

function savingOf({ leftAlone }: AwayPlan, hold: Hold): number {
  return leftAlone.cost_usd - hold.cost_usd;
}

function headline(plan: AwayPlan): F {
  const { hold } = plan;
  if (hold === undefined) return { code: "no_time_to_reheat", data: {} };
  const saving = q("money", savingOf(plan, hold));
  if (saving.value <= 0) return { code: "leave_it", data: {} };
  if (!isAdvised(plan)) return { code: "hardly_pays", data: { saving } };
  if (hold.hold_C === undefined) return { code: "switch_off", data: { saving } };
  return { code: "hold_cool", data: { hold: q("temperature", hold.hold_C), saving, lead: q("time", hold.lead_s) } };
}

/** What to do before the first shower, each danger before its step. */
function comingBack({ absence_s }: Facts, known: UnitCase, plan: AwayPlan): readonly F[] {
  const { hold } = plan;
  const found: F[] = isAdvised(plan) ? [...sayReheating(plan.hold, plan.reheatMode)] : [];
  if (absence_s >= HYDROGEN_AFTER_s) found.push({ code: "hydrogen_first", data: {} });
  if (hold !== undefined && hold.growth_s > 0) found.push(sayGrowth(hold));
  if (isAdvised(plan) && plan.hold.growth_s > 0) found.push(...sayHeatThrough(known));
  return [...found, { code: "flush_outlets", data: {} }, { code: "people_at_risk", data: {} }];
}

function sayReheating({ id, lead_s }: Hold, reheatMode: AwayPlan["reheatMode"]): readonly F[] {
  if (id === "switched_off")
    return [
      { code: "breaker_locked", data: {} },
      { code: "hot_on_arrival", data: { lead: q("time", lead_s) } },
    ];
  return reheatMode === "heat_pump_only" ? [{ code: "reheat_with_heat_pump", data: {} }] : [];
}

function sayGrowth({ growth_s }: Hold): F {
  const [from, to] = GROWTH_RANGE_C;
  const range = { from: q("temperature", from), to: q("temperature", to) };
  return { code: "growth_time", data: { time: q("time", growth_s), ...range } };
}

function sayHeatThrough({ model, setpoint_C }: UnitCase): readonly F[] {
  if (model.heater.controls.setpoint_C[1] < HEAT_THROUGH_C) return [];
  const storage = q("temperature", Math.max(HEAT_THROUGH_C, setpoint_C));
  return [
    { code: "scald_first", data: { storage } },
    { code: "heat_through", data: { storage } },
  ];
}

function leaving({ air_C }: AwayPlan): readonly F[] {
  const frost: readonly F[] = air_C < FROST_AIR_C ? [{ code: "frost", data: { air: q("temperature", air_C) } }] : [];
  return [...frost, { code: "keep_full", data: {} }];
}

function sayPrices({ plan }: UnitCase, { prices }: Books): F {
  return { code: "prices_set", data: { plan: plan.name, day: prices.setOn } };
}

function waysTable({ leftAlone, hold }: AwayPlan): AnswerTable<F> {
  const ways = hold === undefined ? [leftAlone] : [leftAlone, hold];
  return {
    id: "ways",
    rows: ways.map(({ id, energy_kWh, cost_usd, growth_s, lead_s }) => [
      { code: id, data: {} },
      q("energy", energy_kWh),
      q("money", cost_usd),
      q("time", growth_s),
      q("time", lead_s),
    ]),
  };
}

function nextSteps(facts: Facts, { model }: UnitCase, plan: AwayPlan): readonly NextStep<F>[] {
  if (isAdvised(plan)) return [];
  const absence = q("time", Math.min(FACTS.absence.max, facts.absence_s * LONGER));
  const { month, place, mode, rate, supply_V } = facts;
  const supply = supply_V === undefined ? undefined : q("voltage", supply_V);
  const told = { month, setpoint: q("temperature", facts.setpoint_C), supply, mode, rate, place };
  return absence.value > facts.absence_s
    ? [
        {
          say: { code: "step_longer", data: { absence } },
          request: writeRequest("away", { model: model.id, absence, ...told }),
        },
      ]
    : [];
}
