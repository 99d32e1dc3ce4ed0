import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "floor_overloaded",
  severity: "must",
  cites: [
    { basis: "computed", document: "Water at 8.34 lb a gallon, and the unit's own mass", checkedOn: "2026-11-25" },
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "Table R301.5: floor loads",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { filled: "mass", allowed: "mass" },
  check: ({ filledMass_kg, floorAllows_kg }) =>
    filledMass_kg !== undefined && floorAllows_kg !== undefined && isOver(filledMass_kg, floorAllows_kg)
      ? { filled: q("mass", filledMass_kg), allowed: q("mass", floorAllows_kg) }
      : undefined,
  examples: {
    fires: [
      {
        name: "950 lb where 800 lb are allowed",
        site: { filledMass_kg: toBase(950, "lb"), floorAllows_kg: toBase(800, "lb") },
      },
    ],
    silent: [
      {
        name: "exactly what is allowed",
        site: { filledMass_kg: toBase(800, "lb"), floorAllows_kg: toBase(800, "lb") },
      },
      { name: "allowance not known", site: { filledMass_kg: toBase(950, "lb"), floor: "concrete" } },
    ],
  },
});
