import { q } from "../../declaration/answer.ts";
import { scaldTime_s } from "../../physics/scald-time.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

/** From here on skin burns within seconds. */
const FROM_C = toBase(140, "F");

export const caution = declareCaution({
  id: "hot_storage_without_mixing_valve",
  severity: "stop",
  cites: [
    {
      basis: "published",
      document: "Burn time table in the tradition of Moritz and Henriques (1947)",
      section: "secondary copy read",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ASSE 1017 and 1070 scopes",
      section: "mixing valve at the source; limiting device at the fixture",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { storage: "temperature", time: "time" },
  check: ({ storage_C, hasMixingValve }) => {
    if (storage_C === undefined || hasMixingValve !== false || isUnder(storage_C, FROM_C)) return undefined;
    return { storage: q("temperature", storage_C), time: q("time", scaldTime_s(storage_C)?.longest_s ?? 0) };
  },
  examples: {
    fires: [
      { name: "140 °F without a mixing valve", site: { storage_C: toBase(140, "F"), hasMixingValve: false } },
      { name: "160 °F without a mixing valve", site: { storage_C: toBase(160, "F"), hasMixingValve: false } },
    ],
    silent: [
      { name: "140 °F with a mixing valve", site: { storage_C: toBase(140, "F"), hasMixingValve: true } },
      { name: "139 °F without a mixing valve", site: { storage_C: toBase(139, "F"), hasMixingValve: false } },
      { name: "140 °F, mixing valve not known", site: { storage_C: toBase(140, "F") } },
      { name: "storage not known", site: { hasMixingValve: false } },
    ],
  },
});
