import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "flue_left_alone",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "NFPA 54",
      edition: "2021",
      section: "chapter 13: vent sized for what stays on it",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NREL Standard Work Specification",
      section: "7.8102.8: unused chimney openings sealed",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ isReplacingGas, sharesFlue }) => (isReplacingGas === true && sharesFlue === true ? {} : undefined),
  examples: {
    fires: [{ name: "furnace stays on the shared flue", site: { isReplacingGas: true, sharesFlue: true } }],
    silent: [
      { name: "flue served the old heater only", site: { isReplacingGas: true, sharesFlue: false } },
      { name: "flue not looked at", site: { isReplacingGas: true } },
    ],
  },
});
