import { type AnswerTable, type FindingOf, type FindingSpecs, type NextStep, q } from "../declaration/answer.ts";
import { writeRequest } from "../declaration/write-request.ts";
import { scaldTime_s } from "../physics/scald-time.ts";
import { toBase } from "../units/convert.ts";
import type { ColdRisk } from "./cold-risk.ts";
import { type SizeCase, VALVE_C } from "./size-case.ts";
import type { Change, Remedy } from "./size-remedies.ts";

/** How a change is named, and what it means for scalding and hygiene. */
export const SIZE_CHANGES = {
  change_none: {},
  change_hotter: { setpoint: "temperature" },
  change_heat_pump_first: {},
  change_both_together: {},
  change_quiet_hours: {},
  change_model: { model: "word" },
  change_hotter_and_mode: { setpoint: "temperature" },
  remark_fit_valve: { setpoint: "temperature", time: "time" },
  remark_stays_hot: { setpoint: "temperature" },
  remark_stays_cool: { setpoint: "temperature", advised: "temperature" },
  remark_as_before: {},
} as const satisfies FindingSpecs;
type Said = FindingOf<typeof SIZE_CHANGES>;
/** What of the request stays when something is changed, ready to be typed again. */
type Asked = Parameters<typeof writeRequest>[1];

/** Storage under this is under health advice; the caution on it says by whom. */
const ADVISED_C = toBase(122, "F");
const MOST_STEPS = 4;

/** Every change with what it does to the chance of running cold, to energy, and to scalding and hygiene. */
export function tabulateRemedies(known: SizeCase, now: ColdRisk, remedies: readonly Remedy[]): AnswerTable<Said> {
  const row = (change: Change, risk: ColdRisk) => [
    sayChange(change),
    q("share", risk.share),
    q("energy", risk.summary.electricity_kWh / risk.days),
    remarkOn(known, change),
  ];
  return { id: "remedies", rows: [row({}, now), ...remedies.map(({ change, risk }) => row(change, risk))] };
}

/** The changes that help, the surest first, as requests; everything else stays as it was asked. */
export function offerRemedies(asked: Asked, now: ColdRisk, remedies: readonly Remedy[]): readonly NextStep<Said>[] {
  return remedies
    .filter(({ risk }) => risk.share < now.share)
    .toSorted((a, b) => a.risk.share - b.risk.share)
    .slice(0, MOST_STEPS)
    .map(({ change }) => ({ say: sayChange(change), request: writeRequest("size", applyTo(asked, change)) }));
}

function applyTo(asked: Asked, change: Change): Asked {
  const { setpoint_C, mixing_valve, mode, model, appliances } = change;
  const { tank: _tank, element: _element, heat_pump: _heatPump, ...rest } = asked;
  return {
    ...(model === undefined ? asked : rest),
    ...(model !== undefined && { model: model.id }),
    ...(setpoint_C !== undefined && { setpoint: q("temperature", setpoint_C) }),
    ...(mixing_valve !== undefined && { mixing_valve }),
    ...(mode !== undefined && { mode }),
    ...(appliances !== undefined && { appliances }),
  };
}

function sayChange({ setpoint_C, mode, model, appliances }: Change): Said {
  const setpoint = q("temperature", setpoint_C ?? 0);
  if (setpoint_C !== undefined && mode !== undefined) return { code: "change_hotter_and_mode", data: { setpoint } };
  if (setpoint_C !== undefined) return { code: "change_hotter", data: { setpoint } };
  if (model !== undefined) return { code: "change_model", data: { model: model.name } };
  if (appliances !== undefined) return { code: "change_quiet_hours", data: {} };
  if (mode === undefined) return { code: "change_none", data: {} };
  return { code: mode === "heat_pump_first" ? "change_heat_pump_first" : "change_both_together", data: {} };
}

function remarkOn({ run }: SizeCase, change: Change): Said {
  const setpoint_C = change.setpoint_C ?? run.plan[0].setpoint_C;
  const setpoint = q("temperature", setpoint_C);
  const burns = change.setpoint_C === undefined ? undefined : scaldTime_s(setpoint_C);
  if (burns !== undefined) return { code: "remark_fit_valve", data: { setpoint, time: q("time", burns.longest_s) } };
  if (setpoint_C < ADVISED_C)
    return { code: "remark_stays_cool", data: { setpoint, advised: q("temperature", ADVISED_C) } };
  const isGuarded = run.site.mixingValve_C !== undefined;
  return setpoint_C > VALVE_C && !isGuarded
    ? { code: "remark_stays_hot", data: { setpoint } }
    : { code: "remark_as_before", data: {} };
}
