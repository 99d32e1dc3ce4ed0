import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "wire_below_continuous_load",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "NEC (NFPA 70)",
      edition: "2023",
      section: "Table 310.16",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "NEC (NFPA 70)", edition: "2023", section: "422.13", checkedOn: "2026-11-25" },
  ],
  decides: "electrician",
  data: { ampacity: "current", design: "current" },
  check: ({ wireAmpacity_A, designCurrent_A }) =>
    wireAmpacity_A !== undefined && designCurrent_A !== undefined && isUnder(wireAmpacity_A, designCurrent_A)
      ? { ampacity: q("current", wireAmpacity_A), design: q("current", designCurrent_A) }
      : undefined,
  examples: {
    fires: [{ name: "20 A wire for 18.75 A", site: { wireAmpacity_A: 20, designCurrent_A: 23.4375 } }],
    silent: [
      { name: "30 A wire for 18.75 A", site: { wireAmpacity_A: 30, designCurrent_A: 23.4375 } },
      { name: "wire not known", site: { designCurrent_A: 23.4375 } },
    ],
  },
});
