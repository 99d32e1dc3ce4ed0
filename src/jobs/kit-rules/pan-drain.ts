import { toBase } from "../../units/convert.ts";
import { type KitRule, some, withCutting_m } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "pan_drain",
  asks: ["pan_drain_length"],
  parts: ({ pan_drain_length_m: run_m }) =>
    run_m === undefined || run_m === 0
      ? undefined
      : [some("pan-drain-pipe", withCutting_m(run_m)), some("pan-drain-fitting")],
  source: { basis: "published", document: "IPC", edition: "2021", section: "504.7.1: 3/4 in. at least" },
  cases: {
    fires: [
      {
        name: "twenty feet to the drain",
        site: { pan: "no_drain", pan_drain_length_m: toBase(20, "ft") },
        brings: [some("pan-drain-pipe", toBase(22, "ft")), some("pan-drain-fitting")],
      },
    ],
    silent: [{ name: "no run was measured", site: { pan: "no_drain" } }],
  },
};
