import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "gas_line_to_cap",
  severity: "must",
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
  check: ({ isReplacingGas, isGasLineCapped }) =>
    isReplacingGas === true && isGasLineCapped === undefined ? {} : undefined,
  examples: {
    fires: [{ name: "a gas heater comes out", site: { isReplacingGas: true } }],
    silent: [
      { name: "cap already tested", site: { isReplacingGas: true, isGasLineCapped: true } },
      { name: "an electric heater comes out", site: { isReplacingGas: false } },
    ],
  },
});
