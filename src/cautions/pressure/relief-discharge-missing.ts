import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "relief_discharge_missing",
  severity: "stop",
  cites: [
    { basis: "published", document: "IPC", edition: "2018", section: "504.6", checkedOn: "2026-11-25" },
    { basis: "published", document: "UPC", edition: "2015", section: "608.5", checkedOn: "2026-11-25" },
    { basis: "from_memory", document: "IRC", edition: "2021", section: "P2804.6.1", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ hasReliefDischarge }) => (hasReliefDischarge === false ? {} : undefined),
  examples: {
    fires: [{ name: "no pipe on the relief valve", site: { hasReliefDischarge: false } }],
    silent: [
      { name: "pipe in place", site: { hasReliefDischarge: true } },
      { name: "pipe not known", site: { hasReliefValve: true } },
    ],
  },
});
