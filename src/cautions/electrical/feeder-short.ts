import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "feeder_short",
  severity: "must",
  cites: [
    {
      basis: "from_memory",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "220.82 and 220.83: load of a dwelling",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { spare: "current", design: "current" },
  check: ({ designCurrent_A, feederSpare_A }) =>
    feederSpare_A !== undefined && designCurrent_A !== undefined && isUnder(feederSpare_A, designCurrent_A)
      ? { spare: q("current", feederSpare_A), design: q("current", designCurrent_A) }
      : undefined,
  examples: {
    fires: [{ name: "15 A to spare for 23.4 A", site: { feederSpare_A: 15, designCurrent_A: 23.4375 } }],
    silent: [
      { name: "30 A to spare for 23.4 A", site: { feederSpare_A: 30, designCurrent_A: 23.4375 } },
      { name: "spare not known", site: { designCurrent_A: 23.4375 } },
    ],
  },
});
