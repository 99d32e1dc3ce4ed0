import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "heat_traps",
  asks: ["heat_traps"],
  parts: ({ heat_traps }) => (heat_traps === false ? [some("heat-trap", 2)] : undefined),
  source: { basis: "from_memory", document: "IECC", section: "C404.4" },
  cases: {
    fires: [{ name: "none at the ports", site: { heat_traps: false }, brings: [some("heat-trap", 2)] }],
    silent: [{ name: "from the factory", site: { heat_traps: true } }],
  },
};
