import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "no_room_to_service",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IRC",
      edition: "older summary",
      section: "M1305.1: 30 by 30 in",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "NREL Standard Work Specification",
      section: "7.8102.8: level, 30 by 30 in at the control side",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { space: "dimension", limit: "dimension" },
  check: ({ serviceSpace_m }, code) =>
    serviceSpace_m !== undefined && isUnder(serviceSpace_m, code.limits.service_space.value)
      ? { space: q("dimension", serviceSpace_m), limit: q("dimension", code.limits.service_space.value) }
      : undefined,
  examples: {
    fires: [{ name: "22 in before the controls", site: { serviceSpace_m: toBase(22, "in") } }],
    silent: [
      { name: "exactly 30 in", site: { serviceSpace_m: toBase(30, "in") } },
      { name: "not measured", site: { room: "closet" } },
    ],
  },
});
