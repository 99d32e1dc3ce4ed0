import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "pan_drain_small",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "504.7.1 and 504.7.2: 3/4 in, never under the pan's outlet",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "IRC", section: "P2801.6.1 and P2801.6.2", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: { drain: "dimension", limit: "dimension" },
  check: ({ panDrain_m }, code) =>
    panDrain_m !== undefined && isUnder(panDrain_m, code.limits.pan_drain.value)
      ? { drain: q("dimension", panDrain_m), limit: q("dimension", code.limits.pan_drain.value) }
      : undefined,
  examples: {
    fires: [{ name: "1/2 in drain", site: { panDrain_m: toBase(0.5, "in") } }],
    silent: [
      { name: "exactly 3/4 in", site: { panDrain_m: toBase(0.75, "in") } },
      { name: "size not known", site: { hasPanDrain: true } },
    ],
  },
});
