import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "filled",
  isCritical: true,
  hazards: [],
  source: { ...STARTUP_HABIT, section: "water before power: an element that runs dry burns out and may arc" },
  cases: [{ name: "any house", site: {} }],
};
