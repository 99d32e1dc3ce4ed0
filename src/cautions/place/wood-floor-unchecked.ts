import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "wood_floor_unchecked",
  severity: "should",
  cites: [
    { basis: "computed", document: "Water at 8.34 lb a gallon, and the unit's own mass", checkedOn: "2026-11-25" },
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "R301 and M1307: support",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { filled: "mass" },
  check: ({ filledMass_kg, floorAllows_kg, floor }) =>
    filledMass_kg !== undefined && floorAllows_kg === undefined && floor === "wood"
      ? { filled: q("mass", filledMass_kg) }
      : undefined,
  examples: {
    fires: [{ name: "900 lb on a wood floor", site: { filledMass_kg: toBase(900, "lb"), floor: "wood" } }],
    silent: [
      { name: "on concrete", site: { filledMass_kg: toBase(900, "lb"), floor: "concrete" } },
      {
        name: "allowance known",
        site: { filledMass_kg: toBase(700, "lb"), floor: "wood", floorAllows_kg: toBase(800, "lb") },
      },
      { name: "floor not known", site: { filledMass_kg: toBase(700, "lb") } },
    ],
  },
});
