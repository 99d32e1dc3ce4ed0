import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

/** Where the sheet does not say. */
const USUAL_m = toBase(7, "in");

export const caution = declareCaution({
  id: "air_side_too_close",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "Energy Trust of Oregon, location article",
      edition: "2016",
      section: "7 in at least for most units",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "the unit's plate and sheet decide",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: { clearance: "dimension", needed: "dimension" },
  check: ({ airClearance_m, airClearanceNeeded_m }) => {
    const needed_m = airClearanceNeeded_m ?? USUAL_m;
    return airClearance_m !== undefined && isUnder(airClearance_m, needed_m)
      ? { clearance: q("dimension", airClearance_m), needed: q("dimension", needed_m) }
      : undefined;
  },
  examples: {
    fires: [
      { name: "3 in to the wall", site: { airClearance_m: toBase(3, "in") } },
      {
        name: "8 in where the sheet asks 12",
        site: { airClearance_m: toBase(8, "in"), airClearanceNeeded_m: toBase(12, "in") },
      },
    ],
    silent: [
      { name: "exactly 7 in", site: { airClearance_m: toBase(7, "in") } },
      { name: "not measured", site: {} },
    ],
  },
});
