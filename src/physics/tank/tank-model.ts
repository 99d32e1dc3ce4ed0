import type { TankSheet } from "../../equipment/water-heater.ts";
import { requireWithin } from "../require-within.ts";

/** Density and heat capacity of the water in a run, both held constant. */
export interface WaterHeat {
  readonly density_kg_L: number;
  readonly specificHeat_J_kg_K: number;
}

/**
 * Water as domestic hot water studies take it: 8.293752 lb/gal and 1.000743 Btu/(lb F).
 * Constant values are a simplification: from 10 to 60 C the true product of density and heat capacity falls by 2 %.
 * @source LBNL hot water methodology (Lutz and others, 1996), constants
 */
export const STUDY_WATER: WaterHeat = { density_kg_L: 0.993795, specificHeat_J_kg_K: 4189.9 };

/** Conductivity of water [W/(m K)]. Published for stratified tank models (AixLib, layer conduction). */
const WATER_W_m_K = 0.64;
/** Steel wall that carries heat down the side: conductivity and thickness. From memory for enamelled steel tanks. */
const STEEL_W_m_K = 50;
const WALL_m = 0.0025;

/** A tank cut into equal layers, with everything about it that does not change while it runs. */
export interface TankModel {
  readonly layers: number;
  readonly volume_L: number;
  readonly height_m: number;
  readonly layer_L: number;
  /** Heat that warms one full layer by one kelvin [J/K]. */
  readonly layer_J_K: number;
  /** Conductance between the centres of two full neighbouring layers [W/K]. */
  readonly exchange_W_K: number;
  /** Loss of one full layer through the side, and of either end through its disc [W/K]. */
  readonly side_W_K: number;
  readonly end_W_K: number;
  /** Whole slugs that the inlet stirs beside the one that comes in; the zone is half a layer deeper on average. */
  readonly stirredSlugs: number;
  /** Heat of one litre for each kelvin [J/(L K)]. */
  readonly water_J_L_K: number;
}

/**
 * Cuts a tank into layers.
 * @param sheet the tank on the data sheet
 * @param layers number of layers, 1..240; 12 is what the product runs
 * @param water density and heat capacity to use
 * @returns the model; the whole-tank loss is shared out by area, side and both ends at the same loss by area
 * @source geometry of an upright cylinder; conduction k A / dx; wall conduction k 4 s / D referred to the water's area
 * @limits heat held by the steel itself (about 3 % of the water's) is left out
 */
export function buildTankModel(sheet: TankSheet, layers: number, water: WaterHeat): TankModel {
  requireWithin("layers", layers, 1, 240);
  const area_m2 = sheet.volume_L / LITRES_PER_m3 / sheet.height_m;
  const diameter_m = Math.sqrt((4 * area_m2) / Math.PI);
  const side_m2 = Math.PI * diameter_m * sheet.height_m;
  const loss_W_m2_K = sheet.heatLoss_W_K / (side_m2 + 2 * area_m2);
  const conductivity_W_m_K = sheet.conductivity_W_m_K ?? WATER_W_m_K + (STEEL_W_m_K * 4 * WALL_m) / diameter_m;
  const water_J_L_K = water.density_kg_L * water.specificHeat_J_kg_K;
  return {
    layers,
    volume_L: sheet.volume_L,
    height_m: sheet.height_m,
    layer_L: sheet.volume_L / layers,
    layer_J_K: (water_J_L_K * sheet.volume_L) / layers,
    exchange_W_K: (conductivity_W_m_K * area_m2 * layers) / sheet.height_m,
    side_W_K: (loss_W_m2_K * side_m2) / layers,
    end_W_K: loss_W_m2_K * area_m2,
    stirredSlugs: Math.max(0, Math.round(sheet.stirredByInlet * layers - 0.5)),
    water_J_L_K,
  };
}

const LITRES_PER_m3 = 1000;
