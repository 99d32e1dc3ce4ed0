import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

/** Hot pipe to cold pipe to tank to ground. */
const MOST_ohm = 1;

export const step: StartupStep = {
  id: "bond",
  isCritical: true,
  hazards: ["lockout"],
  reading: {
    quantity: "resistance",
    min: 0,
    max: 1e9,
    usual: [0.1, 0.3],
    accepts: () => ({ low: 0, high: MOST_ohm }),
  },
  source: { ...STARTUP_HABIT, section: "under 1 ohm hot to cold to tank to ground" },
  cases: [
    { name: "0.3 ohm", site: {}, reading: 0.3, isAccepted: true },
    { name: "dielectric unions, 2 kΩ across", site: {}, reading: 2000, isAccepted: false },
  ],
};
