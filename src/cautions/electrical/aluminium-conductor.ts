import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "aluminium_conductor",
  severity: "should",
  cites: [
    {
      basis: "from_memory",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "110.14: terminals and splices marked for aluminum",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: {},
  check: ({ conductorMetal }) => (conductorMetal === "aluminium" ? {} : undefined),
  examples: {
    fires: [{ name: "aluminum wire", site: { conductorMetal: "aluminium" } }],
    silent: [
      { name: "copper wire", site: { conductorMetal: "copper" } },
      { name: "metal not known", site: {} },
    ],
  },
});
