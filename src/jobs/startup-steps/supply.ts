import type { StartupSite, StartupStep } from "../startup-step.ts";

/** Service voltage may be so far off, as a share. */
const BAND = 0.05;

export const step: StartupStep = {
  id: "supply",
  isCritical: true,
  hazards: ["live"],
  reading: {
    quantity: "voltage",
    min: 0,
    max: 600,
    usual: [240, 208, 120],
    accepts: (site, value) => {
      const expected = plateNear_V(site, value);
      return expected === undefined ? undefined : { low: (1 - BAND) * expected, high: (1 + BAND) * expected, expected };
    },
  },
  source: { basis: "from_memory", document: "ANSI C84.1", section: "service voltage within 5 %" },
  cases: [
    { name: "238 V where 240 V is planned", site: { supply_V: 240 }, reading: 238, isAccepted: true },
    { name: "208 V where 240 V is planned", site: { supply_V: 240 }, reading: 208, isAccepted: false },
    { name: "228 V where 240 V is planned, 5 % low", site: { supply_V: 240 }, reading: 228, isAccepted: true },
    { name: "nobody knows the plate", site: {}, reading: 240 },
  ],
};

/** What was planned; else the supply of the plate that is nearest. */
function plateNear_V({ supply_V, unit }: StartupSite, value: number): number | undefined {
  if (supply_V !== undefined) return supply_V;
  const [nearest] = [...(unit?.circuit.supplies_V ?? [])].sort((a, b) => Math.abs(a - value) - Math.abs(b - value));
  return nearest;
}
