import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "controls_set",
  isCritical: false,
  hazards: [],
  source: STARTUP_HABIT,
  cases: [{ name: "any house", site: {} }],
};
