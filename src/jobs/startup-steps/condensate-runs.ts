import { STARTUP_HABIT, type StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "condensate_runs",
  isCritical: false,
  hazards: [],
  source: { ...STARTUP_HABIT, section: "a cup of water poured into the drain pan comes out at the end" },
  cases: [{ name: "any house", site: {} }],
};
