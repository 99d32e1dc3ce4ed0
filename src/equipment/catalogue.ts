import type { WaterHeater } from "./water-heater.ts";

export const MODEL_KINDS = ["integrated", "split", "plug_in", "resistance"] as const;
export type ModelKind = (typeof MODEL_KINDS)[number];

/** One model of a company's catalogue: the sheet that is simulated, and what decides whether it fits a site. */
export interface CatalogueModel {
  /** What people type. */
  readonly id: string;
  readonly name: string;
  readonly kind: ModelKind;
  /** Volume on the box [L]; the measured volume stands in the sheet. */
  readonly nominal_L: number;
  readonly heater: WaterHeater;
  readonly body: Body;
  readonly circuit: Circuit;
  /** Smallest closed room that the sheet asks for without grilles or ducts [m3]; none for split and resistance units. */
  readonly smallestRoom_m3?: number;
  /** Sound pressure at one metre with the compressor running [dBA]; none without a compressor. */
  readonly sound_dBA?: number;
  /** How often the mode or setpoint may be changed by a schedule in a day. */
  readonly changesADay: number;
  /** Price of the unit, and of putting it in [US dollars]. */
  readonly price: { readonly unit_usd: number; readonly installation_usd: number };
  readonly displayCodes: readonly DisplayCode[];
}

export interface Body {
  readonly height_m: number;
  /** Widest horizontal measure; what must go through the doors on the way in. */
  readonly width_m: number;
  readonly emptyMass_kg: number;
  /** Free height over the unit for the anode rod and the air filter. */
  readonly clearanceAbove_m: number;
}

export interface Circuit {
  /** Supplies that the unit is made for [V]. */
  readonly supplies_V: readonly [number, ...number[]];
  /** Breaker that the plate asks for [A]. */
  readonly breaker_A: number;
}

/** A code of the unit's display and what the company's own book says it means. */
export interface DisplayCode {
  readonly code: string;
  readonly meaning: string;
}
