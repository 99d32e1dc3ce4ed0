import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "relief_discharge_reduced",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2018",
      section: "504.6: full size to the air gap",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.5: size of the valve outlet",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { pipe: "dimension", outlet: "dimension" },
  check: ({ reliefOutlet_m, reliefDischarge_m }) =>
    reliefDischarge_m !== undefined && reliefOutlet_m !== undefined && isUnder(reliefDischarge_m, reliefOutlet_m)
      ? { pipe: q("dimension", reliefDischarge_m), outlet: q("dimension", reliefOutlet_m) }
      : undefined,
  examples: {
    fires: [
      {
        name: "1/2 in pipe on a 3/4 in outlet",
        site: { reliefDischarge_m: toBase(0.5, "in"), reliefOutlet_m: toBase(0.75, "in") },
      },
    ],
    silent: [
      {
        name: "same size as the outlet",
        site: { reliefDischarge_m: toBase(0.75, "in"), reliefOutlet_m: toBase(0.75, "in") },
      },
      { name: "outlet not known", site: { reliefDischarge_m: toBase(0.5, "in") } },
    ],
  },
});
