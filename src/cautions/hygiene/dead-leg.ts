import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "dead_leg",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "Rhoads et al., Microbiome",
      edition: "2015",
      section: "little-used taps hold more Legionella than busy ones",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "ASHRAE Guideline 12",
      edition: "2020",
      section: "no dead legs",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ hasDeadLeg }) => (hasDeadLeg === true ? {} : undefined),
  examples: {
    fires: [{ name: "capped branch left on the hot line", site: { hasDeadLeg: true } }],
    silent: [
      { name: "no unused branch", site: { hasDeadLeg: false } },
      { name: "pipes not looked at", site: { hasCirculationLoop: true } },
    ],
  },
});
