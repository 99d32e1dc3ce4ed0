import { isClamped } from "../heat-pump.ts";
import { byte, cell } from "./cell.ts";
import { HEAT_PUMP, LOWER, UPPER } from "./control.ts";
import type { CondenserState, Engine } from "./engine.ts";

/** Writes the step that was taken to the books and to what the room was given. */
export function writeStep(engine: Engine): void {
  const { ledger, given, step, exchange, switches, condenser } = engine;
  const { seconds } = step;
  const standby_J = engine.unit.controls.standby_W * seconds;
  ledger.steps += 1;
  ledger.lost_J += exchange.lost_J;
  ledger.standby_J += standby_J;
  given.released_J += exchange.lost_J + standby_J;
  for (let source = UPPER; source <= LOWER; source += 1) {
    if (byte(switches.on, source) === 0) continue;
    ledger.ran_s[source] = cell(ledger.ran_s, source) + seconds;
    ledger.elementHeat_J += cell(engine.power_W, source) * seconds;
  }
  if (condenser === undefined) return;
  if (condenser.isAirCold) ledger.barredByCold_s += seconds;
  if (condenser.isAirHot) ledger.barredByHot_s += seconds;
  if (condenser.isWaterHot) ledger.barredByWater_s += seconds;
  if (byte(switches.on, HEAT_PUMP) === 1) writeHeatPump(engine, condenser);
}

function writeHeatPump(engine: Engine, condenser: CondenserState): void {
  const { ledger, given, step } = engine;
  const fan_J = condenser.sheet.fan_W * step.seconds;
  const evaporator_J = step.heatPumpHeat_J - step.compressor_J;
  const condensed_kg = evaporator_J * condenser.condensate_kg_J;
  ledger.ran_s[HEAT_PUMP] = cell(ledger.ran_s, HEAT_PUMP) + step.seconds;
  ledger.heatPumpHeat_J += step.heatPumpHeat_J;
  ledger.compressor_J += step.compressor_J;
  ledger.fan_J += fan_J;
  ledger.condensed_kg += condensed_kg;
  ledger.taken_J += evaporator_J - fan_J;
  given.taken_J += evaporator_J - fan_J;
  given.condensed_kg += condensed_kg;
  given.ran_s += step.seconds;
  if (isClamped(condenser.map)) ledger.clamped_s += step.seconds;
}
