import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "asbestos_suspected",
  severity: "stop",
  cites: [
    {
      basis: "published",
      document: "NREL Standard Work Specification",
      section: "7.8102.8: suspected asbestos is left alone",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "40 CFR 61",
      edition: "subpart M",
      section: "asbestos in renovation",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ mayHoldAsbestos }) => (mayHoldAsbestos === true ? {} : undefined),
  examples: {
    fires: [{ name: "white wrap on the old vent", site: { mayHoldAsbestos: true } }],
    silent: [
      { name: "tested and clear", site: { mayHoldAsbestos: false } },
      { name: "not looked at", site: { isReplacingGas: true } },
    ],
  },
});
