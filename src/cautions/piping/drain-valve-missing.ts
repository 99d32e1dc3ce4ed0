import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "drain_valve_missing",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "501.3: means to drain the tank",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ hasDrainValve }) => (hasDrainValve === false ? {} : undefined),
  examples: {
    fires: [{ name: "no drain valve", site: { hasDrainValve: false } }],
    silent: [
      { name: "drain valve with a hose thread", site: { hasDrainValve: true } },
      { name: "not looked for", site: { hasShutOff: true } },
    ],
  },
});
