import { q } from "../../declaration/answer.ts";
import { scaldTime_s } from "../../physics/scald-time.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { asPrinted_C, isOver, isUnder } from "../compare.ts";

/** From here on, without a valve, the stronger caution speaks. */
const VERY_HOT_C = toBase(140, "F");

export const caution = declareCaution({
  id: "storage_above_tap_limit",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "412.5 (tubs), 412.3 from memory (showers): 120 °F",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Burn time table in the tradition of Moritz and Henriques (1947)",
      section: "secondary copy read",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { storage: "temperature", limit: "temperature", time: "time" },
  check: ({ storage_C, hasMixingValve }, { limits }) => {
    const limit_C = Math.min(limits.tub.value, limits.shower.value);
    if (storage_C === undefined || hasMixingValve === true || !isOver(storage_C, asPrinted_C(limit_C)))
      return undefined;
    if (hasMixingValve === false && !isUnder(storage_C, VERY_HOT_C)) return undefined;
    return {
      storage: q("temperature", storage_C),
      limit: q("temperature", limit_C),
      time: q("time", scaldTime_s(storage_C)?.longest_s ?? 0),
    };
  },
  examples: {
    fires: [
      { name: "130 °F without a mixing valve", site: { storage_C: toBase(130, "F"), hasMixingValve: false } },
      { name: "140 °F, mixing valve not known", site: { storage_C: toBase(140, "F") } },
    ],
    silent: [
      { name: "exactly 120 °F", site: { storage_C: toBase(120, "F"), hasMixingValve: false } },
      { name: "130 °F with a mixing valve", site: { storage_C: toBase(130, "F"), hasMixingValve: true } },
      {
        name: "140 °F without a valve, where the stronger caution speaks",
        site: { storage_C: toBase(140, "F"), hasMixingValve: false },
      },
      { name: "storage not known", site: {} },
    ],
  },
});
