import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";

const FIRST_RUN_m = toBase(8, "ft");

export const rule: KitRule = {
  id: "pipe_insulation",
  asks: [],
  parts: ({ hot_length_m = 0 }) => [some("pipe-insulation", Math.max(FIRST_RUN_m, hot_length_m))],
  source: { basis: "published", document: "Washington Energy Code", section: "C404: first 8 ft" },
  cases: {
    fires: [
      { name: "every job", site: {}, brings: [some("pipe-insulation", toBase(8, "ft"))] },
      {
        name: "30 ft can be reached",
        site: { hot_length_m: toBase(30, "ft") },
        brings: [some("pipe-insulation", toBase(30, "ft"))],
      },
    ],
    silent: [],
  },
};
