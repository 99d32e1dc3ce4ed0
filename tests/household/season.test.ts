import { expect, test } from "vitest";
import { mainsTemperature_C } from "../../src/household/mains-temperature.ts";
import { coldestSeason, seasonOf } from "../../src/household/season.ts";
import { seedBooks } from "../support/ask-with-seeds.ts";

const [place] = seedBooks.places;
if (place === undefined) throw new Error("the books have no place");

test("February has the coldest water of the invented cold town, as the published correlation has it", () => {
  const { month, cold_C } = coldestSeason(place);
  expect(month).toBe(2);
  expect(cold_C).toBe(mainsTemperature_C(place, 46));
});

test("air is the book's for the month", () => {
  expect(seasonOf(place, 7).air_C).toBe(place.heaterRoom_C[6]);
});

test("water never comes in colder than 0.5 °C, however cold the place", () => {
  expect(coldestSeason({ ...place, yearMean_C: -8, monthlySpan_K: 45 }).cold_C).toBe(0.5);
});

test("refuses a thirteenth month", () => {
  expect(() => seasonOf(place, 13)).toThrow(/month 13/);
});
