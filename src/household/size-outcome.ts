import { type AirAtUnit, type Recovery, recoverByElements, recoverByHeatPump } from "../equipment/recovery.ts";
import { runFirstHour } from "../equipment/test-procedure/first-hour.ts";
import { mountUnit } from "../equipment/test-procedure/test-stand.ts";
import { humidityRatioFromRelativeHumidity, wetBulb_C } from "../physics/moist-air.ts";
import { ATMOSPHERE_kPa } from "../physics/water.ts";
import { type ColdRisk, findColdRisk, sampleDays } from "./cold-risk.ts";
import { moveToQuietHours } from "./quiet-hours.ts";
import type { SampledDay } from "./sample-day.ts";
import type { SizeCase } from "./size-case.ts";
import { recoveryTime_s, usableMixed_L } from "./tank-trials.ts";
import { type TracedDay, traceDay } from "./trace-day.ts";

/** When washing machines and dishwashers run. */
export type ApplianceHours = "any_hour" | "quiet_hours";

/** Everything that the simulation says of one household with one unit. */
export interface SizeOutcome {
  readonly sampled: readonly SampledDay[];
  readonly risk: ColdRisk;
  readonly firstHour_L: number;
  readonly usable_L: number;
  readonly recovery_s: number | undefined;
  readonly byHeatPump: Recovery | undefined;
  readonly byElements: Recovery | undefined;
  readonly worstDay: TracedDay;
}

/** The days of a sample, with the appliances where they are wanted. */
export function daysOf({ run }: SizeCase, hours: ApplianceHours): readonly SampledDay[] {
  const sampled = sampleDays(run.household, run.seed, run.days);
  return hours === "quiet_hours" ? sampled.map(moveToQuietHours) : sampled;
}

/** Runs the sampled days, then the worst of them again to look at it, and the trials that rules of thumb stand for. */
export function measureSize(known: SizeCase, hours: ApplianceHours): SizeOutcome {
  const { run, unit, cold_C, supply_V } = known;
  const { policy, setpoint_C } = run.plan[0];
  const sampled = daysOf(known, hours);
  const risk = findColdRisk({ ...run, sampled });
  const conditions = { setpoint_C, supply_V, inlet_C: cold_C, air: run.site.air };
  return {
    sampled,
    risk,
    firstHour_L: runFirstHour(unit, mountUnit(unit, policy, conditions)).firstHour_L,
    usable_L: usableMixed_L(run),
    recovery_s: recoveryTime_s(run),
    byHeatPump: unit.heatPump && recoverByHeatPump(unit.heatPump, airOf(known), cold_C, setpoint_C),
    byElements: recoverByElements(unit, supply_V, cold_C, setpoint_C),
    worstDay: traceDay(run, sampled, risk.worstDay),
  };
}

function airOf({ air_C, humidity }: SizeCase): AirAtUnit {
  const ratio = humidityRatioFromRelativeHumidity(air_C, humidity, ATMOSPHERE_kPa);
  return { dryBulb_C: air_C, wetBulb_C: wetBulb_C(air_C, ratio, ATMOSPHERE_kPa) };
}
