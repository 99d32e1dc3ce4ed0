import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "power_before_water",
  severity: "must",
  cites: [
    { basis: "computed", document: "An element in air has nothing to cool it", checkedOn: "2026-11-25" },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "fill and bleed before power",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ work, isTankFull }) =>
    isTankFull === false || (work === "start_up" && isTankFull === undefined) ? {} : undefined,
  examples: {
    fires: [
      { name: "start-up, tank not known to be full", site: { work: "start_up" } },
      { name: "tank empty", site: { isTankFull: false } },
    ],
    silent: [
      { name: "start-up with a full tank", site: { work: "start_up", isTankFull: true } },
      { name: "survey only", site: { work: "survey" } },
    ],
  },
});
