import { cell } from "./cell.ts";
import { HEAT_PUMP, LOWER, UPPER } from "./control.ts";
import type { DrawRecords } from "./draw-flow.ts";
import type { Draws } from "./draw-list.ts";
import type { Engine } from "./engine.ts";
import { meanTemperature_C, topTemperature_C } from "./tank-state.ts";

/** A run in numbers. */
export interface RunSummary {
  readonly duration_s: number;
  /** Everything the meter saw, and its parts [kWh]. */
  readonly electricity_kWh: number;
  readonly compressor_kWh: number;
  readonly fan_kWh: number;
  readonly elements_kWh: number;
  readonly standby_kWh: number;
  /** Heat put into the water by each [kWh]. */
  readonly heatPumpHeat_kWh: number;
  readonly elementHeat_kWh: number;
  /** Heat carried out by drawn water, above the inlet temperature of the moment [kWh]. */
  readonly delivered_kWh: number;
  readonly lost_kWh: number;
  /** Heat delivered over all electricity [-]; 0 where none was used. */
  readonly systemCop: number;
  /** Heat into the water over all electricity [-]; 0 where none was used. */
  readonly heatingCop: number;
  /** Hot water that left the tank, and mixed water at the fixtures [L]. */
  readonly hot_L: number;
  readonly atFixtures_L: number;
  /** Water delivered below what was wanted [L], and the number of draws that had some. */
  readonly shortfall_L: number;
  readonly shortDraws: number;
  /** Coldest moment of any draw [C]; NaN-free: the outlet temperature where nothing was drawn. */
  readonly lowestDelivered_C: number;
  /** Running time [s] and starts of each source. */
  readonly heatPumpRan_s: number;
  readonly upperRan_s: number;
  readonly lowerRan_s: number;
  readonly heatPumpStarts: number;
  /** Time for which the compressor was barred by air or water [s]. */
  readonly barredByCold_s: number;
  readonly barredByHot_s: number;
  readonly barredByWater_s: number;
  /** Running time outside the fitted range of the performance map [s]. */
  readonly clamped_s: number;
  /** Heat taken from the drawn air, less the fan's [kWh], and water condensed out of it [kg]. */
  readonly takenFromAir_kWh: number;
  readonly condensate_kg: number;
  /** At the end of the run [C]. */
  readonly outletAtEnd_C: number;
  readonly meanAtEnd_C: number;
  readonly steps: number;
}

const J_PER_kWh = 3.6e6;

export function summariseRun(engine: Engine, draws: Draws, records: DrawRecords): RunSummary {
  const { ledger, switches, tank } = engine;
  const electricity_J = ledger.compressor_J + ledger.fan_J + ledger.elementHeat_J + ledger.standby_J;
  const delivered_J = ledger.drawnOut_J - ledger.broughtIn_J;
  const perElectricity = (heat_J: number) => (electricity_J > 0 ? heat_J / electricity_J : 0);
  const outlet_C = topTemperature_C(tank);
  return {
    duration_s: engine.now_s,
    electricity_kWh: electricity_J / J_PER_kWh,
    compressor_kWh: ledger.compressor_J / J_PER_kWh,
    fan_kWh: ledger.fan_J / J_PER_kWh,
    elements_kWh: ledger.elementHeat_J / J_PER_kWh,
    standby_kWh: ledger.standby_J / J_PER_kWh,
    heatPumpHeat_kWh: ledger.heatPumpHeat_J / J_PER_kWh,
    elementHeat_kWh: ledger.elementHeat_J / J_PER_kWh,
    delivered_kWh: delivered_J / J_PER_kWh,
    lost_kWh: ledger.lost_J / J_PER_kWh,
    systemCop: perElectricity(delivered_J),
    heatingCop: perElectricity(ledger.elementHeat_J + ledger.heatPumpHeat_J),
    hot_L: ledger.drawn_L,
    ...summariseDraws(draws, records, outlet_C),
    heatPumpRan_s: cell(ledger.ran_s, HEAT_PUMP),
    upperRan_s: cell(ledger.ran_s, UPPER),
    lowerRan_s: cell(ledger.ran_s, LOWER),
    heatPumpStarts: cell(switches.starts, HEAT_PUMP),
    barredByCold_s: ledger.barredByCold_s,
    barredByHot_s: ledger.barredByHot_s,
    barredByWater_s: ledger.barredByWater_s,
    clamped_s: ledger.clamped_s,
    takenFromAir_kWh: ledger.taken_J / J_PER_kWh,
    condensate_kg: ledger.condensed_kg,
    outletAtEnd_C: outlet_C,
    meanAtEnd_C: meanTemperature_C(tank),
    steps: ledger.steps,
  };
}

function summariseDraws(draws: Draws, records: DrawRecords, outlet_C: number) {
  let atFixtures_L = 0;
  let shortfall_L = 0;
  let shortDraws = 0;
  let lowest_C = draws.count > 0 ? Number.POSITIVE_INFINITY : outlet_C;
  for (let i = 0; i < draws.count; i += 1) {
    atFixtures_L += cell(draws.volume_L, i);
    shortfall_L += cell(records.short_L, i);
    if (cell(records.short_L, i) > 0) shortDraws += 1;
    lowest_C = Math.min(lowest_C, cell(records.lowest_C, i));
  }
  return { atFixtures_L, shortfall_L, shortDraws, lowestDelivered_C: lowest_C };
}
