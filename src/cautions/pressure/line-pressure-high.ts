import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "line_pressure_high",
  severity: "must",
  cites: [
    { basis: "published", document: "IRC", edition: "2021", section: "P2903.3.1: 80 psi", checkedOn: "2026-11-25" },
    {
      basis: "published",
      document: "UPC",
      edition: "2015",
      section: "608.2: 80 psi, regulator, strainer and expansion tank",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "IPC",
      edition: "2021",
      section: "604.8, read inside 607.3",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { pressure: "pressure", limit: "pressure" },
  check: ({ linePressure_kPa }, code) =>
    linePressure_kPa !== undefined && isOver(linePressure_kPa, code.limits.line_pressure.value)
      ? { pressure: q("pressure", linePressure_kPa), limit: q("pressure", code.limits.line_pressure.value) }
      : undefined,
  examples: {
    fires: [{ name: "95 psi", site: { linePressure_kPa: toBase(95, "psi") } }],
    silent: [
      { name: "exactly 80 psi", site: { linePressure_kPa: toBase(80, "psi") } },
      { name: "pressure not known", site: {} },
    ],
  },
});
