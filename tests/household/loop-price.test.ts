import { expect, test } from "vitest";
import type { ElectricityPlan } from "../../src/books/prices.ts";
import { assumePrice, meanPrice_usd_kWh } from "../../src/household/loop-price.ts";
import { fixtureBooks } from "../support/fixture-books.ts";

const level = (price: number) => new Array<number>(24).fill(price);

test("a flat plan costs a steady load its one price, taken from the books and marked so", () => {
  const assumed = assumePrice(fixtureBooks);
  expect(assumed.value).toBeCloseTo(0.162, 9);
  expect(assumed.source).toMatchObject({ basis: "invented", edition: fixtureBooks.prices.setOn });
});

test("weekends weigh two days in seven, a season its months: 0.2 on weekdays, 0.06 on weekends, a quarter year at 0.3", () => {
  const plan: ElectricityPlan = {
    id: "steps",
    name: "Steps",
    seasons: [
      { months: [1, 2, 3, 4, 5, 6, 7, 8, 9], weekday_usd_kWh: level(0.2), weekend_usd_kWh: level(0.06) },
      { months: [10, 11, 12], weekday_usd_kWh: level(0.3), weekend_usd_kWh: level(0.3) },
    ],
  };
  expect(meanPrice_usd_kWh(plan)).toBeCloseTo(0.75 * 0.16 + 0.25 * 0.3, 9);
});
