import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "handed_over",
  isCritical: true,
  hazards: [],
  source: { ...STARTUP_HABIT, section: "whoever lives there knows scald, filter, modes and away" },
  cases: [{ name: "any house", site: {} }],
};
