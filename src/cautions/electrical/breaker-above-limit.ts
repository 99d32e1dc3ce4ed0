import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "breaker_above_limit",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "422.11(E) and 240.4(D)",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "electrician",
  data: { breaker: "current", largest: "current" },
  check: ({ breaker_A, largestBreaker_A }) =>
    breaker_A !== undefined && largestBreaker_A !== undefined && isOver(breaker_A, largestBreaker_A)
      ? { breaker: q("current", breaker_A), largest: q("current", largestBreaker_A) }
      : undefined,
  examples: {
    fires: [{ name: "40 A breaker where 30 A is the most", site: { breaker_A: 40, largestBreaker_A: 30 } }],
    silent: [
      { name: "exactly the most, 30 A", site: { breaker_A: 30, largestBreaker_A: 30 } },
      { name: "limit not known", site: { breaker_A: 40 } },
    ],
  },
});
