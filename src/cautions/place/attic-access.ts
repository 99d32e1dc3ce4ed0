import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "attic_access",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IRC",
      edition: "2009",
      section: "M1305.1.3: opening, solid walkway and level space in attics; the section has moved since",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "M1305.1.2.1: light and outlet",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "UPC", edition: "2021", section: "508.4: attic access", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: {},
  check: ({ room, hasSafeAccess }) => (room === "attic" && hasSafeAccess !== true ? {} : undefined),
  examples: {
    fires: [
      { name: "attic, way not known", site: { room: "attic" } },
      { name: "attic, no walkway", site: { room: "attic", hasSafeAccess: false } },
    ],
    silent: [
      { name: "attic with walkway and light", site: { room: "attic", hasSafeAccess: true } },
      { name: "basement", site: { room: "basement" } },
    ],
  },
});
