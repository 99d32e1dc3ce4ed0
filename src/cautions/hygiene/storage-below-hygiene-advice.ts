import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver, isUnder } from "../compare.ts";

/** Above this Legionella does not multiply; the stronger caution speaks below it. */
const GROWS_TO_C = 45;
const DELIVERED_C = toBase(122, "F");
const STORED_C = toBase(140, "F");

export const caution = declareCaution({
  id: "storage_below_hygiene_advice",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "OSHA, Legionnaires' disease eTool",
      edition: "archived",
      section: "store at 140 °F, deliver at least 122 °F",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "CDC, Legionella control toolkit, potable water",
      section: "hot water above 120 °F",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "health",
  data: { storage: "temperature", delivered: "temperature", stored: "temperature" },
  check: ({ storage_C }) => {
    if (storage_C === undefined || !isOver(storage_C, GROWS_TO_C) || !isUnder(storage_C, DELIVERED_C)) return undefined;
    return {
      storage: q("temperature", storage_C),
      delivered: q("temperature", DELIVERED_C),
      stored: q("temperature", STORED_C),
    };
  },
  examples: {
    fires: [
      { name: "120 °F", site: { storage_C: toBase(120, "F") } },
      { name: "115 °F", site: { storage_C: toBase(115, "F") } },
    ],
    silent: [
      { name: "exactly 122 °F", site: { storage_C: toBase(122, "F") } },
      { name: "105 °F, where the stronger caution speaks", site: { storage_C: toBase(105, "F") } },
      { name: "storage not known", site: {} },
    ],
  },
});
