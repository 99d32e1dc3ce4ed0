import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "relief_as_expansion_control",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "Municipal plumbing code adopting ANSI Z21.22",
      section: "relief valve not used to control expansion",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "IPC", edition: "2021", section: "607.3", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ expandsThroughRelief }) => (expandsThroughRelief === true ? {} : undefined),
  examples: {
    fires: [{ name: "relief valve drips at every heating", site: { expandsThroughRelief: true } }],
    silent: [
      { name: "relief valve stays shut", site: { expandsThroughRelief: false } },
      { name: "not known", site: { isClosedSystem: true } },
    ],
  },
});
