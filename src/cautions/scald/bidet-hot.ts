import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { asPrinted_C, isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "bidet_hot",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      section: "408.3: bidet, at most 110 °F; the online copy read does not say its edition",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ASSE 1070 scope",
      section: "limits the temperature to bidets, sinks and tubs",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { tap: "temperature", limit: "temperature" },
  check: ({ bidet_C }, code) =>
    bidet_C !== undefined && isOver(bidet_C, asPrinted_C(code.limits.bidet.value))
      ? { tap: q("temperature", bidet_C), limit: q("temperature", code.limits.bidet.value) }
      : undefined,
  examples: {
    fires: [{ name: "115 °F", site: { bidet_C: toBase(115, "F") } }],
    silent: [
      { name: "exactly 110 °F", site: { bidet_C: toBase(110, "F") } },
      { name: "not measured", site: { tap_C: toBase(115, "F") } },
    ],
  },
});
