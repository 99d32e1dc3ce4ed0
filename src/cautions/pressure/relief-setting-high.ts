import { q } from "../../declaration/answer.ts";
import { toBase } from "../../units/convert.ts";
import { declareCaution } from "../caution.ts";
import { isOver } from "../compare.ts";

export const caution = declareCaution({
  id: "relief_setting_high",
  severity: "stop",
  cites: [
    {
      basis: "from_memory",
      document: "IPC",
      edition: "2021",
      section: "504.4 and 504.5; the 150 psi limit itself read in several pages",
      checkedOn: "2026-11-25",
    },
    {
      basis: "published",
      document: "ANSI Z21.22 / CSA 4.4",
      edition: "2015",
      section: "valve has no field adjustment",
      checkedOn: "2026-11-25",
    },
  ],
  decides: "authority",
  data: { setting: "pressure", limit: "pressure" },
  /** The code's number, or the rated working pressure of the tank where that is lower. */
  check: ({ reliefSetting_kPa }, code) =>
    reliefSetting_kPa !== undefined && isOver(reliefSetting_kPa, code.limits.relief_pressure.value)
      ? { setting: q("pressure", reliefSetting_kPa), limit: q("pressure", code.limits.relief_pressure.value) }
      : undefined,
  examples: {
    fires: [{ name: "175 psi", site: { reliefSetting_kPa: toBase(175, "psi") } }],
    silent: [
      { name: "exactly 150 psi", site: { reliefSetting_kPa: toBase(150, "psi") } },
      { name: "setting not known", site: {} },
    ],
  },
});
