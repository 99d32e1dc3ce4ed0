import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Legionella multiplies between these, WHO. */
const GROWS_FROM_C = 25;
const GROWS_TO_C = 45;

export const caution = declareCaution({
  id: "storage_in_growth_range",
  severity: "must",
  cites: [
    {
      basis: "published",
      document: "WHO, Legionella and the prevention of legionellosis",
      edition: "2007",
      section: "growth 25 to 45 °C; secondary copy read",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: { storage: "temperature", from: "temperature", to: "temperature" },
  check: ({ storage_C }) => {
    if (storage_C === undefined || storage_C < GROWS_FROM_C || isOver(storage_C, GROWS_TO_C)) return undefined;
    return {
      storage: q("temperature", storage_C),
      from: q("temperature", GROWS_FROM_C),
      to: q("temperature", GROWS_TO_C),
    };
  },
  examples: {
    fires: [
      { name: "105 °F", site: { storage_C: toBase(105, "F") } },
      { name: "exactly 45 °C", site: { storage_C: 45 } },
    ],
    silent: [
      { name: "115 °F", site: { storage_C: toBase(115, "F") } },
      { name: "20 °C, too cold to grow", site: { storage_C: 20 } },
      { name: "storage not known", site: {} },
    ],
  },
});
