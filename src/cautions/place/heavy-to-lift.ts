import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Most for one person under the best conditions. */
const ONE_PERSON_kg = toBase(51, "lb");

export const caution = declareCaution({
  id: "heavy_to_lift",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "NIOSH lifting equation, as OSHA tells it",
      edition: "1994",
      section: "51 lb for one person under the best conditions",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { unit: "mass", person: "mass" },
  check: ({ unitMass_kg, hasLiftingGear }) =>
    unitMass_kg !== undefined && hasLiftingGear !== true && isOver(unitMass_kg, ONE_PERSON_kg)
      ? { unit: q("mass", unitMass_kg), person: q("mass", ONE_PERSON_kg) }
      : undefined,
  examples: {
    fires: [{ name: "220 lb", site: { unitMass_kg: toBase(220, "lb") } }],
    silent: [
      { name: "220 lb with a stair climber", site: { unitMass_kg: toBase(220, "lb"), hasLiftingGear: true } },
      { name: "40 lb", site: { unitMass_kg: toBase(40, "lb") } },
      { name: "mass not known", site: {} },
    ],
  },
});
