import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Below this skin bears the water for minutes. */
const SAFE_C = toBase(120, "F");

export const caution = declareCaution({
  id: "drain_water_hot",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "CPSC-style burn times, secondary copies",
      section: "120 °F takes minutes, 140 °F seconds",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "cool the tank before it is drained",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { storage: "temperature", safe: "temperature" },
  check: ({ work, storage_C }) =>
    work === "removal" && storage_C !== undefined && isOver(storage_C, SAFE_C)
      ? { storage: q("temperature", storage_C), safe: q("temperature", SAFE_C) }
      : undefined,
  examples: {
    fires: [{ name: "draining a tank at 140 °F", site: { work: "removal", storage_C: toBase(140, "F") } }],
    silent: [
      { name: "draining a tank at 100 °F", site: { work: "removal", storage_C: toBase(100, "F") } },
      { name: "not being drained", site: { storage_C: toBase(140, "F") } },
    ],
  },
});
