import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "gas_line_open",
  severity: "stop",
  cites: [
    {
      basis: "from_memory",
      document: "IFGC",
      edition: "2021",
      section: "404 and 406: outlets capped gastight, leak test",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NREL Standard Work Specification",
      section: "7.8102.8: abandoned fuel cut off at its source",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ isGasLineCapped }) => (isGasLineCapped === false ? {} : undefined),
  examples: {
    fires: [{ name: "line ends in an uncapped valve", site: { isReplacingGas: true, isGasLineCapped: false } }],
    silent: [
      { name: "capped and tested", site: { isReplacingGas: true, isGasLineCapped: true } },
      { name: "no gas there", site: { isReplacingGas: false } },
    ],
  },
});
