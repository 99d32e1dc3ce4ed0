import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "garage_impact",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IRC",
      section: "M1307.3.1: protected from cars; quoted on a forum",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "IRC", edition: "2021", section: "P2801.7", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ room, isImpactProtected }) => (room === "garage" && isImpactProtected !== true ? {} : undefined),
  examples: {
    fires: [
      { name: "in a garage, nothing known of a bollard", site: { room: "garage" } },
      { name: "in the path of a car", site: { room: "garage", isImpactProtected: false } },
    ],
    silent: [
      { name: "behind a bollard", site: { room: "garage", isImpactProtected: true } },
      { name: "in a basement", site: { room: "basement" } },
    ],
  },
});
