import type { Books } from "../books/books.ts";
import type { ElectricityPlan } from "../books/prices.ts";
import type { Assumption } from "../declaration/facts.ts";
import { bookSource } from "./unit-case.ts";

/** Weekdays of a week. */
const WEEKDAYS = 5;
const DAYS_PER_WEEK = 7;

/**
 * Mean price of a load that runs at all hours, all year.
 * @param plan price plan; its seasons together hold every month once
 * @returns price [US dollars a kWh], every month alike, five weekdays in seven
 * @source the company's books
 */
export function meanPrice_usd_kWh({ seasons }: ElectricityPlan): number {
  const months = seasons.reduce((sum, season) => sum + season.months.length, 0);
  const total = seasons.reduce((sum, { months: held, weekday_usd_kWh, weekend_usd_kWh }) => {
    const week = WEEKDAYS * mean(weekday_usd_kWh) + (DAYS_PER_WEEK - WEEKDAYS) * mean(weekend_usd_kWh);
    return sum + (held.length * week) / DAYS_PER_WEEK;
  }, 0);
  return total / months;
}

/** What the company's first plan asks for such a load, as something taken from the books. */
export function assumePrice({ company, prices }: Books): Assumption {
  const [plan] = prices.electricity;
  const source = { ...bookSource(company, plan.name), edition: prices.setOn };
  return { value: meanPrice_usd_kWh(plan), source };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
