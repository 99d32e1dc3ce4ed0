import { toBase } from "../../units/convert.ts";
import { type KitRule, some, TRADE } from "../kit-rule.ts";

/** More than this is a wait that people complain of. */
const LONG_WAIT_L = toBase(0.6, "gal");

export const rule: KitRule = {
  id: "circulation",
  asks: ["loop", "wait_volume"],
  parts: ({ loop, wait_volume_L = 0 }) => {
    const isThere = loop !== undefined && loop !== "none";
    return isThere || wait_volume_L > LONG_WAIT_L ? [some("demand-pump"), some("loop-check-valve")] : undefined;
  },
  source: TRADE,
  cases: {
    fires: [
      { name: "a loop is there", site: { loop: "always_on" }, brings: [some("demand-pump"), some("loop-check-valve")] },
      { name: "a gallon runs before it is hot", site: { loop: "none", wait_volume_L: toBase(1, "gal") } },
    ],
    silent: [{ name: "half a gallon runs", site: { loop: "none", wait_volume_L: toBase(0.5, "gal") } }],
  },
};
