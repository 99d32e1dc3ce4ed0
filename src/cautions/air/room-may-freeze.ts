import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "room_may_freeze",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR, Considerations for heat pump water heaters",
      section: "a space that does not freeze",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.5: relief pipe not where it freezes",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { low: "temperature" },
  check: ({ roomLow_C }) =>
    roomLow_C !== undefined && !isOver(roomLow_C, 0) ? { low: q("temperature", roomLow_C) } : undefined,
  examples: {
    fires: [
      { name: "20 °F in winter", site: { roomLow_C: toBase(20, "F") } },
      { name: "exactly 32 °F", site: { roomLow_C: 0 } },
    ],
    silent: [
      { name: "40 °F at the lowest", site: { roomLow_C: toBase(40, "F") } },
      { name: "lowest not known", site: { room: "garage" } },
    ],
  },
});
