import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Highest temperature at a tub or shower. IPC 2021, 412.5. */
const LIMIT_C = toBase(120, "F");
/** The codes print 120 °F (49 °C): the rounder of the two counts as over, so that 49 °C typed in SI is met. */
const OVER_C = 49;

export const caution = declareCaution({
  id: "tap_above_limit",
  severity: "must",
  cites: [
    { basis: "published", document: "IPC", edition: "2021", section: "412.5: 120 °F at tubs", checkedOn: "2026-11-25" },
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "412.3: 120 °F limit stop at showers",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "UPC",
      edition: "2021",
      section: "408.3, 409.4: 120 °F",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { tap: "temperature", limit: "temperature" },
  check: ({ tap_C }) =>
    tap_C !== undefined && isOver(tap_C, OVER_C)
      ? { tap: q("temperature", tap_C), limit: q("temperature", LIMIT_C) }
      : undefined,
  examples: {
    fires: [{ name: "125 °F at the tap", site: { tap_C: toBase(125, "F") } }],
    silent: [
      { name: "exactly 120 °F at the tap", site: { tap_C: toBase(120, "F") } },
      { name: "tap not known", site: { storage_C: toBase(140, "F") } },
    ],
  },
});
