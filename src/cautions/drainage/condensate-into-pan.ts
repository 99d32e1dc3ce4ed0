import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "condensate_into_pan",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater installation practices, trade reprint",
      edition: "2024",
      section: "not into the safety pan",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ condensateEndsIn }) => (condensateEndsIn === "pan" ? {} : undefined),
  examples: {
    fires: [{ name: "hose hangs in the pan", site: { condensateEndsIn: "pan" } }],
    silent: [
      { name: "to a pump", site: { condensateEndsIn: "pump" } },
      { name: "route not known", site: { hasPan: true } },
    ],
  },
});
