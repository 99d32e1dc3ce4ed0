import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "relief_discharge_ends_high",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2018",
      section: "504.6: end at most 6 in over floor or receptor",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.5: outdoors, end 6 in to 2 ft over the ground",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { end: "dimension", limit: "dimension" },
  check: ({ reliefDischargeEnd_m }, code) =>
    reliefDischargeEnd_m !== undefined && isOver(reliefDischargeEnd_m, code.limits.relief_discharge_end.value)
      ? { end: q("dimension", reliefDischargeEnd_m), limit: q("dimension", code.limits.relief_discharge_end.value) }
      : undefined,
  examples: {
    fires: [{ name: "ends 4 ft over the floor", site: { reliefDischargeEnd_m: toBase(48, "in") } }],
    silent: [
      { name: "ends 6 in over the floor", site: { reliefDischargeEnd_m: toBase(6, "in") } },
      { name: "end not measured", site: { hasReliefDischarge: true } },
    ],
  },
});
