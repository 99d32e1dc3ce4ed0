import { toBase } from "../units/convert.ts";
import {
  acceptanceShare,
  expandedVolume_L,
  nextStockSize_L,
  tankForAcceptance_L,
  type VesselMetal,
  vesselGrowth_L,
} from "./expansion-tank.ts";

/** Share of the relief setting that the pressure may climb to. Source: Griffith 2015, 10 % below the relief valve. */
const BELOW_RELIEF = 0.9;
/** Highest static pressure in a house. Source: IPC 604.8, IRC P2903.3.1, UPC 608.2, all 80 psi. */
export const CODE_LIMIT_kPa = toBase(80, "psi");

/** What must be known to size an expansion tank; pressures are gauge. */
export interface ExpansionCase {
  readonly tank_L: number;
  readonly pipe_volume_L: number;
  readonly cold_C: number;
  readonly setpoint_C: number;
  readonly line_pressure_kPa: number;
  readonly relief_setting_kPa: number;
  readonly pressure_limit_kPa: number | undefined;
  readonly vessel_metal: VesselMetal;
  readonly existing_tank_L: number | undefined;
  readonly existing_precharge_kPa: number | undefined;
}

export interface ExpansionPlan {
  readonly system_L: number;
  readonly expanded_L: number;
  readonly metal_L: number;
  readonly ceiling_kPa: number;
  /** By acceptance alone: nothing taken off for the growth of the metal. */
  readonly minimum_L: number;
  /** By the full formula. */
  readonly full_L: number;
  readonly stock_L: number | undefined;
  /** Tank that keeps the house at the code's limit; set when nobody named a limit and the line is below it. */
  readonly codeLimit_L: number | undefined;
  /** What the tank that is there takes in. */
  readonly existingAcceptance_L: number | undefined;
}

/** Pressure that the system may climb to [kPa gauge]: the limit named, else 10 % below the relief setting. */
export function pressureCeiling_kPa(known: Pick<ExpansionCase, "pressure_limit_kPa" | "relief_setting_kPa">): number {
  return known.pressure_limit_kPa ?? known.relief_setting_kPa * BELOW_RELIEF;
}

/**
 * Sizes an expansion tank both ways and judges one that is there.
 * @param known the case, with line pressure below the ceiling and cold below hot
 * @returns volumes [L] and ceiling [kPa gauge]
 * @source expansion-tank.ts
 */
export function planExpansion(known: ExpansionCase): ExpansionPlan {
  const { setpoint_C, cold_C, line_pressure_kPa: line_kPa } = known;
  const system_L = known.tank_L + known.pipe_volume_L;
  const ceiling_kPa = pressureCeiling_kPa(known);
  const expanded_L = expandedVolume_L(system_L, cold_C, setpoint_C);
  const metal_L = vesselGrowth_L(system_L, setpoint_C - cold_C, known.vessel_metal);
  const minimum_L = tankForAcceptance_L(expanded_L, line_kPa, ceiling_kPa);
  const limitMatters =
    known.pressure_limit_kPa === undefined && line_kPa < CODE_LIMIT_kPa && CODE_LIMIT_kPa < ceiling_kPa;
  return {
    system_L,
    expanded_L,
    metal_L,
    ceiling_kPa,
    minimum_L,
    full_L: tankForAcceptance_L(Math.max(0, expanded_L - metal_L), line_kPa, ceiling_kPa),
    stock_L: nextStockSize_L(minimum_L),
    codeLimit_L: limitMatters ? tankForAcceptance_L(expanded_L, line_kPa, CODE_LIMIT_kPa) : undefined,
    existingAcceptance_L: existingAcceptance(known, ceiling_kPa),
  };
}

function existingAcceptance(known: ExpansionCase, ceiling_kPa: number): number | undefined {
  const { existing_tank_L, existing_precharge_kPa, line_pressure_kPa } = known;
  if (existing_tank_L === undefined) return undefined;
  return existing_tank_L * acceptanceShare(existing_precharge_kPa ?? line_pressure_kPa, line_pressure_kPa, ceiling_kPa);
}
