import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "shut_off_missing",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "P2903.9.2: full-open valve on the cold supply",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "UPC", edition: "2021", section: "606.2", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ hasShutOff }) => (hasShutOff === false ? {} : undefined),
  examples: {
    fires: [{ name: "no valve in the cold line", site: { hasShutOff: false } }],
    silent: [
      { name: "full-port valve in the cold line", site: { hasShutOff: true } },
      { name: "not looked for", site: { hasDrainValve: true } },
    ],
  },
});
