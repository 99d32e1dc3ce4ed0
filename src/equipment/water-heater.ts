import type { Source } from "../declaration/source.ts";
import type { Biquadratic } from "../physics/heat-pump.ts";
import type { PolicyId } from "./policies.ts";

/**
 * What a water heater's data sheet says, as far as the simulation needs it. All heights are measured from the bottom of
 * the water. One sheet, one unit; the company's catalogue is a list of these.
 */
export interface WaterHeater {
  readonly id: string;
  /** Where the sheet comes from; demo units say "invented". */
  readonly source: Source;
  readonly tank: TankSheet;
  /** None in a plug-in unit, otherwise one or two. */
  readonly elements: readonly ElementSheet[];
  /** Absent in a plain resistance tank. */
  readonly heatPump?: HeatPumpSheet;
  readonly controls: ControlSheet;
}

export interface TankSheet {
  /** Measured water volume, not the nominal one on the box [L]. */
  readonly volume_L: number;
  /** Height of the water column [m]. */
  readonly height_m: number;
  /** Heat lost by the whole tank for each kelvin above the air around it [W/K]. */
  readonly heatLoss_W_K: number;
  /** Share of the tank, from the bottom, that incoming water stirs while it flows; 0 is a perfect diffuser. */
  readonly stirredByInlet: number;
  /** Vertical conduction of water and wall together [W/(m K)]; derived from a steel wall where absent. */
  readonly conductivity_W_m_K?: number;
}

export type ElementPlace = "upper" | "lower";
export interface ElementSheet {
  readonly place: ElementPlace;
  readonly height_m: number;
  readonly rated_W: number;
  readonly rated_V: number;
}

/** Heat-pump data at its rating point, how they change, and what the machine refuses to do. */
export interface HeatPumpSheet {
  /** Heat into the water at the rating point [W]. */
  readonly ratedHeat_W: number;
  /** That heat over the compressor's electric power; fan and controls are counted apart [-]. */
  readonly ratedCop: number;
  readonly ratingPoint: { readonly wetBulb_C: number; readonly water_C: number };
  /** How heat and COP change with air wet bulb (x) and water temperature (y); scaled to 1 at the rating point. */
  readonly heatCurve: Biquadratic;
  readonly copCurve: Biquadratic;
  /** Where the curves were fitted. Outside, the nearest edge is used and the time is counted. */
  readonly fitted: { readonly wetBulb_C: Span; readonly water_C: Span };
  readonly fan_W: number;
  readonly airflow_m3_s: number;
  /** Share of the air that bypasses the cold coil as if untouched (decides how much water condenses). */
  readonly coilBypass: number;
  /** Air [dry bulb C] outside which the compressor stays off, and how far it must come back before a restart [K]. */
  readonly airLimits: { readonly lowest_C: number; readonly highest_C: number; readonly comeBack_K: number };
  /** Water at the condenser above which the compressor stays off [C], and how far it must fall before a restart [K]. */
  readonly waterLimit: { readonly highest_C: number; readonly comeBack_K: number };
  readonly shortestRun_s: number;
  readonly shortestRest_s: number;
  readonly condenser: CondenserSheet;
}

/** The stretch of the tank that the condenser heats. */
export interface CondenserSheet {
  readonly from_m: number;
  readonly to_m: number;
  /** Wrapped around the tank, or fed by a pump that blends the water along it. */
  readonly kind: "wrapped" | "pumped";
  /** How far the refrigerant condenses above evenly warm water at the rated heat [K]. */
  readonly approach_K: number;
}

/** Two ends, the lower first. */
export type Span = readonly [lowest: number, highest: number];

export type HeatSource = "heat_pump" | "upper" | "lower";

export interface ControlSheet {
  /** Heights of the two water temperature sensors. */
  readonly sensors: { readonly upper_m: number; readonly lower_m: number };
  /** How far under the setpoint each sensor may fall before it calls for heat [K]. */
  readonly deadBand_K: { readonly upper: number; readonly lower: number };
  /** Always drawn by the electronics [W]. */
  readonly standby_W: number;
  /** Sources that the wiring keeps from running together. */
  readonly interlocks: readonly (readonly [HeatSource, HeatSource])[];
  readonly setpoint_C: Span;
  /** The modes this unit offers. */
  readonly policies: readonly PolicyId[];
}
