import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "working_space_tight",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      section:
        "110.26(A): 3 ft deep, 30 in wide; read in the trade press; whether it binds at a plain heater disconnect is disputed, at a panel not",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { depth: "length", width: "dimension" },
  check: ({ workingDepth_m, workingWidth_m }, code) =>
    (workingDepth_m !== undefined && isUnder(workingDepth_m, code.limits.working_depth.value)) ||
    (workingWidth_m !== undefined && isUnder(workingWidth_m, code.limits.working_width.value))
      ? { depth: q("length", code.limits.working_depth.value), width: q("dimension", code.limits.working_width.value) }
      : undefined,
  examples: {
    fires: [
      { name: "2 ft before the panel", site: { workingDepth_m: toBase(2, "ft") } },
      { name: "24 in wide", site: { workingWidth_m: toBase(24, "in") } },
    ],
    silent: [
      { name: "3 ft deep and 30 in wide", site: { workingDepth_m: toBase(3, "ft"), workingWidth_m: toBase(30, "in") } },
      { name: "not measured", site: { work: "wiring" } },
    ],
  },
});
