import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "condensate_pump_without_float",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "UPC",
      edition: "2024",
      section: "814.2: pump interlocked with the appliance",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "IMC",
      edition: "North Carolina text",
      section: "307: high-level switch stops the unit",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ condensateEndsIn, isPumpFloatWired }) =>
    condensateEndsIn === "pump" && isPumpFloatWired === false ? {} : undefined,
  examples: {
    fires: [{ name: "float wires left loose", site: { condensateEndsIn: "pump", isPumpFloatWired: false } }],
    silent: [
      { name: "float stops the unit", site: { condensateEndsIn: "pump", isPumpFloatWired: true } },
      { name: "float not known", site: { condensateEndsIn: "pump" } },
    ],
  },
});
