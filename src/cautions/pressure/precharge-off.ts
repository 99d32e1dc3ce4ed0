import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

/** Share of the line pressure that a tire gauge and a valve stem may be out. */
const BAND = 0.1;

export const caution = declareCaution({
  id: "precharge_off",
  severity: "should",
  cites: [
    {
      basis: "published",
      document: "Griffith, Thermal Expansion Tanks part 2",
      edition: "2015",
      section: "air charge equal to the line pressure",
      checkedOn: "2026-11-25",
    },
    {
      basis: "common_practice",
      document: "Habit of the trade",
      section: "a tenth of the pressure either way is taken as equal",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "plumber",
  data: { precharge: "pressure", line: "pressure" },
  check: ({ linePressure_kPa, precharge_kPa }) =>
    precharge_kPa !== undefined &&
    linePressure_kPa !== undefined &&
    isOver(Math.abs(precharge_kPa - linePressure_kPa), BAND * linePressure_kPa)
      ? { precharge: q("pressure", precharge_kPa), line: q("pressure", linePressure_kPa) }
      : undefined,
  examples: {
    fires: [
      {
        name: "40 psi of air, 65 psi in the line",
        site: { precharge_kPa: toBase(40, "psi"), linePressure_kPa: toBase(65, "psi") },
      },
      {
        name: "80 psi of air, 60 psi in the line",
        site: { precharge_kPa: toBase(80, "psi"), linePressure_kPa: toBase(60, "psi") },
      },
    ],
    silent: [
      {
        name: "62 psi of air, 65 psi in the line",
        site: { precharge_kPa: toBase(62, "psi"), linePressure_kPa: toBase(65, "psi") },
      },
      { name: "line pressure not known", site: { precharge_kPa: toBase(40, "psi") } },
    ],
  },
});
