import { toBase } from "../../units/convert.ts";
import { type KitRule, STICK_m, some, withCutting_m } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "condensate_line",
  asks: ["condensate_length"],
  parts: ({ unit, condensate_length_m }) => {
    // A split unit drips outdoors, and elements alone take no water from the air.
    if (unit?.kind === "split" || unit?.kind === "resistance" || condensate_length_m === 0) return undefined;
    const pipe_m = condensate_length_m === undefined ? STICK_m : withCutting_m(condensate_length_m);
    return [some("condensate-pipe", pipe_m), some("condensate-trap"), some("condensate-tee")];
  },
  source: { basis: "published", document: "IPC", edition: "2021", section: "314.2" },
  cases: {
    fires: [
      {
        name: "nobody measured it: a stick of pipe",
        site: {},
        brings: [some("condensate-pipe", STICK_m), some("condensate-trap"), some("condensate-tee")],
      },
      {
        name: "thirty feet",
        site: { condensate_length_m: toBase(30, "ft") },
        brings: [some("condensate-pipe", toBase(33, "ft")), some("condensate-trap"), some("condensate-tee")],
      },
    ],
    silent: [{ name: "the line is there", site: { condensate_length_m: 0 } }],
  },
};
