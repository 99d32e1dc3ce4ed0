import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "expansion_tank_cut_off",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "607.3: downstream of every check valve, regulator and backflow preventer",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ isExpansionTankOnHeaterSide }) => (isExpansionTankOnHeaterSide === false ? {} : undefined),
  examples: {
    fires: [
      {
        name: "check valve between heater and expansion tank",
        site: { hasExpansionTank: true, isExpansionTankOnHeaterSide: false },
      },
    ],
    silent: [
      { name: "tank on the heater's side", site: { hasExpansionTank: true, isExpansionTankOnHeaterSide: true } },
      { name: "place of the tank not known", site: { hasExpansionTank: true } },
    ],
  },
});
