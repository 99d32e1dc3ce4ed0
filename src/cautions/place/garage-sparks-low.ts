import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "garage_sparks_low",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IRC",
      edition: "2009",
      section: "M1307.3: ignition source 18 in over a garage floor; quoted on a forum",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "IMC", edition: "2021", section: "304.3", checkedOn: "2026-11-25" },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "the listing of an electric unit may allow the floor",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { limit: "dimension" },
  check: ({ room, ignitionHeight_m, isListedForGarageFloor }, code) =>
    room === "garage" &&
    isListedForGarageFloor !== true &&
    (ignitionHeight_m === undefined || isUnder(ignitionHeight_m, code.limits.ignition_height.value))
      ? { limit: q("dimension", code.limits.ignition_height.value) }
      : undefined,
  examples: {
    fires: [
      { name: "on the garage floor, listing not known", site: { room: "garage" } },
      { name: "contacts 10 in over the floor", site: { room: "garage", ignitionHeight_m: toBase(10, "in") } },
    ],
    silent: [
      { name: "contacts 18 in over the floor", site: { room: "garage", ignitionHeight_m: toBase(18, "in") } },
      { name: "listed for the floor", site: { room: "garage", isListedForGarageFloor: true } },
      { name: "in a basement", site: { room: "basement" } },
    ],
  },
});
