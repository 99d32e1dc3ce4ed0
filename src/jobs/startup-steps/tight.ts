import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "tight",
  isCritical: true,
  hazards: ["pressure"],
  source: STARTUP_HABIT,
  cases: [{ name: "any house", site: {} }],
};
