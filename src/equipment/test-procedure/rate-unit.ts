import type { WaterHeater } from "../water-heater.ts";
import { type UsageBin, usageBin } from "./draw-patterns.ts";
import { type FirstHourResult, runFirstHour } from "./first-hour.ts";
import { runSimulatedUse, type SimulatedUseResult } from "./simulated-use.ts";

/** A unit's ratings as the simulator finds them. */
export interface Ratings {
  readonly firstHour: FirstHourResult;
  readonly bin: UsageBin;
  readonly day: SimulatedUseResult;
}

/**
 * Rates a unit by both tests: the first hour decides the bin, the bin the day.
 * @param unit data sheet
 * @returns first-hour rating, usage bin and the simulated-use day
 * @source 10 CFR 430 subpart B appendix E, from memory
 */
export function rateUnit(unit: WaterHeater): Ratings {
  const firstHour = runFirstHour(unit);
  const bin = usageBin(firstHour.firstHour_L);
  return { firstHour, bin, day: runSimulatedUse(unit, bin) };
}
