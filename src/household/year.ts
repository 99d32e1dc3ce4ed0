import type { Place } from "../books/places.ts";
import type { Source } from "../declaration/source.ts";
import type { WaterHeater } from "../equipment/water-heater.ts";
import { cell } from "../physics/tank/cell.ts";
import type { Draws } from "../physics/tank/draw-list.ts";
import { airSeries } from "../physics/tank/room-air.ts";
import type { PlanStep, Site } from "../physics/tank/simulate.ts";
import { makeTrace } from "../physics/tank/trace.ts";
import { DAY_s, DAYS_A_YEAR, HOUR_s, MONTHS_A_YEAR, monthOfDay } from "./calendar.ts";
import { type ColdRisk, drawsOf, findColdRisk, sampleDays } from "./cold-risk.ts";
import { mainsTemperature_C } from "./mains-temperature.ts";
import type { Household, SampledDay } from "./sample-day.ts";

/** The sample that years are drawn from, so that two questions about one household are answered for the same days. */
export const YEAR_SEED = 2026;
const ALL_DAYS: readonly number[] = Array.from({ length: DAYS_A_YEAR }, (_, day) => day);
/** Mondays in the middle of winter, spring, summer and autumn. */
const WEEKS_FROM = [14, 105, 196, 287] as const;
/** Mains water is not let freeze, whatever the correlation says of a very cold place [C]. */
const COLDEST_MAINS_C = 0.5;

export const SIMULATED_YEAR: Source = {
  basis: "computed",
  document: "365 sampled days through the tank simulation, mains water by the day and heater-room air by the month",
};

/** A household's year of days, or some weeks of it; sampled once, for as many units and modes as there are to compare. */
export interface SampledYear {
  readonly household: Household;
  readonly wanted_C: number;
  readonly seed: number;
  /** Which days of the year these are, 0 = the first of January, in order. */
  readonly days: readonly number[];
  readonly sampled: readonly SampledDay[];
  /** The same days as draws, listed once. */
  readonly draws: Draws;
}

export interface YearCase {
  readonly unit: WaterHeater;
  readonly place: Place;
  readonly supply_V: number;
  readonly plan: readonly [PlanStep, ...PlanStep[]];
  /** Setting of a mixing valve at the tank, where there is one [C]. */
  readonly mixingValve_C?: number;
}

export interface SimulatedYear extends ColdRisk {
  /** Electricity of each hour of the year's days, one day after the other [kWh]. */
  readonly hourly_kWh: Float64Array;
}

/**
 * Draws a year of days for a household.
 * @param household who lives there
 * @param wanted_C temperature people want at the fixtures [C], 30..60
 * @param seed whole number that names the sample
 * @source days: `sample-day.ts`; the year begins on a Monday
 */
export function sampleYear(household: Household, wanted_C: number, seed = YEAR_SEED): SampledYear {
  const sampled = sampleDays(household, seed, DAYS_A_YEAR);
  return { household, wanted_C, seed, days: ALL_DAYS, sampled, draws: drawsOf(sampled, wanted_C) };
}

/**
 * Takes a week out of each quarter of a year, to look at before the whole of it is run.
 * @param year all 365 days
 * @returns 28 of the same days, Monday to Sunday, run as if one week followed the other
 * @limits what a week says of a quarter; mains and air step from one week to the next
 */
export function sampleWeeks(year: SampledYear): SampledYear {
  const days = WEEKS_FROM.flatMap((from) => ALL_DAYS.slice(from, from + 7));
  const sampled = days.flatMap((day) => year.sampled[day] ?? []);
  return { ...year, days, sampled, draws: drawsOf(sampled, year.wanted_C) };
}

/**
 * Runs a unit through a sampled year in one go.
 * @param known unit, place, and which mode holds which setpoint from when on, counted over the year's own days
 * @param year the household's days
 * @param enoughShort_L water too cold from which on the rest of the year does not matter [L]; the run then ends early
 * @returns the run in numbers, the days on which somebody ran cold, and the electricity of each hour [kWh]
 * @source mains: `mains-temperature.ts`; air: the place, month by month; tank: `simulate.ts`
 * @limits one drawn year; the room's air is not cooled by the unit; another seed moves the energy by 2 percent and the cold days by a third
 */
export function simulateYear(known: YearCase, year: SampledYear, enoughShort_L?: number): SimulatedYear {
  const { place, supply_V, mixingValve_C, unit, plan } = known;
  const trace = makeTrace(year.days.length * DAY_s, HOUR_s);
  const site = { ...yearSite(place, supply_V, year.days), ...(mixingValve_C !== undefined && { mixingValve_C }) };
  const risk = findColdRisk(
    { unit, plan, ...year, site, days: year.days.length },
    { trace, ...(enoughShort_L !== undefined && { enoughShort_L }) },
  );
  return { ...risk, hourly_kWh: trace.electricity_kWh };
}

/** A place as the simulation meets it on these days of the year. */
function yearSite(place: Place, supply_V: number, days: readonly number[]): Site {
  const [air_C, mains_C] = [dailyAir_C(place), dailyMains_C(place)];
  const dryBulb_C = Float64Array.from(days, (day) => cell(air_C, day));
  const relativeHumidity = new Float64Array(days.length).fill(place.heaterRoomHumidity);
  return {
    supply_V,
    inlet_C: { every_s: DAY_s, values: Float64Array.from(days, (day) => cell(mains_C, day)) },
    air: airSeries({ every_s: DAY_s, dryBulb_C, relativeHumidity }),
  };
}

/** Street water on each day of the year [C]. */
export function dailyMains_C(place: Place): Float64Array {
  return Float64Array.from({ length: DAYS_A_YEAR }, (_, day) =>
    Math.max(COLDEST_MAINS_C, mainsTemperature_C(place, day + 1)),
  );
}

/** Air where the heater stands on each day of the year [C]. */
export function dailyAir_C(place: Place): Float64Array {
  return Float64Array.from({ length: DAYS_A_YEAR }, (_, day) => monthAir_C(place, monthOfDay(day)));
}

/** Air where the heater stands in a month, 1 = January [C]. */
export function monthAir_C(place: Place, month: number): number {
  const air_C = place.heaterRoom_C[month - 1];
  if (air_C === undefined) throw new RangeError(`${place.id} has no air for month ${month} of ${MONTHS_A_YEAR}`);
  return air_C;
}
