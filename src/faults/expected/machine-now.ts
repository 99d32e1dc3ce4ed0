import type { HeatPumpSheet } from "../../equipment/water-heater.ts";
import type { CoilAir } from "../../physics/cooling-coil.ts";
import { askMap, type HeatPumpMap, prepareMap, setAir } from "../../physics/heat-pump.ts";
import { humidityRatioFromRelativeHumidity, wetBulb_C } from "../../physics/moist-air.ts";
import { ATMOSPHERE_kPa } from "../../physics/water.ts";
import type { ExpectedFacts } from "./known.ts";

/** The heat pump at the air that it breathes now. */
export interface MachineNow {
  readonly sheet: HeatPumpSheet;
  readonly air: CoilAir;
  readonly map: HeatPumpMap;
}
/** What it does at one water temperature. */
export interface Working {
  readonly heat_W: number;
  readonly compressor_W: number;
}

/**
 * The heat pump of the unit at the air measured.
 * @param known unit, air temperature and humidity
 * @returns nothing when one of them is not known, or where this air bars the compressor
 */
export function machineNow({ unit, air_C, airHumidity, airPressure_kPa }: ExpectedFacts): MachineNow | undefined {
  const sheet = unit?.heatPump;
  if (sheet === undefined || air_C === undefined || airHumidity === undefined) return undefined;
  if (air_C < sheet.airLimits.lowest_C || air_C > sheet.airLimits.highest_C) return undefined;
  const pressure_kPa = airPressure_kPa ?? ATMOSPHERE_kPa;
  const humidityRatio = humidityRatioFromRelativeHumidity(air_C, airHumidity, pressure_kPa);
  const map = prepareMap(sheet);
  setAir(map, wetBulb_C(air_C, humidityRatio, pressure_kPa));
  return { sheet, air: { dryBulb_C: air_C, humidityRatio, pressure_kPa }, map };
}

/** What the machine does with the water at its condenser at this temperature [°C]. */
export function workAt({ map }: MachineNow, water_C: number): Working {
  map.water_C = water_C;
  askMap(map);
  return { heat_W: map.heat_W, compressor_W: map.compressor_W };
}
