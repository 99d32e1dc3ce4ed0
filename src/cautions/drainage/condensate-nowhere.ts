import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "condensate_nowhere",
  severity: "must",
  cites: [
    { basis: "published", document: "IPC", edition: "Baltimore copy", section: "314.2.1", checkedOn: "2026-11-25" },
    {
      basis: "published",
      document: "ENERGY STAR, Considerations for heat pump water heaters",
      section: "drain or pump for condensate",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ condensateEndsIn }) => (condensateEndsIn === "nowhere" ? {} : undefined),
  examples: {
    fires: [{ name: "no route yet", site: { condensateEndsIn: "nowhere" } }],
    silent: [
      { name: "to a drain with an air gap", site: { condensateEndsIn: "drain_with_air_gap" } },
      { name: "route not known", site: { room: "closet" } },
    ],
  },
});
