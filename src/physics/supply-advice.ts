import type { AnswerTable, FindingOf, FindingSpecs, Verdict } from "../declaration/answer.ts";
import { q } from "../declaration/answer.ts";
import { DEMAND_CURVES } from "./fixture-unit-table.ts";
import { steadyFlow_L_s } from "./fixture-units.ts";
import { PIPE_SIZES } from "./pipe-table.ts";
import { SMALLEST_SERVICE, type SupplyCase, type SupplyPlan, type SupplyTrial } from "./supply-plan.ts";

export const SUPPLY_ADVICE = {
  serves: { size: "word", flow: "water_flow", left: "pressure" },
  size_serves: { size: "word", left: "pressure" },
  size_too_fast: { size: "word", smallest: "word" },
  size_too_low: { size: "word", left: "pressure", needed: "pressure", smallest: "word" },
  size_fails: { size: "word", left: "pressure", needed: "pressure" },
  none_serves: { left: "pressure", needed: "pressure" },
  curves: { followed: "word", flow: "water_flow", other: "word", otherFlow: "water_flow" },
  hose_is_steady: { flow: "water_flow" },
  from_static: {},
  from_regulator: { start: "pressure" },
  regulator_wanted: { start: "pressure" },
  losses_not_told: {},
  cannot_flow: {},
  below_service: { size: "word", smallest: "word" },
  full_demand_all_along: {},
  authority_decides: {},
  fits: {},
  too_fast: {},
  too_low: {},
  too_fast_and_low: {},
} as const satisfies FindingSpecs;
type F = FindingOf<typeof SUPPLY_ADVICE>;

/** The pipe that the answer is about: where nothing serves, the widest. */
export function shownTrial({ chosen, trials }: SupplyPlan): SupplyTrial | undefined {
  return chosen ?? trials.at(-1);
}

function serves(trial: SupplyTrial | undefined): boolean {
  return trial !== undefined && !trial.isTooFast && !trial.isTooLow;
}

/** Good or not for a size that was asked about; else only news. */
export function judgeSupply({ size }: SupplyCase, { chosen }: SupplyPlan): Verdict {
  if (!serves(chosen)) return "no";
  if (size === undefined) return "info";
  return isBelowService(size) ? "caution" : "good";
}

function isBelowService(size: SupplyCase["size"]): boolean {
  return size !== undefined && PIPE_SIZES.indexOf(size) < PIPE_SIZES.indexOf(SMALLEST_SERVICE);
}

/** Whether the pipe serves, and which one would. */
export function headlineSupply(known: SupplyCase, plan: SupplyPlan): F {
  const { size } = known;
  const trial = shownTrial(plan);
  const left = q("pressure", trial?.left_kPa ?? 0);
  const needed = q("pressure", known.needed_kPa);
  if (size === undefined)
    return plan.chosen === undefined
      ? { code: "none_serves", data: { left, needed } }
      : { code: "serves", data: { size: plan.chosen.size, flow: q("water_flow", plan.demand.flow_L_s), left } };
  if (serves(plan.chosen)) return { code: "size_serves", data: { size, left } };
  if (plan.smallest === undefined) return { code: "size_fails", data: { size, left, needed } };
  const smallest = plan.smallest.size;
  return trial?.isTooLow === true
    ? { code: "size_too_low", data: { size, left, needed, smallest } }
    : { code: "size_too_fast", data: { size, smallest } };
}

/** Which table was followed, what pressure it started from, and what was left out. */
export function supplyFindings(known: SupplyCase, plan: SupplyPlan, hasLosses: boolean): readonly F[] {
  const start = q("pressure", plan.start_kPa);
  const curves = {
    followed: DEMAND_CURVES[known.code].name,
    flow: q("water_flow", plan.demand.flow_L_s),
    other: DEMAND_CURVES[plan.other.code].name,
    otherFlow: q("water_flow", plan.other.demand.flow_L_s),
  };
  const found: F[] = [{ code: "curves", data: curves }];
  if (known.code === "ipc" && known.hose_bibbs > 0)
    found.push({
      code: "hose_is_steady",
      data: { flow: q("water_flow", steadyFlow_L_s(known.hose_bibbs, known.code)) },
    });
  if (plan.startedFrom === "static") found.push({ code: "from_static", data: {} });
  if (plan.startedFrom === "regulated") found.push({ code: "from_regulator", data: { start } });
  if (plan.startedFrom === "regulator_missing") found.push({ code: "regulator_wanted", data: { start } });
  if (!hasLosses) found.push({ code: "losses_not_told", data: {} });
  if ((shownTrial(plan)?.left_kPa ?? 0) < 0) found.push({ code: "cannot_flow", data: {} });
  if (known.size !== undefined && isBelowService(known.size))
    found.push({ code: "below_service", data: { size: known.size, smallest: SMALLEST_SERVICE } });
  found.push({ code: "full_demand_all_along", data: {} }, { code: "authority_decides", data: {} });
  return found;
}

/** Size by size, what comes of it. */
export function tabulateSizes({ trials }: SupplyPlan): AnswerTable<F> {
  const rows = trials.map((trial) => [
    `${trial.size} in`,
    q("velocity", trial.velocity_m_s),
    q("pressure", trial.mainFriction_kPa + trial.hotFriction_kPa),
    q("pressure", trial.left_kPa),
    remark(trial),
  ]);
  return { id: "sizes", rows };
}

function remark({ isTooFast, isTooLow }: SupplyTrial): F {
  if (isTooFast) return { code: isTooLow ? "too_fast_and_low" : "too_fast", data: {} };
  return { code: isTooLow ? "too_low" : "fits", data: {} };
}
