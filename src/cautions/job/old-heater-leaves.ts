import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "old_heater_leaves",
  severity: "note",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "drained, fuel and power off at the source, recycled with a receipt",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NREL Standard Work Specification",
      section: "7.8102.8: abandoned fuel and power disconnected at the source",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ work, oldHeaterHoldsRefrigerant }) =>
    work === "removal" && oldHeaterHoldsRefrigerant !== true ? {} : undefined,
  examples: {
    fires: [{ name: "old tank comes out", site: { work: "removal" } }],
    silent: [
      {
        name: "old heat pump, where the stronger caution speaks",
        site: { work: "removal", oldHeaterHoldsRefrigerant: true },
      },
      { name: "survey only", site: { work: "survey" } },
    ],
  },
});
