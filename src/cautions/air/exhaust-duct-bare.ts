import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "exhaust_duct_bare",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "Building America, NREL/SR-5500-64860",
      edition: "2016",
      section: "insulate the exhaust duct against sweat",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "IECC",
      edition: "2021",
      section: "R403.3: ducts outside the conditioned space",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: {},
  check: ({ hasExhaustDuct, isExhaustDuctInsulated }) =>
    hasExhaustDuct === true && isExhaustDuctInsulated === false ? {} : undefined,
  examples: {
    fires: [{ name: "bare exhaust duct", site: { hasExhaustDuct: true, isExhaustDuctInsulated: false } }],
    silent: [
      { name: "wrapped with a vapor jacket", site: { hasExhaustDuct: true, isExhaustDuctInsulated: true } },
      { name: "wrap not known", site: { hasExhaustDuct: true } },
    ],
  },
});
