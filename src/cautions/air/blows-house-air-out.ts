import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "blows_house_air_out",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "PNNL Lab Homes",
      edition: "2015",
      section: "exhaust-only duct: 2.9 % more energy for the house",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Energy Trust of Oregon, venting safety",
      section: "exhaust outdoors can pull the house under pressure",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ exhaustsHouseAir, hasNaturalDraftAppliance }) =>
    exhaustsHouseAir === true && hasNaturalDraftAppliance !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "exhaust duct outdoors, no intake", site: { exhaustsHouseAir: true } },
      { name: "the same, no flue in the house", site: { exhaustsHouseAir: true, hasNaturalDraftAppliance: false } },
    ],
    silent: [
      { name: "balanced ducts", site: { exhaustsHouseAir: false } },
      {
        name: "a flue in the house, where the stronger caution speaks",
        site: { exhaustsHouseAir: true, hasNaturalDraftAppliance: true },
      },
      { name: "ducts not known", site: { isDucted: true } },
    ],
  },
});
