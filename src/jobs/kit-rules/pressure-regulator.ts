import { CODE_LIMIT_kPa } from "../../physics/expansion-plan.ts";
import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";

export const rule: KitRule = {
  id: "pressure_regulator",
  asks: ["line_pressure"],
  parts: ({ line_pressure_kPa = 0 }) => (line_pressure_kPa > CODE_LIMIT_kPa ? [some("pressure-regulator")] : undefined),
  source: { basis: "published", document: "UPC", edition: "2021", section: "608.2: 80 psi" },
  cases: {
    fires: [{ name: "95 psi", site: { line_pressure_kPa: toBase(95, "psi") }, brings: [some("pressure-regulator")] }],
    silent: [{ name: "80 psi, which is allowed", site: { line_pressure_kPa: toBase(80, "psi") } }],
  },
};
