import { cell } from "./cell.ts";
import { HEAT_PUMP, LOWER, SOURCES, UPPER } from "./control.ts";
import type { Engine } from "./engine.ts";
import { topTemperature_C, writeLayers } from "./tank-state.ts";

/**
 * What happened, on a grid of equal intervals: temperatures at each interval's end, everything else summed over it.
 * Made once by `makeTrace` and written by `simulate`; may be used again for a run of the same length.
 */
export interface Trace {
  readonly every_s: number;
  readonly count: number;
  /** Layers for each interval; 0 where layer temperatures were not asked for. */
  readonly layers: number;
  readonly outlet_C: Float64Array;
  /** Layer temperatures, bottom first, `layers` values for each interval [C]. */
  readonly layers_C: Float64Array;
  /** Hot water taken from the tank [L]. */
  readonly drawn_L: Float64Array;
  readonly electricity_kWh: Float64Array;
  readonly heatPump_kWh: Float64Array;
  readonly elements_kWh: Float64Array;
  /** Share of the interval for which each source ran. */
  readonly heatPumpOn: Float64Array;
  readonly upperOn: Float64Array;
  readonly lowerOn: Float64Array;
}

/**
 * Makes room for a trace.
 * @param duration_s length of the run [s]
 * @param every_s length of one interval [s]; each interval's end is also a step's end
 * @param layers layer temperatures to keep, the engine's number of layers, or 0 for none
 */
export function makeTrace(duration_s: number, every_s: number, layers = 0): Trace {
  const count = Math.ceil(duration_s / every_s - 1e-9);
  const column = () => new Float64Array(count);
  return {
    every_s,
    count,
    layers,
    outlet_C: column(),
    layers_C: new Float64Array(count * layers),
    drawn_L: column(),
    electricity_kWh: column(),
    heatPump_kWh: column(),
    elements_kWh: column(),
    heatPumpOn: column(),
    upperOn: column(),
    lowerOn: column(),
  };
}

/** Totals of the ledger when the present interval began. */
export interface TraceMark {
  drawn_L: number;
  heatPump_J: number;
  elements_J: number;
  standby_J: number;
  readonly ran_s: Float64Array;
}

const J_PER_kWh = 3.6e6;

/** Writes interval number `i`, which ends now, and marks where the next begins. */
export function writeTrace(trace: Trace, i: number, engine: Engine, mark: TraceMark): void {
  const { ledger } = engine;
  const heatPump_J = ledger.compressor_J + ledger.fan_J;
  trace.outlet_C[i] = topTemperature_C(engine.tank);
  if (trace.layers > 0) writeLayers(engine.tank, trace.layers_C, i * trace.layers);
  trace.drawn_L[i] = ledger.drawn_L - mark.drawn_L;
  trace.heatPump_kWh[i] = (heatPump_J - mark.heatPump_J) / J_PER_kWh;
  trace.elements_kWh[i] = (ledger.elementHeat_J - mark.elements_J) / J_PER_kWh;
  const standby_kWh = (ledger.standby_J - mark.standby_J) / J_PER_kWh;
  trace.electricity_kWh[i] = cell(trace.heatPump_kWh, i) + cell(trace.elements_kWh, i) + standby_kWh;
  trace.heatPumpOn[i] = (cell(ledger.ran_s, HEAT_PUMP) - cell(mark.ran_s, HEAT_PUMP)) / trace.every_s;
  trace.upperOn[i] = (cell(ledger.ran_s, UPPER) - cell(mark.ran_s, UPPER)) / trace.every_s;
  trace.lowerOn[i] = (cell(ledger.ran_s, LOWER) - cell(mark.ran_s, LOWER)) / trace.every_s;
  mark.drawn_L = ledger.drawn_L;
  mark.heatPump_J = heatPump_J;
  mark.elements_J = ledger.elementHeat_J;
  mark.standby_J = ledger.standby_J;
  mark.ran_s.set(ledger.ran_s);
}

export function makeTraceMark(): TraceMark {
  return { drawn_L: 0, heatPump_J: 0, elements_J: 0, standby_J: 0, ran_s: new Float64Array(SOURCES) };
}
