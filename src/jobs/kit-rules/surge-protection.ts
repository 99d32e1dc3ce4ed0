import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "surge_protection",
  asks: ["surges"],
  parts: ({ surges }) => (surges === true ? [some("surge-protector")] : undefined),
  source: TRADE,
  cases: {
    fires: [{ name: "storms took a board there", site: { surges: true }, brings: [some("surge-protector")] }],
    silent: [{ name: "a calm grid", site: { surges: false } }],
  },
};
