import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "softened_water_eats_anode",
  severity: "note",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "softened water carries current better, so the anode goes sooner",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ isSoftened }) => (isSoftened === true ? {} : undefined),
  examples: {
    fires: [{ name: "softener on the house", site: { isSoftened: true } }],
    silent: [
      { name: "no softener", site: { isSoftened: false } },
      { name: "not known", site: { hardness: "hard" } },
    ],
  },
});
