import { declareCaution } from "../caution.ts";

export const caution = declareCaution({
  id: "outdoor_lines_may_freeze",
  severity: "must",
  cites: [
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "heat trace or drain-back, drain valves, and the unit above the snow",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: {},
  check: ({ hasOutdoorWaterLines, areOutdoorLinesProtected }) =>
    hasOutdoorWaterLines === true && areOutdoorLinesProtected !== true ? {} : undefined,
  examples: {
    fires: [
      { name: "water lines outdoors, nothing known", site: { hasOutdoorWaterLines: true } },
      { name: "water lines outdoors, bare", site: { hasOutdoorWaterLines: true, areOutdoorLinesProtected: false } },
    ],
    silent: [
      {
        name: "insulated, heat-traced and drainable",
        site: { hasOutdoorWaterLines: true, areOutdoorLinesProtected: true },
      },
      { name: "no water outdoors", site: { hasOutdoorWaterLines: false } },
    ],
  },
});
