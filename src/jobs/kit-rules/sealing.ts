import { type KitRule, some, TRADE } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "sealing",
  asks: [],
  parts: () => [some("thread-seal"), some("towels")],
  source: TRADE,
  cases: { fires: [{ name: "every job", site: {}, brings: [some("thread-seal"), some("towels")] }], silent: [] },
};
