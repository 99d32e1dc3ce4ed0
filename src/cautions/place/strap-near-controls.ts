import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "strap_near_controls",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "UPC",
      edition: "city copies",
      section: "507.2 (older 510.5): lower strap 4 in above the controls",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { gap: "dimension", limit: "dimension" },
  check: ({ strapAboveControls_m }, code) =>
    strapAboveControls_m !== undefined && isUnder(strapAboveControls_m, code.limits.strap_above_controls.value)
      ? { gap: q("dimension", strapAboveControls_m), limit: q("dimension", code.limits.strap_above_controls.value) }
      : undefined,
  examples: {
    fires: [{ name: "2 in over the controls", site: { strapAboveControls_m: toBase(2, "in") } }],
    silent: [
      { name: "exactly 4 in", site: { strapAboveControls_m: toBase(4, "in") } },
      { name: "not measured", site: { straps: 2 } },
    ],
  },
});
