import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "doorway_too_narrow",
  severity: "should",
  cites: [
    { basis: "computed", document: "Width of the unit against the narrowest passage", checkedOn: "2026-11-25" },
    {
      basis: "published",
      document: "Slipstream, Midwest 120 V study",
      section: "be ready to alter doors",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { unit: "dimension", passage: "dimension" },
  check: ({ unitWidth_m, narrowestPassage_m }) =>
    unitWidth_m !== undefined && narrowestPassage_m !== undefined && isOver(unitWidth_m, narrowestPassage_m)
      ? { unit: q("dimension", unitWidth_m), passage: q("dimension", narrowestPassage_m) }
      : undefined,
  examples: {
    fires: [
      { name: "27 in unit, 25 in door", site: { unitWidth_m: toBase(27, "in"), narrowestPassage_m: toBase(25, "in") } },
    ],
    silent: [
      { name: "24 in unit, 25 in door", site: { unitWidth_m: toBase(24, "in"), narrowestPassage_m: toBase(25, "in") } },
      { name: "door not measured", site: { unitWidth_m: toBase(27, "in") } },
    ],
  },
});
