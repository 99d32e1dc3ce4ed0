import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isUnder } from "../compare.ts";

/** Where the sheet does not say. */
const USUAL_C = toBase(40, "F");

export const caution = declareCaution({
  id: "air_too_cold_for_heat_pump",
  severity: "note",
  cites: [
    {
      basis: "published",
      document: "ENERGY STAR heat pump water heater guide, FAQ",
      edition: "2024",
      section: "about 40 to 120 °F",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "Efficiency Vermont, buying guide",
      section: "50 °F or more advised",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "manufacturer",
  data: { low: "temperature", lowest: "temperature" },
  check: ({ roomLow_C, lowestAir_C }) => {
    const lowest_C = lowestAir_C ?? USUAL_C;
    return roomLow_C !== undefined && isUnder(roomLow_C, lowest_C)
      ? { low: q("temperature", roomLow_C), lowest: q("temperature", lowest_C) }
      : undefined;
  },
  examples: {
    fires: [
      { name: "35 °F, sheet not known", site: { roomLow_C: toBase(35, "F") } },
      { name: "42 °F where the sheet stops at 45", site: { roomLow_C: toBase(42, "F"), lowestAir_C: toBase(45, "F") } },
    ],
    silent: [
      { name: "exactly 40 °F", site: { roomLow_C: toBase(40, "F") } },
      { name: "38 °F where the sheet goes to 37", site: { roomLow_C: toBase(38, "F"), lowestAir_C: toBase(37, "F") } },
      { name: "lowest not known", site: { room: "basement" } },
    ],
  },
});
