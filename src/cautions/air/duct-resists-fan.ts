import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "duct_resists_fan",
  severity: "should",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "the sheet of the unit says what its fan can push",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NREL/SR-5500-64860",
      edition: "2016",
      section: "ducts of 8 in or more for the units studied",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: { drop: "air_pressure", allowed: "air_pressure" },
  check: ({ ductDrop_Pa, ductDropAllowed_Pa }) =>
    ductDrop_Pa !== undefined && ductDropAllowed_Pa !== undefined && isOver(ductDrop_Pa, ductDropAllowed_Pa)
      ? { drop: q("air_pressure", ductDrop_Pa), allowed: q("air_pressure", ductDropAllowed_Pa) }
      : undefined,
  examples: {
    fires: [{ name: "60 Pa where 37 Pa are allowed", site: { ductDrop_Pa: 60, ductDropAllowed_Pa: 37 } }],
    silent: [
      { name: "exactly what is allowed", site: { ductDrop_Pa: 37, ductDropAllowed_Pa: 37 } },
      { name: "fan not known", site: { ductDrop_Pa: 60 } },
    ],
  },
});
