import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "crawl_space_access",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IRC",
      edition: "2021",
      section: "M1305.1.3: passage, level space, light and outlet under floors; unit off the ground",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ room, hasSafeAccess }) => (room === "crawl_space" && hasSafeAccess !== true ? {} : undefined),
  examples: {
    fires: [
      { name: "crawl space, way not known", site: { room: "crawl_space" } },
      { name: "crawl space, blocked", site: { room: "crawl_space", hasSafeAccess: false } },
    ],
    silent: [
      { name: "crawl space with a clear way", site: { room: "crawl_space", hasSafeAccess: true } },
      { name: "closet", site: { room: "closet" } },
    ],
  },
});
