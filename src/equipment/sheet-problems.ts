import type { ElementSheet, HeatPumpSheet, WaterHeater } from "./water-heater.ts";

/** A number on a data sheet that cannot be right, in the sheet's own unit. */
export interface SheetProblem {
  /** Path of the field, such as `heatPump.ratedCop`. */
  readonly field: string;
  readonly value: number;
  readonly min: number;
  readonly max: number;
}

/** Wide bounds that catch slips of the pen, not rare machines. Common practice of this class of equipment. */
const BOUNDS = {
  volume_L: [60, 2000],
  height_m: [0.3, 3],
  heatLoss_W_K: [0, 20],
  stirredByInlet: [0, 0.5],
  conductivity_W_m_K: [0, 20],
  element_W: [300, 12_000],
  element_V: [100, 500],
  ratedHeat_W: [300, 20_000],
  ratedCop: [1, 8],
  wetBulb_C: [-30, 40],
  water_C: [0, 95],
  fan_W: [0, 500],
  airflow_m3_s: [0.01, 5],
  coilBypass: [0, 0.9],
  airLimit_C: [-40, 60],
  comeBack_K: [0.1, 20],
  waterLimit_C: [30, 90],
  approach_K: [0.5, 30],
  wait_s: [0, 3600],
  deadBand_K: [0.5, 30],
  standby_W: [0, 100],
  setpoint_C: [5, 90],
} as const satisfies Record<string, readonly [number, number]>;

type Check = readonly [field: string, value: number, bounds: readonly [number, number]];

/**
 * Everything on a data sheet that is missing, not a number, out of bounds, or at odds with the rest of the sheet.
 * @param unit the sheet
 * @returns problems, none for a sheet that the simulation can run
 */
export function findSheetProblems(unit: WaterHeater): readonly SheetProblem[] {
  const checks = [
    ...tankChecks(unit),
    ...unit.elements.flatMap((element) => elementChecks(element, unit)),
    ...(unit.heatPump ? heatPumpChecks(unit.heatPump, unit) : []),
  ];
  return checks.flatMap(([field, value, [min, max]]) =>
    value >= min && value <= max ? [] : [{ field, value, min, max }],
  );
}

function tankChecks({ tank, controls }: WaterHeater): readonly Check[] {
  const heights = [0, tank.height_m] as const;
  const { upper_m, lower_m } = controls.sensors;
  const [lowest_C, highest_C] = controls.setpoint_C;
  return [
    ["tank.volume_L", tank.volume_L, BOUNDS.volume_L],
    ["tank.height_m", tank.height_m, BOUNDS.height_m],
    ["tank.heatLoss_W_K", tank.heatLoss_W_K, BOUNDS.heatLoss_W_K],
    ["tank.stirredByInlet", tank.stirredByInlet, BOUNDS.stirredByInlet],
    ["tank.conductivity_W_m_K", tank.conductivity_W_m_K ?? 1, BOUNDS.conductivity_W_m_K],
    ["controls.sensors.lower_m", lower_m, heights],
    ["controls.sensors.upper_m", upper_m, [lower_m, tank.height_m]],
    ["controls.deadBand_K.upper", controls.deadBand_K.upper, BOUNDS.deadBand_K],
    ["controls.deadBand_K.lower", controls.deadBand_K.lower, BOUNDS.deadBand_K],
    ["controls.standby_W", controls.standby_W, BOUNDS.standby_W],
    ["controls.setpoint_C[0]", lowest_C, BOUNDS.setpoint_C],
    ["controls.setpoint_C[1]", highest_C, [lowest_C, BOUNDS.setpoint_C[1]]],
  ];
}

function elementChecks(element: ElementSheet, unit: WaterHeater): readonly Check[] {
  const at = `elements.${element.place}`;
  return [
    [`${at}.height_m`, element.height_m, [0, unit.tank.height_m]],
    [`${at}.rated_W`, element.rated_W, BOUNDS.element_W],
    [`${at}.rated_V`, element.rated_V, BOUNDS.element_V],
  ];
}

function heatPumpChecks(sheet: HeatPumpSheet, { tank }: WaterHeater): readonly Check[] {
  const { ratingPoint, fitted, airLimits, waterLimit, condenser } = sheet;
  const curves = [...sheet.heatCurve.entries(), ...sheet.copCurve.entries()];
  return [
    ["heatPump.ratedHeat_W", sheet.ratedHeat_W, BOUNDS.ratedHeat_W],
    ["heatPump.ratedCop", sheet.ratedCop, BOUNDS.ratedCop],
    ["heatPump.fitted.wetBulb_C[0]", fitted.wetBulb_C[0], BOUNDS.wetBulb_C],
    ["heatPump.fitted.wetBulb_C[1]", fitted.wetBulb_C[1], [fitted.wetBulb_C[0], BOUNDS.wetBulb_C[1]]],
    ["heatPump.fitted.water_C[0]", fitted.water_C[0], BOUNDS.water_C],
    ["heatPump.fitted.water_C[1]", fitted.water_C[1], [fitted.water_C[0], BOUNDS.water_C[1]]],
    ["heatPump.ratingPoint.wetBulb_C", ratingPoint.wetBulb_C, fitted.wetBulb_C],
    ["heatPump.ratingPoint.water_C", ratingPoint.water_C, fitted.water_C],
    ...curves.map(([i, c]): Check => [`heatPump curve c${i + 1}`, c, [-10, 10]]),
    ["heatPump.fan_W", sheet.fan_W, BOUNDS.fan_W],
    ["heatPump.airflow_m3_s", sheet.airflow_m3_s, BOUNDS.airflow_m3_s],
    ["heatPump.coilBypass", sheet.coilBypass, BOUNDS.coilBypass],
    ["heatPump.airLimits.lowest_C", airLimits.lowest_C, BOUNDS.airLimit_C],
    ["heatPump.airLimits.highest_C", airLimits.highest_C, [airLimits.lowest_C, BOUNDS.airLimit_C[1]]],
    ["heatPump.airLimits.comeBack_K", airLimits.comeBack_K, BOUNDS.comeBack_K],
    ["heatPump.waterLimit.highest_C", waterLimit.highest_C, BOUNDS.waterLimit_C],
    ["heatPump.waterLimit.comeBack_K", waterLimit.comeBack_K, BOUNDS.comeBack_K],
    ["heatPump.shortestRun_s", sheet.shortestRun_s, BOUNDS.wait_s],
    ["heatPump.shortestRest_s", sheet.shortestRest_s, BOUNDS.wait_s],
    ["heatPump.condenser.from_m", condenser.from_m, [0, tank.height_m]],
    ["heatPump.condenser.to_m", condenser.to_m, [condenser.from_m + 0.05, tank.height_m]],
    ["heatPump.condenser.approach_K", condenser.approach_K, BOUNDS.approach_K],
  ];
}
