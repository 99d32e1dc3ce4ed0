import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "flammable_refrigerant",
  severity: "must",
  cites: [
    { basis: "from_memory", document: "ASHRAE 34", section: "classes A2L and A3", checkedOn: "2026-11-25" },
    {
      basis: "from_memory",
      document: "UL 60335-2-40",
      section: "room, ignition sources and marking",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ isRefrigerantFlammable }) => (isRefrigerantFlammable === true ? {} : undefined),
  examples: {
    fires: [{ name: "A3 on the plate", site: { isRefrigerantFlammable: true } }],
    silent: [
      { name: "A1 on the plate", site: { isRefrigerantFlammable: false } },
      { name: "plate not read", site: { opensRefrigerantCircuit: false } },
    ],
  },
});
