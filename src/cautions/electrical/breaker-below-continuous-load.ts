import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "breaker_below_continuous_load",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "422.13: storage heater up to 120 gal is a continuous load",
      checkedOn: "2026-11-25",
    },
    {
      basis: "from_memory",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "422.10(A): 125 %",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { breaker: "current", design: "current" },
  check: ({ breaker_A, designCurrent_A }) =>
    breaker_A !== undefined && designCurrent_A !== undefined && isUnder(breaker_A, designCurrent_A)
      ? { breaker: q("current", breaker_A), design: q("current", designCurrent_A) }
      : undefined,
  examples: {
    fires: [{ name: "20 A breaker for 18.75 A", site: { breaker_A: 20, designCurrent_A: 23.4375 } }],
    silent: [
      { name: "25 A breaker for 18.75 A", site: { breaker_A: 25, designCurrent_A: 23.4375 } },
      { name: "25 A breaker for exactly 20 A", site: { breaker_A: 25, designCurrent_A: 25 } },
      { name: "breaker not known", site: { designCurrent_A: 23.4375 } },
    ],
  },
});
