import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "breaker_not_listed",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "110.3(B): used as listed and labeled",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: {},
  check: ({ isBreakerListed }) => (isBreakerListed === false ? {} : undefined),
  examples: {
    fires: [{ name: "another maker's breaker in the panel", site: { isBreakerListed: false } }],
    silent: [
      { name: "on the panel's label", site: { isBreakerListed: true } },
      { name: "label not read", site: { breaker_A: 30 } },
    ],
  },
});
