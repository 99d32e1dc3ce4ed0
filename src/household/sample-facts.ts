import { OUR_HABIT } from "../declaration/common-facts.ts";
import type { FactSpecs } from "../declaration/facts.ts";

/** What topics ask that count cold days in a sample: how many are let pass, and how many days are drawn. */
export const SAMPLE_FACTS = {
  limit: {
    type: "quantity",
    quantity: "share",
    min: 0.002,
    max: 0.5,
    usual: [0.02, 0.05, 0.1],
    byNameOnly: true,
    default: { value: 0.05, source: OUR_HABIT },
  },
  days: {
    type: "quantity",
    quantity: "count",
    min: 20,
    max: 2000,
    whole: true,
    usual: [200, 1000],
    byNameOnly: true,
    default: { value: 200, source: OUR_HABIT },
  },
} as const satisfies FactSpecs;
