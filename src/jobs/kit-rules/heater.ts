import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "heater",
  asks: [],
  parts: () => [some("heater")],
  source: TRADE,
  isOrdered: true,
  cases: { fires: [{ name: "every job", site: {}, brings: [some("heater")] }], silent: [] },
};
