import type { NumberResult } from "../declaration/answer.ts";
import {
  elementCurrent,
  elementResistanceCold,
  leastInsulation,
  mostBondResistance,
  sensorResistance,
  supplyVoltage,
  voltageUnderLoad,
} from "./expected/electrical.ts";
import { airSplit, condensateInAnHour, heatPumpCurrent } from "./expected/heat-pump.ts";
import { energyPerDay, runTimePerDay } from "./expected/household.ts";
import type { ExpectedFacts, ExpectedReading } from "./expected/known.ts";
import { drawToCold, loopRise, tankRiseInAnHour } from "./expected/tank.ts";
import { coldFlow, coldWater, linePressure, pressureRise } from "./expected/water.ts";
import type { Check } from "./knowledge.ts";

/** What computes each expected reading, by the id that checks name it with. */
export const EXPECTED_READINGS: ReadonlyMap<string, ExpectedReading> = new Map([
  ["supply_voltage", supplyVoltage],
  ["voltage_under_load", voltageUnderLoad],
  ["element_resistance_cold", elementResistanceCold],
  ["element_current", elementCurrent],
  ["least_insulation", leastInsulation],
  ["most_bond_resistance", mostBondResistance],
  ["sensor_resistance", sensorResistance],
  ["heat_pump_current", heatPumpCurrent],
  ["air_split", airSplit],
  ["condensate_in_an_hour", condensateInAnHour],
  ["tank_rise_in_an_hour", tankRiseInAnHour],
  ["draw_to_cold", drawToCold],
  ["loop_rise", loopRise],
  ["energy_per_day", energyPerDay],
  ["run_time_per_day", runTimePerDay],
  ["line_pressure", linePressure],
  ["pressure_rise", pressureRise],
  ["cold_water", coldWater],
  ["cold_flow", coldFlow],
]);

/**
 * What a check should read on this unit at this site.
 * @param check a check that takes a reading
 * @param known unit, site and moment
 * @returns the number in its base unit, with equation, inputs and sources; nothing when a fact is missing
 */
export function expectReading({ reading }: Check, known: ExpectedFacts): NumberResult | undefined {
  return reading === undefined ? undefined : EXPECTED_READINGS.get(reading.expected)?.compute(known);
}
