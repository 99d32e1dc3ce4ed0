import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "permit_missing",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "R105.1: permit required",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "TECH initiative, desktop review",
      section: "permit numbers spot-checked",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ hasPermit }) => (hasPermit === false ? {} : undefined),
  examples: {
    fires: [{ name: "no permit pulled", site: { hasPermit: false } }],
    silent: [
      { name: "permit number on the job", site: { hasPermit: true } },
      { name: "not known", site: { work: "survey" } },
    ],
  },
});
