import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "opens_circuit_without_card",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "40 CFR 82",
      edition: "subpart F",
      section: "82.161: who opens the circuit is certified",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Trade summary of 40 CFR 82 subpart F",
      section: "attaching gauges counts",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ work, opensRefrigerantCircuit, holdsRefrigerantCard }) =>
    (opensRefrigerantCircuit === true || work === "refrigerant_circuit") && holdsRefrigerantCard !== true
      ? {}
      : undefined,
  examples: {
    fires: [
      { name: "gauges go on, card not known", site: { opensRefrigerantCircuit: true } },
      { name: "refrigerant work, no card", site: { work: "refrigerant_circuit", holdsRefrigerantCard: false } },
    ],
    silent: [
      { name: "certified", site: { opensRefrigerantCircuit: true, holdsRefrigerantCard: true } },
      { name: "circuit stays shut", site: { opensRefrigerantCircuit: false } },
    ],
  },
});
