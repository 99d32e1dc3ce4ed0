import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "no_headroom_for_anode",
  severity: "should",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "anode and filter come out upwards; the unit's sheet says how far",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: { headroom: "dimension", needed: "dimension" },
  check: ({ headroom_m, headroomNeeded_m }) =>
    headroom_m !== undefined && headroomNeeded_m !== undefined && isUnder(headroom_m, headroomNeeded_m)
      ? { headroom: q("dimension", headroom_m), needed: q("dimension", headroomNeeded_m) }
      : undefined,
  examples: {
    fires: [
      {
        name: "6 in where 20 in are needed",
        site: { headroom_m: toBase(6, "in"), headroomNeeded_m: toBase(20, "in") },
      },
    ],
    silent: [
      { name: "just enough", site: { headroom_m: toBase(20, "in"), headroomNeeded_m: toBase(20, "in") } },
      { name: "need not known", site: { headroom_m: toBase(6, "in") } },
    ],
  },
});
