import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "air_clear",
  isCritical: false,
  hazards: [],
  source: STARTUP_HABIT,
  cases: [{ name: "any house", site: {} }],
};
