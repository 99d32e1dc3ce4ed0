import type { Books } from "../books/books.ts";
import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic, type ReportProgress } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import type { ColdRisk } from "../household/cold-risk.ts";
import { chartDay, DAY_SERIES } from "../household/day-chart.ts";
import { peakHourDemand_L } from "../household/peak-hour-worksheet.ts";
import { SAMPLE_FACTS } from "../household/sample-facts.ts";
import { offerRemedies, SIZE_CHANGES, tabulateRemedies } from "../household/size-advice.ts";
import { findUnit, planSize, type SizeCase, VALVE_C } from "../household/size-case.ts";
import { measureSize, type SizeOutcome } from "../household/size-outcome.ts";
import { refuseForUnit, refuseNames, refuseTemperatures, SIZE_REFUSALS } from "../household/size-refusals.ts";
import { listChanges, type Remedy, tryChange } from "../household/size-remedies.ts";
import { deliveryResults, recoveryResults, sampleResults } from "../household/size-results.ts";
import { toBase } from "../units/convert.ts";

const USE_COUNT = {
  type: "quantity",
  quantity: "count",
  min: 0,
  max: 20,
  whole: true,
  byNameOnly: true,
  optional: true,
} as const;

const FACTS = {
  people: { ...commonFacts.people, unless: "bedrooms" },
  bedrooms: commonFacts.bedrooms,
  model: { ...commonFacts.model, optional: true, ask: true },
  tank: { ...commonFacts.tank, min: toBase(20, "gal"), max: toBase(200, "gal"), unless: "model" },
  setpoint: commonFacts.setpoint,
  mixing_valve: commonFacts.mixing_valve,
  bathrooms: commonFacts.bathrooms,
  element: { type: "quantity", quantity: "power", min: 0, max: 12_000, usual: [3500, 4500, 5500], optional: true },
  heat_pump: {
    type: "quantity",
    quantity: "heat_rate",
    min: 0,
    max: 20_000,
    byNameOnly: true,
    optional: true,
  },
  wanted: commonFacts.wanted,
  cold: {
    type: "quantity",
    quantity: "temperature",
    min: toBase(33, "F"),
    max: toBase(95, "F"),
    usual: commonFacts.cold.usual,
    byNameOnly: true,
    optional: true,
  },
  place: commonFacts.place,
  month: commonFacts.month,
  air: commonFacts.air,
  mode: commonFacts.mode,
  supply: commonFacts.supply,
  shower: USE_COUNT,
  shave: USE_COUNT,
  hand_dishes: USE_COUNT,
  dishwasher: USE_COUNT,
  clothes_washer: USE_COUNT,
  worksheet: {
    type: "choice",
    options: ["present", "middle"],
    default: { value: "present", source: OUR_HABIT },
  },
  appliances: {
    type: "choice",
    options: ["any_hour", "quiet_hours"],
    default: { value: "any_hour", source: OUR_HABIT },
  },
  ...SAMPLE_FACTS,
} as const satisfies FactSpecs;

const RESULTS = [
  "peak_hour_demand",
  "first_hour_delivery",
  "usable_volume_mixed",
  "recovery_rate_heat_pump",
  "recovery_rate_elements",
  "lowest_outlet_temperature",
  "shortfall_volume",
  "chance_of_running_cold",
  "sampling_error",
  "recovery_time",
  "energy_per_day",
  "cop_day",
  "storage_gain",
] as const;

const COUNTED = { cold: "count", days: "count", low: "share", high: "share", limit: "share" } as const;

const FINDINGS = {
  ...SIZE_REFUSALS,
  ...SIZE_CHANGES,
  runs_warm: COUNTED,
  too_close: COUNTED,
  runs_cold: COUNTED,
  worksheet_met: { demand: "volume", delivery: "volume" },
  worksheet_short: { demand: "volume", delivery: "volume" },
  days_decide: {},
  counted_for: { cold: "temperature", air: "temperature" },
  generic_sheet: { volume: "volume" },
  bedrooms_as_people: { people: "ratio" },
  not_used: { left: "fact", taken: "fact" },
  heat_pump_barred: { air: "temperature" },
  heat_pump_outside_map: {},
  never_recovers: {},
  valve_taken_at: { valve: "temperature" },
  showers_spread: {},
  nothing_helps: {},
  step_more_days: { days: "count" },
  step_expansion: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

/** More days than these say little more. */
const MANY_DAYS = 1000;
/** Running time outside the fitted map that is worth a word [share of the run]. */
const OUTSIDE_MAP = 0.02;

export const size = declareTopic({
  id: "size",
  work: "long",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: { remedies: ["change", "chance", "energy", "remark"] },
  charts: { day: DAY_SERIES },
  asides: {
    results: ["cop_day", "usable_volume_mixed", "storage_gain", "recovery_rate_heat_pump", "recovery_rate_elements"],
    findings: ["counted_for", "showers_spread"],
  },
  compute: (facts, books, report) => {
    const refused = refuseNames(facts, books) ?? refuseForUnit(facts, findUnit(facts, books));
    if (refused) return refused;
    const known = planSize(facts, books);
    return refuseTemperatures(known) ?? answer(facts, known, books, report);
  },
  site: (facts, books) => describeSite(facts, planSize(facts, books)),
});

function describeSite(facts: Facts, { unit, supply_V }: SizeCase): SiteFacts {
  const [element] = unit.elements;
  return {
    storage_C: facts.setpoint_C,
    tap_C: facts.wanted_C,
    tank_L: unit.tank.volume_L,
    supply_V,
    ...(element && { ratedVoltage_V: element.rated_V, elementPower_W: element.rated_W }),
    ...(facts.mixing_valve !== undefined && { hasMixingValve: facts.mixing_valve }),
  };
}

function answer(facts: Facts, known: SizeCase, books: Books, report: ReportProgress): Answer<Id, F> {
  const outcome = measureSize(known, facts.appliances);
  const verdict = judge(outcome.risk, facts.limit);
  const changes = verdict === "good" ? [] : listChanges(known, books.catalogue, facts.appliances === "quiet_hours");
  report(1, changes.length + 1);
  const remedies = changes.map((change, place) => {
    const remedy = tryChange(known, outcome.sampled, change);
    report(place + 2, changes.length + 1);
    return remedy;
  });
  return {
    kind: "answer",
    verdict,
    headline: headline(outcome.risk, facts.limit, verdict),
    results: [
      ...sampleResults(known, outcome),
      ...deliveryResults(known, outcome, facts.worksheet),
      ...recoveryResults(known, outcome),
    ],
    findings: [...findings(facts, known, outcome, verdict), ...sayWhetherHelp(facts, remedies)],
    ...(remedies.length > 0 && { tables: [tabulateRemedies(known, outcome.risk, remedies)] }),
    charts: [chartDay(outcome.worstDay, facts.wanted_C, known.unit)],
    next: nextSteps(facts, known, outcome.risk, verdict, remedies),
    assumed: known.assumed,
  };
}

/** Good or not only where 95 % confidence lies on one side of the limit; between them it is too close to call. */
function judge({ low, high }: ColdRisk, limit: number): Verdict {
  if (high <= limit) return "good";
  return low > limit ? "no" : "caution";
}

function headline(risk: ColdRisk, limit: number, verdict: Verdict): F {
  const data = {
    cold: q("count", risk.coldDays),
    days: q("count", risk.days),
    low: q("share", risk.low),
    high: q("share", risk.high),
    limit: q("share", limit),
  };
  if (verdict === "good") return { code: "runs_warm", data };
  return { code: verdict === "no" ? "runs_cold" : "too_close", data };
}

function findings(facts: Facts, known: SizeCase, outcome: SizeOutcome, verdict: Verdict): readonly F[] {
  const demand_L = peakHourDemand_L(known.uses, facts.worksheet);
  const isMet = outcome.firstHour_L >= demand_L;
  const data = { demand: q("volume", demand_L), delivery: q("volume", outcome.firstHour_L) };
  const found: F[] = [{ code: isMet ? "worksheet_met" : "worksheet_short", data }];
  if (isMet !== (verdict === "good")) found.push({ code: "days_decide", data: {} });
  found.push({
    code: "counted_for",
    data: { cold: q("temperature", known.cold_C), air: q("temperature", known.air_C) },
  });
  found.push(...factFindings(facts, known), ...heatFindings(known, outcome));
  if (known.run.site.mixingValve_C !== undefined)
    found.push({ code: "valve_taken_at", data: { valve: q("temperature", VALVE_C) } });
  found.push({ code: "showers_spread", data: {} });
  return found;
}

/** What was made of the facts as they were told. */
function factFindings(facts: Facts, known: SizeCase): readonly F[] {
  const found: F[] = [];
  if (known.model === undefined)
    found.push({ code: "generic_sheet", data: { volume: q("volume", known.unit.tank.volume_L) } });
  if (facts.people === undefined)
    found.push({ code: "bedrooms_as_people", data: { people: q("ratio", known.people) } });
  else if (facts.bedrooms !== undefined) found.push({ code: "not_used", data: { left: "bedrooms", taken: "people" } });
  if (known.model !== undefined)
    for (const left of ["tank", "element", "heat_pump"] as const)
      if (isTold(facts, left)) found.push({ code: "not_used", data: { left, taken: "model" } });
  return found;
}

function isTold(facts: Facts, fact: "tank" | "element" | "heat_pump"): boolean {
  return { tank: facts.tank_L, element: facts.element_W, heat_pump: facts.heat_pump_W }[fact] !== undefined;
}

function heatFindings({ air_C }: SizeCase, { risk, recovery_s }: SizeOutcome): readonly F[] {
  const { barredByCold_s, barredByHot_s, clamped_s, duration_s } = risk.summary;
  const found: F[] = [];
  if (barredByCold_s + barredByHot_s > 0)
    found.push({ code: "heat_pump_barred", data: { air: q("temperature", air_C) } });
  if (clamped_s > OUTSIDE_MAP * duration_s) found.push({ code: "heat_pump_outside_map", data: {} });
  if (recovery_s === undefined) found.push({ code: "never_recovers", data: {} });
  return found;
}

function sayWhetherHelp({ limit }: Facts, remedies: readonly Remedy[]): readonly F[] {
  const isHopeless = remedies.length > 0 && remedies.every(({ risk }) => risk.share > limit);
  return isHopeless ? [{ code: "nothing_helps", data: {} }] : [];
}

function nextSteps(
  facts: Facts,
  known: SizeCase,
  risk: ColdRisk,
  verdict: Verdict,
  remedies: readonly Remedy[],
): readonly NextStep<F>[] {
  const asked = askedFacts(FACTS, facts);
  if (verdict === "good") {
    const tank = q("volume", known.nominal_L);
    const setpoint = q("temperature", facts.setpoint_C);
    const request = writeRequest("expansion", { tank, setpoint, cold: q("temperature", known.cold_C) });
    return [{ say: { code: "step_expansion", data: {} }, request }];
  }
  const days = q("count", MANY_DAYS);
  const more: readonly NextStep<F>[] =
    verdict === "caution" && facts.days < MANY_DAYS
      ? [{ say: { code: "step_more_days", data: { days } }, request: writeRequest("size", { ...asked, days }) }]
      : [];
  return [...offerRemedies(asked, risk, remedies), ...more];
}
