import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "closed_without_expansion_control",
  severity: "must",
  cites: [
    { basis: "published", document: "IPC", edition: "2021", section: "607.3", checkedOn: "2026-11-25" },
    { basis: "published", document: "UPC", edition: "2018", section: "608.3", checkedOn: "2026-11-25" },
    { basis: "from_memory", document: "IRC", edition: "2021", section: "P2903.4", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ isClosedSystem, hasExpansionTank }) =>
    isClosedSystem === true && hasExpansionTank === false ? {} : undefined,
  examples: {
    fires: [{ name: "closed, no expansion tank", site: { isClosedSystem: true, hasExpansionTank: false } }],
    silent: [
      { name: "closed with an expansion tank", site: { isClosedSystem: true, hasExpansionTank: true } },
      { name: "open, no expansion tank", site: { isClosedSystem: false, hasExpansionTank: false } },
      { name: "closed, expansion tank not known", site: { isClosedSystem: true } },
      { name: "system not known", site: { hasExpansionTank: false } },
    ],
  },
});
