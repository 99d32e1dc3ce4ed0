import type { Source } from "../declaration/source.ts";
import type { Biquadratic } from "../physics/heat-pump.ts";
import type { PolicyId } from "./policies.ts";
import type { ElementSheet, HeatPumpSheet, TankSheet, WaterHeater } from "./water-heater.ts";

/** What is known of a unit whose model nobody named. */
export interface GenericUnit {
  /** Volume on the plate [L]. */
  readonly nominal_L: number;
  /** Power of each of the two elements [W]; 0 where there are none. */
  readonly element_W: number;
  /** Heat of the heat pump at its rating point [W]; 0 where there is none. */
  readonly heatPump_W: number;
}

/** Behind every number of a sheet that is filled in from the size of a tank alone. */
export const USUAL_UNIT: Source = { basis: "common_practice", document: "Usual unit of this size" };
/** Measured volume over the one on the plate; trade habit, and what the federal label allows (from memory). */
export const MEASURED_SHARE = 0.9;
/** Elements and heat pump of the size that most units have [W]. */
export const USUAL_ELEMENT_W = 4500;
export const USUAL_HEAT_PUMP_W = 1500;
/** Less than this is no heater [W]. */
export const LEAST_SOURCE_W = 300;
/** Supplies that units with, and without, elements are made for [V]. */
const WITH_ELEMENTS_V = [240, 208] as const;
const WITHOUT_ELEMENTS_V = [120, 240, 208] as const;
const ELEMENT_V = 240;

/** Height of the water over its diameter, and loss of an insulated tank by its surface [W/(m2 K)]. */
const SLENDERNESS = 2.7;
const LOSS_W_m2_K = 0.73;
/** An idealised machine, a share of the Carnot COP, fitted over wet bulb and water temperature [C]. */
const HEAT_CURVE: Biquadratic = [0.86756, 0.029127, 0.00053587, -0.0042995, 0, -0.00021699];
const COP_CURVE: Biquadratic = [1.6174, 0.023595, 0.000092692, -0.019453, 0.000053032, -0.00014732];

/**
 * A data sheet for a unit of which only tank, elements and heat pump are known.
 * @param known volume on the plate [L], 70..800; powers [W], 0 or 300..12000 and 300..20000
 * @returns a sheet of the usual shape, with the modes that its sources allow
 * @source common practice of such units, no one of them; shape 2.7 diameters high, 0.73 W/(m2 K), 90 % of the plate
 * @limits a named model says all of this better; losses and sensor heights of one unit may differ by a third
 */
export function buildGenericUnit({ nominal_L, element_W, heatPump_W }: GenericUnit): WaterHeater {
  const tank = shapeTank(nominal_L * MEASURED_SHARE);
  const hasElements = element_W > 0;
  return {
    id: "generic",
    source: USUAL_UNIT,
    tank,
    elements: hasElements ? pairOfElements(tank.height_m, element_W) : [],
    ...(heatPump_W > 0 && { heatPump: shapeHeatPump(tank.height_m, heatPump_W) }),
    controls: {
      sensors: { upper_m: 0.75 * tank.height_m, lower_m: 0.3 * tank.height_m },
      deadBand_K: { upper: 5, lower: 6 },
      standby_W: heatPump_W > 0 ? 3 : 0,
      interlocks: hasElements ? [["upper", "lower"]] : [],
      setpoint_C: heatPump_W > 0 ? [35, 62] : [32, 65],
      policies: modesOf(hasElements, heatPump_W > 0),
    },
  };
}

/** Supplies that a unit of no named model is taken to be made for [V]. */
export function usualSupplies_V(element_W: number): readonly [number, ...number[]] {
  return element_W > 0 ? WITH_ELEMENTS_V : WITHOUT_ELEMENTS_V;
}

function shapeTank(volume_L: number): TankSheet {
  const volume_m3 = volume_L / 1000;
  const diameter_m = Math.cbrt((4 * volume_m3) / (Math.PI * SLENDERNESS));
  const height_m = SLENDERNESS * diameter_m;
  const surface_m2 = Math.PI * diameter_m * height_m + (Math.PI * diameter_m ** 2) / 2;
  return { volume_L, height_m, heatLoss_W_K: LOSS_W_m2_K * surface_m2, stirredByInlet: 0.2 };
}

function pairOfElements(height_m: number, rated_W: number): readonly ElementSheet[] {
  return [
    { place: "upper", height_m: 0.7 * height_m, rated_W, rated_V: ELEMENT_V },
    { place: "lower", height_m: 0.13 * height_m, rated_W, rated_V: ELEMENT_V },
  ];
}

function shapeHeatPump(height_m: number, ratedHeat_W: number): HeatPumpSheet {
  return {
    ratedHeat_W,
    ratedCop: 3.4,
    ratingPoint: { wetBulb_C: 13.56, water_C: 50 },
    heatCurve: HEAT_CURVE,
    copCurve: COP_CURVE,
    fitted: { wetBulb_C: [0, 27.5], water_C: [10, 65] },
    fan_W: 18,
    airflow_m3_s: 0.1,
    coilBypass: 0.2,
    airLimits: { lowest_C: 3, highest_C: 49, comeBack_K: 2 },
    waterLimit: { highest_C: 62, comeBack_K: 3 },
    shortestRun_s: 600,
    shortestRest_s: 300,
    condenser: { from_m: 0.04 * height_m, to_m: 0.62 * height_m, kind: "wrapped", approach_K: 6 },
  };
}

function modesOf(hasElements: boolean, hasHeatPump: boolean): readonly PolicyId[] {
  if (!hasHeatPump) return ["elements_only"];
  return hasElements
    ? ["heat_pump_first", "heat_pump_only", "both_together", "elements_only", "away_hold"]
    : ["heat_pump_only", "away_hold"];
}
