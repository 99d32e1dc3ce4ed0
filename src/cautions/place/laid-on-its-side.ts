import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "laid_on_its_side",
  severity: "should",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "compressor oil runs back before the start; the unit's sheet says how long",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ wasLaidDown }) => (wasLaidDown === true ? {} : undefined),
  examples: {
    fires: [{ name: "came lying in the truck", site: { wasLaidDown: true } }],
    silent: [
      { name: "came standing", site: { wasLaidDown: false } },
      { name: "not known", site: { unitMass_kg: 100 } },
    ],
  },
});
