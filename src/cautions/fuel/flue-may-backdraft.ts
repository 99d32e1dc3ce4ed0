import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

const MOST_Pa = 2;

export const caution = declareCaution({
  id: "flue_may_backdraft",
  severity: "stop",
  cites: [
    {
      basis: "published",
      document: "Energy Trust of Oregon, venting safety",
      section: "exhaust outdoors may upset natural draft",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Building America Solution Center, depressurization",
      section: "exhaust flow, house leakage and pressure",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "Building Performance Institute limits",
      section: "2 Pa for a natural draft water heater",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ exhaustsHouseAir, housePressureBelow_Pa, hasNaturalDraftAppliance }) =>
    hasNaturalDraftAppliance === true &&
    (exhaustsHouseAir === true || (housePressureBelow_Pa !== undefined && isOver(housePressureBelow_Pa, MOST_Pa)))
      ? {}
      : undefined,
  examples: {
    fires: [
      {
        name: "exhaust duct and a natural draft boiler",
        site: { hasNaturalDraftAppliance: true, exhaustsHouseAir: true },
      },
      {
        name: "house 4 Pa low with a natural draft boiler",
        site: { hasNaturalDraftAppliance: true, housePressureBelow_Pa: 4 },
      },
    ],
    silent: [
      { name: "house 2 Pa low", site: { hasNaturalDraftAppliance: true, housePressureBelow_Pa: 2 } },
      {
        name: "exhaust duct, nothing burns in the house",
        site: { hasNaturalDraftAppliance: false, exhaustsHouseAir: true },
      },
      { name: "flue in the house, no duct", site: { hasNaturalDraftAppliance: true, exhaustsHouseAir: false } },
      { name: "ducts not known", site: { hasNaturalDraftAppliance: true } },
    ],
  },
});
