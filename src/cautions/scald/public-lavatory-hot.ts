import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { asPrinted_C, isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "public_lavatory_hot",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "607.1.2: tempered water, at most 110 °F",
      checkedOn: "2026-11-25",
    },
    { basis: "from_memory", document: "UPC", edition: "2021", section: "407.3: 110 °F", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: { tap: "temperature", limit: "temperature" },
  check: ({ publicLavatory_C }, code) =>
    publicLavatory_C !== undefined && isOver(publicLavatory_C, asPrinted_C(code.limits.public_lavatory.value))
      ? { tap: q("temperature", publicLavatory_C), limit: q("temperature", code.limits.public_lavatory.value) }
      : undefined,
  examples: {
    fires: [{ name: "118 °F", site: { publicLavatory_C: toBase(118, "F") } }],
    silent: [
      { name: "exactly 110 °F", site: { publicLavatory_C: toBase(110, "F") } },
      { name: "not measured", site: { tap_C: toBase(110, "F") } },
    ],
  },
});
