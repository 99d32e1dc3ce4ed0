import type { SiteFacts } from "../cautions/site-facts.ts";
import type { Answer, FindingOf, FindingSpecs, NextStep, OutOfRange } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { askedFacts } from "../declaration/asked-facts.ts";
import { commonFacts, OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs, FactsOf } from "../declaration/facts.ts";
import { declareTopic } from "../declaration/topic.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { FIXTURE_USES, FLUSHES, LOAD_CODES, MOST_FIXTURE_UNITS } from "../physics/fixture-unit-table.ts";
import { sumFixtureUnits } from "../physics/fixture-units.ts";
import { insideDiameter_m, PIPE_KINDS, PIPE_SIZES, pipeMetal } from "../physics/pipe-table.ts";
import {
  headlineSupply,
  judgeSupply,
  SUPPLY_ADVICE,
  shownTrial,
  supplyFindings,
  tabulateSizes,
} from "../physics/supply-advice.ts";
import { planSupply, type SupplyCase, type SupplyPlan } from "../physics/supply-plan.ts";
import { countPressure, FAR_FIXTURES, listPressure, PRESSURE_ROWS } from "../physics/supply-pressure.ts";
import { demandResults, pipeResults, pressureResults } from "../physics/supply-results.ts";
import { toBase } from "../units/convert.ts";

const COUNT = {
  type: "quantity",
  quantity: "count",
  min: 0,
  max: 40,
  whole: true,
  byNameOnly: true,
} as const;
const LOSS = {
  type: "quantity",
  quantity: "pressure",
  min: 0,
  max: toBase(60, "psi"),
  byNameOnly: true,
  optional: true,
} as const;
const PRESSURE = {
  type: "quantity",
  quantity: "pressure",
  min: toBase(5, "psi"),
  max: toBase(200, "psi"),
  byNameOnly: true,
} as const;
const one = { value: 1, source: OUR_HABIT };

const FACTS = {
  bath_groups: { ...COUNT, usual: [1, 2, 3], unless: "toilets" },
  pipe: { type: "choice", options: PIPE_KINDS },
  length: {
    type: "quantity",
    quantity: "length",
    min: toBase(5, "ft"),
    max: toBase(1000, "ft"),
    usual: [60, 80, 100, 150].map((feet) => toBase(feet, "ft")),
  },
  line_pressure: commonFacts.line_pressure,
  rise: {
    type: "quantity",
    quantity: "length",
    min: toBase(-100, "ft"),
    max: toBase(200, "ft"),
    usual: [0, 10, 20, 30].map((feet) => toBase(feet, "ft")),
    byNameOnly: true,
    ask: true,
    default: { value: toBase(10, "ft"), source: OUR_HABIT },
  },
  toilets: { ...COUNT, optional: true },
  lavatories: { ...COUNT, optional: true },
  showers: { ...COUNT, optional: true },
  tubs: { ...COUNT, optional: true },
  kitchen_sinks: { ...COUNT, default: one },
  dishwashers: { ...COUNT, default: one },
  clothes_washers: { ...COUNT, default: one },
  hose_bibbs: { ...COUNT, default: one },
  residual: { ...PRESSURE, optional: true },
  regulator: { ...PRESSURE, optional: true },
  meter_loss: {
    type: "quantity",
    quantity: "pressure",
    min: 0,
    max: toBase(60, "psi"),
    byNameOnly: true,
    default: { value: toBase(5, "psi"), source: OUR_HABIT },
  },
  backflow_loss: LOSS,
  softener_loss: LOSS,
  heater_loss: LOSS,
  valve_loss: LOSS,
  far_fixture: {
    type: "choice",
    options: FAR_FIXTURES,
    default: { value: "balanced_shower", source: OUR_HABIT },
  },
  needs: { ...PRESSURE, min: 0, max: toBase(80, "psi"), optional: true },
  hot_length: {
    type: "quantity",
    quantity: "length",
    min: 0,
    max: toBase(1000, "ft"),
    byNameOnly: true,
    optional: true,
  },
  fittings: {
    type: "quantity",
    quantity: "share",
    min: 0,
    max: 2,
    usual: [0.25, 0.5],
    byNameOnly: true,
    default: { value: 0.5, source: OUR_HABIT },
  },
  size: { type: "choice", options: PIPE_SIZES, optional: true },
  code: { type: "choice", options: LOAD_CODES, default: { value: "ipc", source: OUR_HABIT } },
  flush: { type: "choice", options: FLUSHES, default: { value: "tank", source: OUR_HABIT } },
  use: { type: "choice", options: FIXTURE_USES, default: { value: "private", source: OUR_HABIT } },
  setpoint: { ...commonFacts.setpoint, byNameOnly: true, default: { value: toBase(120, "F"), source: OUR_HABIT } },
  cold: commonFacts.cold,
} as const satisfies FactSpecs;

const RESULTS = [
  "fixture_units",
  "fixture_units_hot",
  "demand_flow",
  "demand_flow_other",
  "demand_flow_hot",
  "pipe_size",
  "pipe_size_hot",
  "velocity",
  "velocity_limit",
  "velocity_hot",
  "velocity_limit_hot",
  "friction_loss",
  "elevation_loss",
  "other_losses",
  "pressure_at_start",
  "pressure_left",
  "pressure_needed",
] as const;

const FINDINGS = {
  ...PRESSURE_ROWS,
  ...SUPPLY_ADVICE,
  no_fixtures: {},
  beyond_curve: { units: "ratio", most: "ratio" },
  hot_beyond_length: { hot: "length", length: "length" },
  residual_above_static: { residual: "pressure", pressure: "pressure" },
  size_not_made: { size: "word" },
  step_other_code: { code: "word" },
  step_hot_line: {},
} as const satisfies FindingSpecs;

type Facts = FactsOf<typeof FACTS>;
type Id = (typeof RESULTS)[number];
type F = FindingOf<typeof FINDINGS>;

export const supply = declareTopic({
  id: "supply",
  work: "short",
  facts: FACTS,
  results: RESULTS,
  findings: FINDINGS,
  tables: {
    sizes: ["size", "velocity", "friction", "left", "remark"],
    pressure: ["step", "pressure"],
  },
  asides: {
    results: [
      "fixture_units",
      "fixture_units_hot",
      "demand_flow_other",
      "demand_flow_hot",
      "pressure_at_start",
      "elevation_loss",
      "other_losses",
      "friction_loss",
    ],
    findings: ["curves", "hose_is_steady", "full_demand_all_along"],
    tables: ["pressure"],
  },
  compute: (facts) => {
    const known = readCase(facts);
    return refuse(facts, known) ?? answer(facts, known, planSupply(known));
  },
  site: describeSite,
});

function readCase(facts: Facts): SupplyCase {
  const { toilets = 0, lavatories = 0, showers = 0, tubs = 0, bath_groups = 0 } = facts;
  const { kitchen_sinks, dishwashers, clothes_washers } = facts;
  return {
    ...facts,
    counts: { bath_groups, toilets, lavatories, showers, tubs, kitchen_sinks, dishwashers, clothes_washers },
    hot_length_m: facts.hot_length_m ?? 0,
    pressure_kPa: facts.line_pressure_kPa,
    losses_kPa: {
      meter: facts.meter_loss_kPa,
      backflow: facts.backflow_loss_kPa ?? 0,
      softener: facts.softener_loss_kPa ?? 0,
      heater: facts.heater_loss_kPa ?? 0,
      valve: facts.valve_loss_kPa ?? 0,
    },
    needed_kPa: facts.needs_kPa ?? countPressure(facts.far_fixture),
  };
}

function refuse(facts: Facts, known: SupplyCase): OutOfRange<F> | undefined {
  const units = LOAD_CODES.map(
    (code) => sumFixtureUnits(known.counts, known.hose_bibbs, code, known.use, known.flush).total,
  );
  const most = Math.max(...units);
  if (most === 0) return no("bath_groups", q("count", 0), { code: "no_fixtures", data: {} });
  if (most > MOST_FIXTURE_UNITS) {
    const data = { units: q("ratio", most), most: q("ratio", MOST_FIXTURE_UNITS) };
    const fact = facts.bath_groups === undefined ? "toilets" : "bath_groups";
    return no(fact, q("count", facts.bath_groups ?? facts.toilets ?? 0), { code: "beyond_curve", data });
  }
  const hot = q("length", known.hot_length_m);
  if (known.hot_length_m > known.length_m)
    return no("hot_length", hot, { code: "hot_beyond_length", data: { hot, length: q("length", known.length_m) } });
  const { residual_kPa, pressure_kPa } = known;
  if (residual_kPa !== undefined && residual_kPa > pressure_kPa) {
    const data = { residual: q("pressure", residual_kPa), pressure: q("pressure", pressure_kPa) };
    return no("residual", data.residual, { code: "residual_above_static", data });
  }
  const { size, pipe } = facts;
  if (size === undefined || insideDiameter_m(pipe, size) !== undefined) return undefined;
  return no("size", size, { code: "size_not_made", data: { size } });
}

function no(fact: string, value: OutOfRange["value"], reason: F): OutOfRange<F> {
  return { kind: "out-of-range", fact, value, reason };
}

function describeSite(facts: Facts): SiteFacts {
  const known = readCase(facts);
  const pressure = { linePressure_kPa: facts.line_pressure_kPa, pipeMetal: pipeMetal(facts.pipe) };
  if (refuse(facts, known) !== undefined) return pressure;
  const trial = shownTrial(planSupply(known));
  if (trial === undefined) return pressure;
  const isHot = trial.hotFlow_L_s > 0;
  return {
    ...pressure,
    coldPipeVelocity_m_s: trial.velocity_m_s,
    ...(isHot && { hotPipeVelocity_m_s: trial.hotVelocity_m_s, hotPipe_C: facts.setpoint_C }),
  };
}

function answer(facts: Facts, known: SupplyCase, plan: SupplyPlan): Answer<Id, F> {
  const trial = shownTrial(plan);
  return {
    kind: "answer",
    verdict: judgeSupply(known, plan),
    headline: headlineSupply(known, plan),
    results: [
      ...demandResults(known, plan),
      ...(trial === undefined ? [] : [...pipeResults(known, plan, trial), ...pressureResults(known, plan, trial)]),
    ],
    findings: supplyFindings(known, plan, hasLosses(facts)),
    tables: [tabulateSizes(plan), ...(trial === undefined ? [] : [listPressure(known, plan, trial)])],
    next: nextSteps(facts, plan),
  };
}

/** Whether anything but the meter was told to take pressure. */
function hasLosses({ backflow_loss_kPa, softener_loss_kPa, heater_loss_kPa, valve_loss_kPa }: Facts): boolean {
  return [backflow_loss_kPa, softener_loss_kPa, heater_loss_kPa, valve_loss_kPa].some((loss) => loss !== undefined);
}

function nextSteps(facts: Facts, { other }: SupplyPlan): readonly NextStep<F>[] {
  const asked = askedFacts(FACTS, facts);
  const byOther = writeRequest("supply", { ...asked, code: other.code });
  const step: NextStep<F> = {
    say: { code: "step_other_code", data: { code: other.code.toUpperCase() } },
    request: byOther,
  };
  if (facts.hot_length_m !== undefined) return [step];
  const half = q("length", facts.length_m / 2);
  const withHot = writeRequest("supply", { ...asked, hot_length: half });
  return [step, { say: { code: "step_hot_line", data: {} }, request: withHot }];
}
