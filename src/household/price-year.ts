import type { ElectricityPlan, PriceBook, Season } from "../books/prices.ts";
import { HOURS_A_DAY, isWeekend, MONTHS_A_YEAR, monthOfDay } from "./calendar.ts";

/** What energy came to. */
export interface Bill {
  readonly total_usd: number;
  /** By month, January first. */
  readonly months_usd: readonly number[];
}

/** How a plan prices a day: the same at all hours, or not. */
export const RATES = ["flat", "time_of_use"] as const;
export type Rate = (typeof RATES)[number];

/**
 * Prices an hourly trace of electricity.
 * @param hourly_kWh electricity of each hour [kWh]; the first hour is midnight
 * @param plan prices by season, weekday or weekend, and hour
 * @param days day of the year of each day of the trace, or the first of them where they follow each other; 0 = the first
 * of January, a Monday
 * @returns total and by month [US dollars]
 * @source sum of energy times the price of its hour
 * @limits energy prices only: no standing charge, tax, tier or demand charge
 */
export function priceHours(
  hourly_kWh: ArrayLike<number>,
  plan: ElectricityPlan,
  days: number | readonly number[] = 0,
): Bill {
  const months_usd = new Array<number>(MONTHS_A_YEAR).fill(0);
  const count = Math.ceil(hourly_kWh.length / HOURS_A_DAY);
  for (let day = 0; day < count; day++) {
    const ofYear = typeof days === "number" ? days + day : (days[day] ?? 0);
    const month = monthOfDay(ofYear);
    const prices = dayPrices(seasonOf(plan, month), isWeekend(ofYear));
    let day_usd = 0;
    for (let hour = 0; hour < HOURS_A_DAY; hour++)
      day_usd += (hourly_kWh[day * HOURS_A_DAY + hour] ?? 0) * (prices[hour] ?? 0);
    months_usd[month - 1] = (months_usd[month - 1] ?? 0) + day_usd;
  }
  return { total_usd: sum(months_usd), months_usd };
}

/**
 * Prices gas burnt on each day of a year.
 * @param daily_kWh gas of each day [kWh]
 * @param price_usd_kWh price of gas [US dollars a kWh]
 */
export function priceGas(daily_kWh: ArrayLike<number>, price_usd_kWh: number): Bill {
  const months_usd = new Array<number>(MONTHS_A_YEAR).fill(0);
  for (let day = 0; day < daily_kWh.length; day++) {
    const month = monthOfDay(day) - 1;
    months_usd[month] = (months_usd[month] ?? 0) + (daily_kWh[day] ?? 0) * price_usd_kWh;
  }
  return { total_usd: sum(months_usd), months_usd };
}

/** The prices that hold in a month; every month stands in one season. */
export function seasonOf(plan: ElectricityPlan, month: number): Season {
  const season = plan.seasons.find(({ months }) => months.includes(month));
  if (season === undefined) throw new Error(`plan ${plan.id} has no season for month ${month}`);
  return season;
}

/** The 24 prices of a day. */
export function dayPrices(season: Season, isOnWeekend: boolean): readonly number[] {
  return isOnWeekend ? season.weekend_usd_kWh : season.weekday_usd_kWh;
}

/** Whether a plan's price changes within a day. */
export function rateOf(plan: ElectricityPlan): Rate {
  const isLevel = (prices: readonly number[]) => prices.every((price) => price === prices[0]);
  const isFlat = plan.seasons.every(
    ({ weekday_usd_kWh, weekend_usd_kWh }) => isLevel(weekday_usd_kWh) && isLevel(weekend_usd_kWh),
  );
  return isFlat ? "flat" : "time_of_use";
}

/** The company's first plan of a kind, or its very first where no kind is asked for. */
export function findPlan({ electricity }: PriceBook, rate: Rate | undefined): ElectricityPlan | undefined {
  return rate === undefined ? electricity[0] : electricity.find((plan) => rateOf(plan) === rate);
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
