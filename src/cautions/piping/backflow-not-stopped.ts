import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "backflow_not_stopped",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "608: protection of potable water",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "UPC",
      edition: "2021",
      section: "603: cross connections",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: {},
  check: ({ isJoinedToOtherWater, hasBackflowPreventer }) =>
    isJoinedToOtherWater === true && hasBackflowPreventer !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "joined to a heating loop, preventer not known", site: { isJoinedToOtherWater: true } },
      { name: "joined to a heating loop, none", site: { isJoinedToOtherWater: true, hasBackflowPreventer: false } },
    ],
    silent: [
      { name: "preventer in place", site: { isJoinedToOtherWater: true, hasBackflowPreventer: true } },
      { name: "drinking water only", site: { isJoinedToOtherWater: false } },
    ],
  },
});
