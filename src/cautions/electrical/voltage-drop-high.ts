import { q } from "../../declaration/answer.ts";
import { ADVISED_DROP } from "../../physics/branch-circuit.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "voltage_drop_high",
  severity: "note",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "informational notes to 210.19 and 215.2: 3 % and 5 %, advice",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { drop: "share", advised: "share" },
  check: ({ voltageDrop_share }) =>
    voltageDrop_share !== undefined && isOver(voltageDrop_share, ADVISED_DROP)
      ? { drop: q("share", voltageDrop_share), advised: q("share", ADVISED_DROP) }
      : undefined,
  examples: {
    fires: [{ name: "3.1 %", site: { voltageDrop_share: 0.031 } }],
    silent: [
      { name: "exactly 3 %", site: { voltageDrop_share: 0.03 } },
      { name: "run not known", site: {} },
    ],
  },
});
