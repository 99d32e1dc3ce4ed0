import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "hot_pipe_bare",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IECC",
      edition: "2021",
      section: "R403.5.2: R-3 on 3/4 in and larger, and others",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Washington State Energy Code",
      edition: "commercial",
      section: "C404.6: first 8 ft of both pipes",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ isHotPipeInsulated }) => (isHotPipeInsulated === false ? {} : undefined),
  examples: {
    fires: [{ name: "bare copper", site: { isHotPipeInsulated: false } }],
    silent: [
      { name: "wrapped to R-3", site: { isHotPipeInsulated: true } },
      { name: "not looked at", site: { pipeMetal: "copper" } },
    ],
  },
});
