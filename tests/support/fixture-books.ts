import type { Books } from "../../src/books/books.ts";

const ALL_MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12];
const FLAT_usd_kWh = Array.from({ length: 24 }, () => 0.1);

/** Books of an invented company, for tests that need some; every figure in them is invented. */
export const fixtureBooks: Books = {
  company: {
    name: "Testbench Plumbing",
    isInvented: true,
    town: "Testbench",
    timeZone: "America/Chicago",
    language: "en",
    units: "us",
  },
  people: [],
  catalogue: [],
  places: [],
  prices: {
    setOn: "2026-01-01",
    electricity: [
      {
        id: "flat",
        name: "Flat",
        seasons: [{ months: ALL_MONTHS, weekday_usd_kWh: FLAT_usd_kWh, weekend_usd_kWh: FLAT_usd_kWh }],
      },
    ],
    gas_usd_kWh: 0.05,
    emissions: { setOn: "2026-01-01", electricity_kg_kWh: 0.4, gas_kg_kWh: 0.2 },
    incentives: [],
  },
};
