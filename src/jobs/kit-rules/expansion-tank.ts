import { CODE_LIMIT_kPa, planExpansion } from "../../physics/expansion-plan.ts";
import { CODE_CEILING, nextStockSize_L } from "../../physics/expansion-tank.ts";
import { toBase } from "../../units/convert.ts";
import { type KitRule, some } from "../kit-rule.ts";
import type { KitSite } from "../kit-told-facts.ts";

/** What is taken where the survey does not say; common practice, on the large side. */
const USUAL = { tank_L: toBase(50, "gal"), setpoint_C: toBase(140, "F"), line_kPa: toBase(60, "psi") };
/** A regulator brings the line down to about this; from memory, the setting that most leave the factory with. */
const REGULATED_kPa = toBase(50, "psi");
const COLD_C = toBase(50, "F");
const RELIEF_kPa = toBase(150, "psi");

/** Smallest expansion tank that keeps the house under the limit of the codes, or under the relief valve [L]. */
function neededTank_L({ unit, tank_L, setpoint_C, line_pressure_kPa }: KitSite): number {
  const told_kPa = line_pressure_kPa ?? USUAL.line_kPa;
  const plan = planExpansion({
    tank_L: tank_L ?? unit?.nominal_L ?? USUAL.tank_L,
    pipe_volume_L: 0,
    cold_C: COLD_C,
    setpoint_C: Math.max(COLD_C, setpoint_C ?? USUAL.setpoint_C),
    line_pressure_kPa: told_kPa > CODE_LIMIT_kPa ? REGULATED_kPa : told_kPa,
    relief_setting_kPa: RELIEF_kPa,
    pressure_limit_kPa: undefined,
    vessel_metal: "none",
    existing_tank_L: undefined,
    existing_precharge_kPa: undefined,
  });
  return plan.codeLimit_L ?? plan.minimum_L;
}

function partFor(needed_L: number): string {
  const size_L = nextStockSize_L(needed_L) ?? Number.POSITIVE_INFINITY;
  if (size_L <= toBase(2, "gal")) return "expansion-tank-2-gal";
  return size_L <= toBase(4.4, "gal") ? "expansion-tank-4-gal" : "expansion-tank-10-gal";
}

export const rule: KitRule = {
  id: "expansion_tank",
  asks: ["closed", "control"],
  parts: (site) => {
    if (site.closed !== true || site.control === "tank") return undefined;
    return [some(partFor(neededTank_L(site))), some("expansion-tee"), some("expansion-tank-strap")];
  },
  source: CODE_CEILING,
  cases: {
    fires: [
      {
        // By hand: 50 gal from 50 to 120 F grows by about 0.6 gal; 0.6 / (1 - 64.7 / 94.7) is 1.9 gal.
        name: "50 gal at 50 psi and 120 F",
        site: {
          closed: true,
          tank_L: toBase(48, "gal"),
          setpoint_C: toBase(120, "F"),
          line_pressure_kPa: toBase(50, "psi"),
        },
        brings: [some("expansion-tank-2-gal"), some("expansion-tee"), some("expansion-tank-strap")],
      },
      { name: "nothing but that it is closed", site: { closed: true } },
      { name: "the relief valve lets the growth out", site: { closed: true, control: "relief_valve" } },
    ],
    silent: [
      { name: "open to the street", site: { closed: false } },
      { name: "a tank that does its work is there", site: { closed: true, control: "tank" } },
    ],
  },
};
