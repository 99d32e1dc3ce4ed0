import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "well_water_untested",
  severity: "should",
  cites: [
    {
      basis: "from_memory",
      document: "CDC, private wells",
      section: "test every year for bacteria",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "AWWA Opflow",
      edition: "1990",
      section: "sulfate, bacteria and a corroding metal make the rotten-egg smell",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: {},
  check: ({ isOnWell }) => (isOnWell === true ? {} : undefined),
  examples: {
    fires: [{ name: "private well", site: { isOnWell: true } }],
    silent: [
      { name: "street water", site: { isOnWell: false } },
      { name: "not known", site: { hardness: "hard" } },
    ],
  },
});
