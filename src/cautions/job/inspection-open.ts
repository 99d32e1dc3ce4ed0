import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "inspection_open",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "R109 and R110: inspections; work stays uncovered until seen",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ work, hasPermit, isInspected }) =>
    isInspected === false && (hasPermit === true || work === "hand_over") ? {} : undefined,
  examples: {
    fires: [
      { name: "handing over before inspection", site: { work: "hand_over", isInspected: false } },
      { name: "permit open", site: { hasPermit: true, isInspected: false } },
    ],
    silent: [
      { name: "signed", site: { work: "hand_over", isInspected: true } },
      { name: "not known", site: { hasPermit: true } },
    ],
  },
});
