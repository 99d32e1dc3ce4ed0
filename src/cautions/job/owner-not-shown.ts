import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "owner_not_shown",
  severity: "should",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "the person who lives there repeats it back",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater installation practices, trade reprint",
      edition: "2024",
      section: "filter, controls and drain within reach",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "household",
  data: {},
  check: ({ work, isOwnerShown }) => (work === "hand_over" && isOwnerShown !== true ? {} : undefined),
  examples: {
    fires: [{ name: "handing over, nobody shown yet", site: { work: "hand_over" } }],
    silent: [
      { name: "shown and repeated back", site: { work: "hand_over", isOwnerShown: true } },
      { name: "start-up only", site: { work: "start_up", isTankFull: true } },
    ],
  },
});
