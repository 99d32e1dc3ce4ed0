import { q } from "../../declaration/answer.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

export const caution = declareCaution({
  id: "condensate_flat",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "IMC",
      edition: "2015",
      section: "307.2: 1/8 in per foot",
      checkedOn: "2026-11-25",
    },
    { basis: "published", document: "UPC", section: "814: 1/8 in per foot", checkedOn: "2026-11-25" },
  ],
  decides: "plumber",
  data: { slope: "share", limit: "share" },
  check: ({ condensateSlope_share }, code) =>
    condensateSlope_share !== undefined && isUnder(condensateSlope_share, code.limits.condensate_slope.value)
      ? { slope: q("share", condensateSlope_share), limit: q("share", code.limits.condensate_slope.value) }
      : undefined,
  examples: {
    fires: [{ name: "level line", site: { condensateSlope_share: 0 } }],
    silent: [
      { name: "1/8 in per foot", site: { condensateSlope_share: 0.125 / 12 } },
      { name: "fall not measured", site: { condensateEndsIn: "outdoors" } },
    ],
  },
});
