import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "condensate_joined_to_sewer",
  severity: "must",
  cites: [
    { basis: "published", document: "UPC", section: "814: indirect waste", checkedOn: "2026-11-25" },
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "802.1: indirect waste through an air gap or break",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ condensateEndsIn }) => (condensateEndsIn === "drain_direct" ? {} : undefined),
  examples: {
    fires: [{ name: "glued into the sewer line", site: { condensateEndsIn: "drain_direct" } }],
    silent: [
      { name: "over a floor drain", site: { condensateEndsIn: "drain_with_air_gap" } },
      { name: "route not known", site: { hasPanDrain: true } },
    ],
  },
});
