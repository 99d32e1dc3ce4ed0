import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "relief_discharge_can_block",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2018",
      section: "504.6: no trap, valve, tee or thread at the end; by gravity",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.5: not trapped, not where it freezes",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ canReliefDischargeBlock }) => (canReliefDischargeBlock === true ? {} : undefined),
  examples: {
    fires: [{ name: "pipe rises before it falls", site: { canReliefDischargeBlock: true } }],
    silent: [
      { name: "falls all the way, plain end", site: { canReliefDischargeBlock: false } },
      { name: "pipe not looked at", site: { hasReliefDischarge: true } },
    ],
  },
});
