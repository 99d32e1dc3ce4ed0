import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "loop_always_on",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "EPA WaterSense hot water delivery",
      section: "recirculation starts on demand",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "IECC",
      edition: "2021",
      section: "R403.5.1: automatic controls on circulation",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ loopControl }) => (loopControl === "always_on" ? {} : undefined),
  examples: {
    fires: [{ name: "pump plugged in day and night", site: { hasCirculationLoop: true, loopControl: "always_on" } }],
    silent: [
      { name: "button or sensor starts it", site: { hasCirculationLoop: true, loopControl: "demand" } },
      { name: "control not known", site: { hasCirculationLoop: true } },
    ],
  },
});
