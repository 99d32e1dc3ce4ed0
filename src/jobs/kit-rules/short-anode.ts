import { toBase } from "../../units/convert.ts";
import { type KitRule, some, TRADE } from "../kit-rule.ts";

/** A full rod must come out in one piece; from memory, the usual length of a rod. */
const FULL_ROD_m = toBase(44, "in");

export const rule: KitRule = {
  id: "short_anode",
  asks: ["headroom"],
  parts: ({ headroom_m }) =>
    headroom_m !== undefined && headroom_m < FULL_ROD_m ? [some("segmented-anode")] : undefined,
  source: TRADE,
  cases: {
    fires: [
      { name: "two feet over the unit", site: { headroom_m: toBase(24, "in") }, brings: [some("segmented-anode")] },
    ],
    silent: [{ name: "an open ceiling", site: { headroom_m: toBase(60, "in") } }],
  },
};
