import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "drain_pan",
  asks: ["leak_harms", "pan"],
  parts: ({ leak_harms, pan }) =>
    leak_harms === true && (pan === undefined || pan === "none") ? [some("drain-pan")] : undefined,
  source: { basis: "published", document: "IPC", edition: "2021", section: "504.7" },
  cases: {
    fires: [
      { name: "upstairs over a finished ceiling", site: { leak_harms: true }, brings: [some("drain-pan")] },
      { name: "no pan is there", site: { leak_harms: true, pan: "none" }, brings: [some("drain-pan")] },
    ],
    silent: [
      { name: "a bare concrete basement", site: { leak_harms: false, pan: "none" } },
      { name: "a pan is there", site: { leak_harms: true, pan: "drained" } },
    ],
  },
};
