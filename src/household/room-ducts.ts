import type { HeatPumpSheet, WaterHeater } from "../equipment/water-heater.ts";
import { STANDARD_AIR } from "../physics/air/air-state.ts";
import { costOfLessAir } from "../physics/air/coil-airflow.ts";
import { type DuctKit, type DuctRun, kitLoss } from "../physics/air/duct-kit.ts";
import { type DuctMaterial, FIELD_COMPRESSION } from "../physics/air/duct-table.ts";
import { airflowLeft, USUAL_STATIC_Pa } from "../physics/air/fan.ts";
import { ROOM_PRESSURE_kPa, type RoomDucts } from "../physics/room/room-spec.ts";

/** Which of the unit's two air connections carry a duct. */
export const DUCT_CHOICES = ["none", "exhaust", "intake", "both"] as const;
export type DuctChoice = (typeof DUCT_CHOICES)[number];
/** Where those ducts lead. */
export const DUCT_ENDS = ["outdoors", "adjoining"] as const;
export type DuctEnd = (typeof DUCT_ENDS)[number];
export type DuctMake = Extract<DuctMaterial, "galvanized" | "flex">;

export interface DuctPlan {
  readonly choice: DuctChoice;
  readonly end: DuctEnd;
  /** One way, each duct [m], and inside diameter [m]. */
  readonly run_m: number;
  readonly diameter_m: number;
  readonly make: DuctMake;
}

/** What the ducts take from the fan, and what is left. */
export interface DuctedAir {
  readonly airflow_m3_s: number;
  readonly share: number;
  /** At the airflow that is left, and at the rated one [Pa]. */
  readonly drop_Pa: number;
  readonly ratedDrop_Pa: number;
  readonly available_Pa: number;
}

/** Two elbows and a hood on each duct: the usual way out through a wall. */
const FITTINGS: DuctRun["fittings"] = [
  { fitting: "elbow_90_smooth", count: 2 },
  { fitting: "wall_hood", count: 1 },
];
/** Water at the middle of a tank that recovers, at which the cost of less air is taken [C]. */
const WATER_C = 45;

/** The ducts of a plan, in a row; none for an unducted unit. */
export function kitOf({ choice, run_m, diameter_m, make }: DuctPlan): DuctKit {
  const compression = make === "flex" ? { compression: FIELD_COMPRESSION } : {};
  const run: DuctRun = { diameter_m, length_m: run_m, material: make, fittings: FITTINGS, ...compression };
  if (choice === "none") return [];
  return choice === "both" ? [run, run] : [run];
}

/** Airflow that is left with these ducts on the fan. */
export function airThroughDucts({ airflow_m3_s }: HeatPumpSheet, plan: DuctPlan): DuctedAir {
  const kit = kitOf(plan);
  const fan = { kind: "point", rated_m3_s: airflow_m3_s, available_Pa: USUAL_STATIC_Pa } as const;
  const left = airflowLeft(fan, kit, STANDARD_AIR);
  return {
    airflow_m3_s: left.airflow_m3_s,
    share: left.share,
    drop_Pa: left.loss_Pa,
    ratedDrop_Pa: kitLoss(airflow_m3_s, kit, STANDARD_AIR).total_Pa,
    available_Pa: USUAL_STATIC_Pa,
  };
}

/**
 * The unit with less air through its coil: heat and COP scaled by what that costs at one usual state.
 * @param unit with a heat pump
 * @param airflow_m3_s airflow left [m3/s]
 * @param air_C, humidityRatio air at the coil
 * @source `costOfLessAir`
 * @limits taken at 45 °C water and held for the whole run
 */
export function unitWithLessAir(
  unit: WaterHeater,
  airflow_m3_s: number,
  air_C: number,
  humidityRatio: number,
): WaterHeater {
  const { heatPump } = unit;
  if (heatPump === undefined || airflow_m3_s >= heatPump.airflow_m3_s * NEARLY_ALL) return unit;
  const air = { dryBulb_C: air_C, humidityRatio, pressure_kPa: ROOM_PRESSURE_kPa };
  const { heatShare, copShare } = costOfLessAir(heatPump, heatPump, air, WATER_C, airflow_m3_s);
  const ratedHeat_W = heatPump.ratedHeat_W * heatShare;
  return {
    ...unit,
    heatPump: { ...heatPump, ratedHeat_W, ratedCop: Math.max(1, heatPump.ratedCop * copShare), airflow_m3_s },
  };
}

const NEARLY_ALL = 0.999;

/** The same ducts as the room sees them. */
export function roomDucts(plan: DuctPlan, airflow_m3_s: number, makeUp: RoomDucts["makeUp"]): RoomDucts | undefined {
  const { choice, end } = plan;
  if (choice === "none") return undefined;
  const intake = choice === "exhaust" ? "room" : end;
  const exhaust = choice === "intake" ? "room" : end;
  return { intake, exhaust, airflow_m3_s, makeUp };
}

/** Heat that a unit still gives with less air than its sheet says, over all of it [share]. */
export function capacityLeft(unit: WaterHeater, airflow_m3_s: number, air_C: number, humidityRatio: number): number {
  const fitted = unitWithLessAir(unit, airflow_m3_s, air_C, humidityRatio);
  return (fitted.heatPump?.ratedHeat_W ?? 1) / (unit.heatPump?.ratedHeat_W ?? 1);
}
