import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

const WEEK_s = 7 * 24 * 3600;

export const caution = declareCaution({
  id: "water_stood_long",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "CDC, reopening buildings after prolonged shutdown",
      section:
        "standing hot water cools into the growth range; flush until hot; how long is too long depends, weeks or months",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "a week is taken as the time from which to flush",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "WHO, Legionella and the prevention of legionellosis",
      edition: "2007",
      section: "growth 25 to 45 °C; secondary copy read",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: { stood: "time" },
  check: ({ stood_s }) =>
    stood_s !== undefined && !isUnder(stood_s, WEEK_s) ? { stood: q("time", stood_s) } : undefined,
  examples: {
    fires: [
      { name: "two weeks away", site: { stood_s: 14 * 24 * 3600 } },
      { name: "exactly a week", site: { stood_s: 7 * 24 * 3600 } },
    ],
    silent: [
      { name: "three days away", site: { stood_s: 3 * 24 * 3600 } },
      { name: "absence not known", site: {} },
    ],
  },
});
