import type { NumberResult } from "../../declaration/answer.ts";
import type { ElementPlace, WaterHeater } from "../../equipment/water-heater.ts";
import type { Thermistor } from "../../physics/thermistor.ts";
import type { QuantityKind } from "../../units/quantity-kinds.ts";

/** What is known of the unit, the site and the moment of a reading; whatever is not known is left out. */
export interface ExpectedFacts {
  readonly unit?: WaterHeater;
  /** Supply that the unit's plate asks for here [V]. */
  readonly plate_V?: number;
  /** Supply measured at the unit at rest [V]. */
  readonly supply_V?: number;
  /** Element that is measured; needed where the two differ. */
  readonly element?: ElementPlace;
  /** Sensor by its sheet; the usual one where nobody knows. */
  readonly sensor?: Thermistor;
  /** Temperature measured where the sensor sits [°C]. */
  readonly sensor_C?: number;
  /** Air at the intake [°C] and its relative humidity [share]. */
  readonly air_C?: number;
  readonly airHumidity?: number;
  readonly airPressure_kPa?: number;
  /** Airflow measured, where it is not the sheet's [m3/s]. */
  readonly airflow_m3_s?: number;
  /** Water at the condenser now [°C]. */
  readonly water_C?: number;
  readonly cold_C?: number;
  readonly setpoint_C?: number;
  /** What heats while it is watched. */
  readonly running?: "elements" | "heat_pump";
  /** Hot water that the household draws in a day, as it leaves the tank [L]. */
  readonly hotUse_L?: number;
  /** Flow of the draw trial, of the cold at the same tap, and of the loop [L/s]. */
  readonly draw_L_s?: number;
  readonly coldFlow_L_s?: number;
  readonly loop_L_s?: number;
  /** Line pressure and relief setting, gauge [kPa]. */
  readonly line_kPa?: number;
  readonly relief_kPa?: number;
  readonly expansion?: ExpansionSite;
}

/** Where heated water can go: back to the street, nowhere, or into a tank. */
export type ExpansionSite =
  | { readonly kind: "open" }
  | { readonly kind: "closed" }
  | { readonly kind: "tank"; readonly tank_L: number; readonly precharge_kPa: number };

/** A reading that can be computed: its quantity, and the number with its equation and sources. */
export interface ExpectedReading {
  readonly quantity: QuantityKind;
  /** Nothing when a fact is missing: then there are only outcomes to pick. */
  readonly compute: (known: ExpectedFacts) => NumberResult | undefined;
}
