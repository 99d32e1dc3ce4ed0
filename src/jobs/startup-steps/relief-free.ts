import type { StartupStep } from "../startup-step.ts";

export const step: StartupStep = {
  id: "relief_free",
  isCritical: true,
  hazards: ["scald", "pressure"],
  source: { basis: "published", document: "IPC", edition: "2021", section: "504.6: discharge pipe" },
  cases: [{ name: "any house", site: {} }],
};
