import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";

/** Weighted average over the wetted surfaces. */
const MOST_LEAD = 0.0025;

export const caution = declareCaution({
  id: "not_marked_lead_free",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "Safe Drinking Water Act, section 1417",
      section: "0.25 % weighted average of wetted surfaces",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "NSF/ANSI/CAN 372",
      section: "how lead content is shown",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { limit: "share" },
  check: ({ isMarkedLeadFree }) => (isMarkedLeadFree === false ? { limit: q("share", MOST_LEAD) } : undefined),
  examples: {
    fires: [{ name: "old brass valve without a mark", site: { isMarkedLeadFree: false } }],
    silent: [
      { name: "marked lead-free", site: { isMarkedLeadFree: true } },
      { name: "marks not looked at", site: { hasShutOff: true } },
    ],
  },
});
