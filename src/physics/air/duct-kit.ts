import { requireWithin } from "../require-within.ts";
import type { AirState } from "./air-state.ts";
import { ductFriction_Pa, fittingLoss_Pa, type StraightDuct } from "./duct-loss.ts";
import type { DuctFitting } from "./duct-table.ts";
import { orificeDrop_Pa } from "./openings.ts";

/** One duct of a kit: straight pieces of one diameter, its fittings, and the grille or louvre at its end. */
export interface DuctRun extends StraightDuct {
  readonly fittings: readonly { readonly fitting: DuctFitting; readonly count: number }[];
  /** Free area of a grille, louvre or screen at the end [m2]; a hood or cap is a fitting. */
  readonly grille_m2?: number;
}

/** Ducts that the same air passes one after the other: to the unit, from the unit, or both. */
export type DuctKit = readonly DuctRun[];

/** Pressure lost, part by part [Pa]. */
export interface KitLoss {
  readonly straight_Pa: number;
  readonly fittings_Pa: number;
  readonly grilles_Pa: number;
  readonly total_Pa: number;
}

/**
 * Pressure that a duct kit takes at an airflow, and where.
 * @param flow_m3_s airflow [m3/s], 0..10
 * @param kit runs in a row; an empty kit takes nothing
 * @param air density and viscosity
 * @returns pressures [Pa]
 * @source `ductFriction_Pa`, `fittingLoss_Pa`, `orificeDrop_Pa`, added up
 * @limits no wind on the hood; a filter or coil inside the unit belongs to the fan's sheet
 */
export function kitLoss(flow_m3_s: number, kit: DuctKit, air: AirState): KitLoss {
  let [straight_Pa, fittings_Pa, grilles_Pa] = [0, 0, 0];
  for (const run of kit) {
    straight_Pa += ductFriction_Pa(flow_m3_s, run, air);
    for (const { fitting, count } of run.fittings) {
      requireWithin("count", count, 0, 100);
      fittings_Pa += count * fittingLoss_Pa(flow_m3_s, run.diameter_m, fitting, air);
    }
    if (run.grille_m2 !== undefined) grilles_Pa += orificeDrop_Pa(run.grille_m2, flow_m3_s, air.density_kg_m3);
  }
  return { straight_Pa, fittings_Pa, grilles_Pa, total_Pa: straight_Pa + fittings_Pa + grilles_Pa };
}
