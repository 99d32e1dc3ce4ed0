import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "purged",
  isCritical: false,
  hazards: ["scald"],
  source: STARTUP_HABIT,
  cases: [{ name: "any house", site: {} }],
};
