import { describe, expect, test } from "vitest";
import type { ElectricityPlan } from "../../src/books/prices.ts";
import { firstDayOf, isWeekend, monthOfDay } from "../../src/household/calendar.ts";
import { dayPrices, findPlan, priceGas, priceHours, rateOf, seasonOf } from "../../src/household/price-year.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const HOURS = 8660;
const EACH_HOUR_kWh = new Float64Array(HOURS).fill(1);
/** 2018 began on a Monday and had 365 days; the platform's own calendar is the judge. */
const dateOf = (day: number) => new Date(Date.UTC(2018, 0, 1 + day));

const flat = (price: number) => Array.from({ length: 24 }, () => price);
const PEAK = flat(0.1).map((price, hour) => (hour >= 16 && hour < 21 ? 0.4 : price));
const PLAN: ElectricityPlan = {
  id: "peak",
  name: "Peak",
  seasons: [
    { months: [6, 7, 8, 9], weekday_usd_kWh: PEAK, weekend_usd_kWh: flat(0.1) },
    { months: [1, 2, 3, 4, 5, 10, 11, 12], weekday_usd_kWh: flat(0.1), weekend_usd_kWh: flat(0.1) },
  ],
};

describe("the calendar", () => {
  test("is that of 2018 on all 365 days", () => {
    for (let day = 0; day < 365; day++) {
      expect(monthOfDay(day)).toBe(dateOf(day).getUTCMonth() + 1);
      expect(isWeekend(day)).toBe([0, 6].includes(dateOf(day).getUTCDay()));
    }
  });
  test("knows that June begins on day 151 and that the year comes round", () => {
    expect([firstDayOf(1), firstDayOf(6), monthOfDay(365), monthOfDay(364)]).toEqual([0, 151, 1, 12]);
  });
});

describe("a bill", () => {
  test("of 1 kW all year at 0.1 comes to 866", () => {
    const always = { months: [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12], weekday_usd_kWh: flat(0.1) };
    const plan: ElectricityPlan = { ...PLAN, seasons: [{ ...always, weekend_usd_kWh: flat(0.1) }] };
    expect(priceHours(EACH_HOUR_kWh, plan).total_usd).toBeCloseTo(866, 9);
  });
  test("adds 0.3 for five hours on each of the 86 summer weekdays of 2018", () => {
    const weekdays = Array.from({ length: 365 }, (_, day) => dateOf(day)).filter(
      (date) => date.getUTCMonth() >= 5 && date.getUTCMonth() <= 8 && ![0, 6].includes(date.getUTCDay()),
    ).length;
    expect(weekdays).toBe(86);
    expect(priceHours(EACH_HOUR_kWh, PLAN).total_usd).toBeCloseTo(866 + 86 * 5 * 0.3, 9);
  });
  test("is the sum of its months, and no month is missing", () => {
    const { total_usd, months_usd } = priceHours(EACH_HOUR_kWh, PLAN);
    expect(months_usd.reduce((sum, month_usd) => sum + month_usd, 0)).toBeCloseTo(total_usd, 9);
    expect(months_usd.map((usd) => usd > 60)).toEqual(new Array(12).fill(true));
  });
  test("of energy at one hour takes that hour's price: 17:00 on Monday, July 2", () => {
    const one = new Float64Array(HOURS);
    const monday = Array.from({ length: 365 }, (_, day) => day).find((day) => day >= 181 && day % 7 === 0) ?? 0;
    expect(dateOf(monday).toISOString().slice(0, 10)).toBe("2018-07-02");
    one[monday * 24 + 17] = 2;
    expect(priceHours(one, PLAN).total_usd).toBeCloseTo(0.8, 12);
    one[monday * 24 + 17] = 0;
    one[(monday + 5) * 24 + 17] = 2;
    expect(priceHours(one, PLAN).total_usd).toBeCloseTo(0.2, 12);
  });
  test("of a trace that begins on another day is priced from that day on", () => {
    expect(priceHours(new Float64Array(24).fill(1), PLAN, 182).total_usd).toBeCloseTo(24 * 0.1 + 5 * 0.3, 9);
    expect(priceHours(new Float64Array(24).fill(1), PLAN, 0).total_usd).toBeCloseTo(2.4, 9);
  });
  test("of gas falls in the month it was burnt in", () => {
    const daily_kWh = new Float64Array(365);
    daily_kWh[31] = 100;
    const { total_usd, months_usd } = priceGas(daily_kWh, 0.05);
    expect(total_usd).toBeCloseTo(5, 12);
    expect(months_usd[1]).toBeCloseTo(5, 12);
  });
});

describe("plans of the books", () => {
  test("are told apart by whether the price changes in a day", () => {
    expect(seedBooks.prices.electricity.map(rateOf)).toEqual(["flat", "time_of_use"]);
    expect(rateOf(PLAN)).toBe("time_of_use");
  });
  test("are found by rate; the first where none is asked for; none where the books have none", () => {
    const { prices } = seedBooks;
    expect(findPlan(prices, undefined)?.id).toBe("flat");
    expect(findPlan(prices, "time_of_use")?.id).toBe("evening-peak");
    const onlyFlat = { ...prices, electricity: [prices.electricity[0]] as const };
    expect(findPlan(onlyFlat, "time_of_use")).toBeUndefined();
  });
  test("hold a price for every hour of every month", () => {
    for (const plan of seedBooks.prices.electricity)
      for (let month = 1; month <= 12; month++)
        for (const isOnWeekend of [true, false])
          expect(dayPrices(seasonOf(plan, month), isOnWeekend).filter((price) => price > 0)).toHaveLength(24);
  });
});
