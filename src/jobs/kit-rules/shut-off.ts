import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "shut_off",
  asks: [],
  // A second one for the hot pipe, where none that works is there.
  parts: ({ hot_shut_off }) => [some("ball-valve", hot_shut_off === false ? 2 : 1)],
  source: { basis: "from_memory", document: "IRC", section: "P2903.9.2" },
  cases: {
    fires: [
      { name: "every job", site: {}, brings: [some("ball-valve")] },
      { name: "none in the hot pipe", site: { hot_shut_off: false }, brings: [some("ball-valve", 2)] },
    ],
    silent: [],
  },
};
