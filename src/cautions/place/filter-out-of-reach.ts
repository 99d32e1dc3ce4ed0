import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "filter_out_of_reach",
  severity: "should",
  cites: [
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
  check: ({ isFilterReachable }) => (isFilterReachable === false ? {} : undefined),
  examples: {
    fires: [{ name: "filter behind a pipe", site: { isFilterReachable: false } }],
    silent: [
      { name: "slides out by hand", site: { isFilterReachable: true } },
      { name: "not tried", site: { headroom_m: 0.5 } },
    ],
  },
});
