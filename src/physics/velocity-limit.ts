import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import { requireWithin } from "./require-within.ts";

export const COPPER_VELOCITY: Source = {
  basis: "published",
  document: "Copper Tube Handbook",
  section: "water velocity: cold 8 ft/s, hot 5 ft/s to 140 °F, 2 to 3 ft/s above; read as reported",
};
export const PLASTIC_VELOCITY: Source = {
  basis: "published",
  document: "IRC",
  edition: "2018",
  section: "Appendix AP, note to the friction charts: above 5 to 8 ft/s not usually recommended",
};

const COLD_m_s = toBase(8, "ft_s");
const HOT_m_s = toBase(5, "ft_s");
const VERY_HOT_m_s = toBase(3, "ft_s");
const VERY_HOT_FROM_C = toBase(140, "F");

/**
 * Highest water velocity that references advise.
 * @param metal copper erodes, plastic does not but hammers and hums
 * @param water "hot" or "cold"
 * @param water_C water temperature [°C], 0..100
 * @returns velocity [m/s]
 * @source COPPER_VELOCITY for copper; PLASTIC_VELOCITY for plastic
 * @limits the maker of the pipe and the local code may say less
 */
export function velocityLimit_m_s(metal: "copper" | "plastic", water: "hot" | "cold", water_C: number): number {
  requireWithin("water_C", water_C, 0, 100);
  if (metal === "plastic" || water === "cold") return COLD_m_s;
  return water_C > VERY_HOT_FROM_C ? VERY_HOT_m_s : HOT_m_s;
}
