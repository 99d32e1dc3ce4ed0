import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { asPrinted_C, isOver } from "../compare.ts";

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
  check: ({ tap_C }, { limits }) => {
    const limit_C = Math.min(limits.tub.value, limits.shower.value);
    if (tap_C === undefined || !isOver(tap_C, asPrinted_C(limit_C))) return undefined;
    return { tap: q("temperature", tap_C), limit: q("temperature", limit_C) };
  },
  examples: {
    fires: [{ name: "125 °F at the tap", site: { tap_C: toBase(125, "F") } }],
    silent: [
      { name: "exactly 120 °F at the tap", site: { tap_C: toBase(120, "F") } },
      { name: "tap not known", site: { storage_C: toBase(140, "F") } },
    ],
  },
});
