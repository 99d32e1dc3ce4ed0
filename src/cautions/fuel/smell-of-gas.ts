import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "smell_of_gas",
  severity: "stop",
  cites: [
    {
      basis: "from_memory",
      document: "NFPA 54",
      edition: "2021",
      section: "leaks: leave, call the gas supplier from outside",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ smellsOfGas }) => (smellsOfGas === true ? {} : undefined),
  examples: {
    fires: [{ name: "smell of gas", site: { smellsOfGas: true } }],
    silent: [
      { name: "no smell", site: { smellsOfGas: false } },
      { name: "nobody said", site: { isReplacingGas: true } },
    ],
  },
});
