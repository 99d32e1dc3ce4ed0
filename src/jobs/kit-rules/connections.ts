import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "connections",
  asks: [],
  parts: () => [some("flexible-connector", 2), some("dielectric-nipple", 2)],
  source: TRADE,
  cases: {
    fires: [{ name: "every job", site: {}, brings: [some("flexible-connector", 2), some("dielectric-nipple", 2)] }],
    silent: [],
  },
};
