import { toBase } from "../../units/convert.ts";
import { type KitRule, some, withCutting_m } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "relief_discharge",
  asks: ["discharge_length"],
  parts: ({ discharge_length_m: run_m }) =>
    run_m === undefined || run_m === 0
      ? undefined
      : [some("discharge-pipe", withCutting_m(run_m)), some("discharge-elbow", 2), some("pipe-strap", 2)],
  source: { basis: "published", document: "IPC", edition: "2021", section: "504.6" },
  cases: {
    fires: [
      {
        name: "ten feet to the floor drain",
        site: { discharge_length_m: toBase(10, "ft") },
        brings: [some("discharge-pipe", toBase(11, "ft")), some("discharge-elbow", 2), some("pipe-strap", 2)],
      },
    ],
    silent: [{ name: "the old pipe stays", site: { discharge_length_m: 0 } }],
  },
};
