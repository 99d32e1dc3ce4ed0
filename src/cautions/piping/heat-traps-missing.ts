import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "heat_traps_missing",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IECC",
      edition: "2021",
      section: "C404.4: heat traps on non-circulating tanks",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Washington State Energy Code",
      edition: "commercial",
      section: "C404.6: insulate to the heat trap or 8 ft",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ hasHeatTraps, hasCirculationLoop }) =>
    hasHeatTraps === false && hasCirculationLoop !== true ? {} : undefined,
  examples: {
    fires: [{ name: "straight risers", site: { hasHeatTraps: false } }],
    silent: [
      { name: "traps in both ports", site: { hasHeatTraps: true } },
      { name: "straight risers on a circulation loop", site: { hasHeatTraps: false, hasCirculationLoop: true } },
      { name: "not looked at", site: { isHotPipeInsulated: true } },
    ],
  },
});
