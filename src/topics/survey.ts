import type { Books } from "../books/books.ts";
import { CREW_WORDS } from "../crew/crew-words.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { commonFacts } from "../declaration/common-facts.ts";
import type { FactValue } from "../declaration/facts.ts";
import { numberResult } from "../declaration/number-result.ts";
import { nameWithUnit } from "../declaration/run-topic.ts";
import type { Source } from "../declaration/source.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import type { CatalogueModel } from "../equipment/catalogue.ts";
import { findByName, findModel } from "../equipment/find-model.ts";
import { busiestHourResults, lookAtBusiestHour } from "../household/first-look.ts";
import { ROOM_KINDS } from "../household/room-shell-table.ts";
import { describeSite } from "../household/site-told.ts";
import { SURVEY_FACTS, SURVEY_NEEDS, type SurveyFacts } from "../household/survey-facts.ts";
import type { JobAct } from "../jobs/job-act.ts";
import { collectKit } from "../jobs/kit.ts";
import { KIT_RULES } from "../jobs/kit-rules-table.ts";
import { readKitTold } from "../jobs/kit-told-facts.ts";
import { tabulateKit, wireFor } from "../jobs/survey-end.ts";
import { CODE_LIMIT_kPa, type ExpansionPlan, planExpansion, pressureCeiling_kPa } from "../physics/expansion-plan.ts";
import { nextStockSize_L } from "../physics/expansion-tank.ts";
import { toBase } from "../units/convert.ts";

const RESULTS = [
  "facts_told",
  "facts_missing",
  "kit_parts",
  "peak_hour_demand",
  "first_hour_delivery",
  "expansion_tank",
  "breaker_asked",
] as const;

const FINDINGS = {
  told_all: { told: "count" },
  told_some: { missing: "count" },
  missing: { facts: "fact" },
  size_enough: { demand: "volume", delivery: "volume" },
  size_short: { demand: "volume", delivery: "volume" },
  expansion_size: { size: "volume", precharge: "pressure" },
  expansion_needless: {},
  room_enough: { room: "room_volume", asked: "room_volume" },
  room_small: { room: "room_volume", asked: "room_volume" },
  plate_asks: { breaker: "current", supply: "voltage" },
  supply_not_on_plate: { supply: "voltage" },
  ...CREW_WORDS,
  wire_asks: { conductor: "word", run: "length", drop: "share" },
  kit_counts: { parts: "count" },
  not_kept: {},
  unknown_model: { typed: "word", nearest: "word" },
  unknown_place: { typed: "word", nearest: "word" },
  step_size: {},
  step_room: {},
  step_circuit: {},
  step_expansion: {},
  step_caution: {},
  step_kit: {},
} as const satisfies FindingSpecs;

type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

const SURVEYED: Source = { basis: "common_practice", document: "Oldhand", section: "site survey" };
/** Relief setting and cold water where nobody told: those that `expansion` assumes too. */
const RELIEF_kPa = commonFacts.relief_setting.default.value;
const COLD_C = commonFacts.cold.default.value;

export const survey = declareTopic({
  id: "survey",
  work: "short",
  uses: "job",
  facts: SURVEY_FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { kit: ["part", "amount"] },
  asides: { tables: ["kit"] },
  compute: (facts, books) => refuse(facts, books) ?? answer(facts, books),
  site: (facts, books) => ({ ...describeSite(facts, unitOf(facts, books)), work: "survey" }),
  // A danger to life is what the visit found, whatever else was told.
  conclude: (found, raised) =>
    raised.some(({ severity }) => severity === "stop") ? { ...found, verdict: "no" } : found,
});

function refuse({ model, place }: SurveyFacts, { catalogue, places }: Books): OutOfRange<F> | undefined {
  const unit = model === undefined ? undefined : findModel(catalogue, model);
  if (model !== undefined && unit?.ok === false) return unknown("model", model, unit.nearest);
  const there = place === undefined ? undefined : findByName(places, place);
  return place !== undefined && there?.ok === false ? unknown("place", place, there.nearest) : undefined;
}

function unknown(fact: "model" | "place", typed: string, nearest: readonly string[]): OutOfRange<F> {
  const reason: F = { code: `unknown_${fact}`, data: { typed, nearest: nearest.join(", ") } };
  return { kind: "out-of-range", fact, value: typed, reason };
}

function unitOf({ model }: SurveyFacts, { catalogue }: Books): CatalogueModel | undefined {
  const found = model === undefined ? undefined : findModel(catalogue, model);
  return found?.ok ? found.entry : undefined;
}

function answer(facts: SurveyFacts, books: Books): Answer<Id, F> {
  const values = byId(facts);
  const missing = SURVEY_NEEDS.filter((id) => values[id] === undefined);
  const unit = unitOf(facts, books);
  const told = q("count", Object.keys(values).length);
  const kit = collectKit(KIT_RULES, { ...readKitTold(values), ...(unit && { unit }) });
  const parts = q("count", kit.lines.length);
  const plan = expansionOf(facts, unit);
  const hour = busiestHour(facts, unit, books);
  return {
    kind: "answer",
    verdict: missing.length === 0 ? "good" : "caution",
    headline:
      missing.length === 0
        ? { code: "told_all", data: { told } }
        : { code: "told_some", data: { missing: q("count", missing.length) } },
    results: [
      numberResult("facts_told", told, "n", {}, SURVEYED),
      numberResult("facts_missing", q("count", missing.length), "n", {}, SURVEYED),
      numberResult("kit_parts", parts, "n", {}, SURVEYED),
      ...(hour === undefined ? [] : busiestHourResults(hour)),
      ...expansionResult(facts, plan),
      ...(unit === undefined
        ? []
        : [numberResult("breaker_asked", q("current", unit.circuit.breaker_A), "I = I_plate", {}, unit.heater.source)]),
    ],
    findings: [
      ...(missing.length === 0 ? [] : [{ code: "missing" as const, data: { facts: missing.join(",") } }]),
      ...saySize(hour),
      ...sayRoom(facts, unit),
      ...sayExpansion(facts, plan),
      ...sayCircuit(facts, unit),
      { code: "kit_counts", data: { parts } },
      ...(books.openJob === undefined ? [{ code: "not_kept" as const, data: {} }] : []),
    ],
    ...(kit.lines.length > 0 && { tables: [tabulateKit(kit, books)] }),
    next: nextSteps(facts, unit),
    acts: actsOf(unit, books),
  };
}

/** What the visit changes in the job itself: it is surveyed now, and its unit is the one that was named. */
function actsOf(unit: CatalogueModel | undefined, { openJob }: Books): readonly JobAct[] {
  if (openJob === undefined) return [];
  return [
    ...(unit !== undefined && openJob.model === undefined
      ? [{ kind: "change" as const, change: { kind: "unit" as const, model: unit.id } }]
      : []),
    ...(openJob.status === "planned"
      ? [{ kind: "change" as const, change: { kind: "status" as const, status: "surveyed" as const } }]
      : []),
  ];
}

/** Whether the tank will do at a first look; nothing while household, unit or setting are not told. */
function busiestHour(
  { people, setpoint_C, supply_V, place }: SurveyFacts,
  unit: CatalogueModel | undefined,
  books: Books,
) {
  if (people === undefined || setpoint_C === undefined || unit === undefined) return undefined;
  return lookAtBusiestHour({ unit, people, setpoint_C, supply_V, place }, books);
}
type Hour = ReturnType<typeof busiestHour>;

function saySize(hour: Hour): readonly F[] {
  if (hour === undefined) return [];
  const data = { demand: q("volume", hour.demand_L), delivery: q("volume", hour.delivery_L) };
  return [{ code: hour.delivery_L < hour.demand_L ? "size_short" : "size_enough", data }];
}

function expansionOf(facts: SurveyFacts, unit: CatalogueModel | undefined): ExpansionPlan | undefined {
  const { closed, setpoint_C, line_pressure_kPa } = facts;
  if (closed !== true || unit === undefined || setpoint_C === undefined || line_pressure_kPa === undefined)
    return undefined;
  const ceiling_kPa = pressureCeiling_kPa({ pressure_limit_kPa: undefined, relief_setting_kPa: RELIEF_kPa });
  if (setpoint_C <= COLD_C || line_pressure_kPa >= ceiling_kPa) return undefined;
  return planExpansion({
    tank_L: unit.heater.tank.volume_L,
    pipe_volume_L: 0,
    cold_C: COLD_C,
    setpoint_C,
    line_pressure_kPa,
    relief_setting_kPa: RELIEF_kPa,
    pressure_limit_kPa: undefined,
    vessel_metal: "steel",
    existing_tank_L: undefined,
    existing_precharge_kPa: undefined,
  });
}

/** The tank that keeps the house at the code's limit where the line is below it, as the kit brings it. */
function neededTank_L({ codeLimit_L, minimum_L }: ExpansionPlan): number {
  return codeLimit_L ?? minimum_L;
}

function expansionResult({ line_pressure_kPa = 0, setpoint_C = 0 }: SurveyFacts, plan: ExpansionPlan | undefined) {
  if (plan === undefined) return [];
  const inputs = {
    V_e: q("volume", plan.expanded_L),
    p_1: q("pressure", line_pressure_kPa),
    p_2: q("pressure", plan.codeLimit_L === undefined ? plan.ceiling_kPa : CODE_LIMIT_kPa),
    t_hot: q("temperature", setpoint_C),
    t_cold: q("temperature", COLD_C),
  };
  const source: Source = { basis: "published", document: "Griffith, Thermal Expansion Tanks", edition: "2015" };
  return [
    numberResult(
      "expansion_tank",
      q("volume", neededTank_L(plan)),
      "V_t = V_e / (1 − p_1 / p_2), absolute",
      inputs,
      source,
    ),
  ];
}

function sayExpansion({ closed, line_pressure_kPa }: SurveyFacts, plan: ExpansionPlan | undefined): readonly F[] {
  if (closed === false) return [{ code: "expansion_needless", data: {} }];
  if (plan === undefined || line_pressure_kPa === undefined) return [];
  const needed_L = neededTank_L(plan);
  const size = q("volume", nextStockSize_L(needed_L) ?? needed_L);
  return [{ code: "expansion_size", data: { size, precharge: q("pressure", line_pressure_kPa) } }];
}

function sayRoom({ room_volume_m3 }: SurveyFacts, unit: CatalogueModel | undefined): readonly F[] {
  const asked_m3 = unit?.smallestRoom_m3;
  if (room_volume_m3 === undefined || asked_m3 === undefined) return [];
  const data = { room: q("room_volume", room_volume_m3), asked: q("room_volume", asked_m3) };
  return [{ code: room_volume_m3 < asked_m3 ? "room_small" : "room_enough", data }];
}

function sayCircuit({ supply_V, circuit_length_m }: SurveyFacts, unit: CatalogueModel | undefined): readonly F[] {
  if (unit === undefined) return [];
  const { supplies_V, breaker_A } = unit.circuit;
  if (supply_V === undefined)
    return [{ code: "plate_asks", data: { breaker: q("current", breaker_A), supply: q("voltage", supplies_V[0]) } }];
  const supply = q("voltage", supply_V);
  const isNear = supplies_V.some((plate_V) => Math.abs(plate_V - supply_V) <= toBase(5, "percent") * plate_V);
  if (!isNear) return [{ code: "supply_not_on_plate", data: { supply } }];
  const wire = wireFor(unit, supply_V, circuit_length_m);
  return [
    { code: "plate_asks", data: { breaker: q("current", breaker_A), supply } },
    ...(wire === undefined ? [] : [{ code: "wire_asks" as const, data: wire }]),
  ];
}

/** The answers that can be had now, each with what was told; the job hands on the rest. */
function nextSteps(facts: SurveyFacts, unit: CatalogueModel | undefined): readonly NextStep<F>[] {
  const { room, room_volume_m3, people, setpoint_C, line_pressure_kPa, supply_V, model, closed } = facts;
  const setpoint = setpoint_C === undefined ? undefined : q("temperature", setpoint_C);
  const count = people === undefined ? undefined : q("count", people);
  const [element] = unit?.heater.elements ?? [];
  const line_pressure = line_pressure_kPa === undefined ? undefined : q("pressure", line_pressure_kPa);
  const when = (isKnown: boolean, code: F["code"] & `step_${string}`, request: string): readonly NextStep<F>[] =>
    isKnown ? [{ say: { code, data: {} }, request }] : [];
  return [
    ...when(
      unit !== undefined && count !== undefined && setpoint !== undefined,
      "step_size",
      writeRequest("size", { model, people: count, setpoint }),
    ),
    ...when(
      unit !== undefined && room_volume_m3 !== undefined && ROOM_KINDS.some((kind) => kind === room),
      "step_room",
      writeRequest("room", {
        volume: room_volume_m3 === undefined ? undefined : q("room_volume", room_volume_m3),
        where: room,
        model,
      }),
    ),
    ...when(
      element !== undefined && supply_V !== undefined,
      "step_circuit",
      writeRequest("circuit", {
        element: element && q("power", element.rated_W),
        supply: supply_V === undefined ? undefined : q("voltage", supply_V),
      }),
    ),
    ...when(
      unit !== undefined && setpoint !== undefined && line_pressure !== undefined && closed === true,
      "step_expansion",
      writeRequest("expansion", {
        tank: unit && q("volume", unit.heater.tank.volume_L),
        setpoint,
        line_pressure,
        closed,
      }),
    ),
    ...when(true, "step_caution", writeRequest("caution", { room, setpoint, closed, model })),
    ...when(true, "step_kit", writeRequest("kit", { model, closed, line_pressure })),
  ];
}

/** What was told, by the ids of the facts. */
function byId(facts: SurveyFacts): Readonly<Record<string, FactValue>> {
  const named: Readonly<Record<string, FactValue | undefined>> = facts;
  return Object.fromEntries(
    Object.entries(SURVEY_FACTS).flatMap(([id, spec]) => {
      const value = named[nameWithUnit(id, spec)];
      return value === undefined ? [] : [[id, value]];
    }),
  );
}
