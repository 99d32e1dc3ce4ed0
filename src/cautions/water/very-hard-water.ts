import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "very_hard_water",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "USGS hardness classes",
      section: "very hard: over 180 mg/L as calcium carbonate",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "treatment offered from 7 to 10 grains a gallon",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ hardness, isSoftened }) => (hardness === "very_hard" && isSoftened !== true ? {} : undefined),
  examples: {
    fires: [{ name: "very hard, no softener", site: { hardness: "very_hard" } }],
    silent: [
      { name: "very hard, softened", site: { hardness: "very_hard", isSoftened: true } },
      { name: "moderate", site: { hardness: "moderate" } },
      { name: "not tested", site: {} },
    ],
  },
});
