import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "pan_shallow",
  severity: "must",
  cites: [
    { basis: "published", document: "IPC", edition: "2021", section: "504.7.1: 1.5 in deep", checkedOn: "2026-11-25" },
    { basis: "published", document: "IRC", section: "P2801.6.1; P2801.5.1 in other copies", checkedOn: "2026-11-25" },
  ],
  decides: "authority",
  data: { depth: "dimension", limit: "dimension" },
  check: ({ panDepth_m }, code) =>
    panDepth_m !== undefined && isUnder(panDepth_m, code.limits.pan_depth.value)
      ? { depth: q("dimension", panDepth_m), limit: q("dimension", code.limits.pan_depth.value) }
      : undefined,
  examples: {
    fires: [{ name: "1 in deep", site: { panDepth_m: toBase(1, "in") } }],
    silent: [
      { name: "exactly 1.5 in deep", site: { panDepth_m: toBase(1.5, "in") } },
      { name: "depth not known", site: { hasPan: true } },
    ],
  },
});
