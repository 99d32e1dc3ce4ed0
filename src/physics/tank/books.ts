/** Running totals of one run. Heat is counted from water at 0 C, so that flows and storage share one zero. */
export interface Ledger {
  elementHeat_J: number;
  heatPumpHeat_J: number;
  compressor_J: number;
  fan_J: number;
  standby_J: number;
  lost_J: number;
  /** Heat carried in by cold water and out by hot water [J]. */
  broughtIn_J: number;
  drawnOut_J: number;
  drawn_L: number;
  condensed_kg: number;
  taken_J: number;
  /** Running times [s]. */
  readonly ran_s: Float64Array;
  /** Time for which the compressor was barred while the unit was awake: by cold air, hot air, hot water [s]. */
  barredByCold_s: number;
  barredByHot_s: number;
  barredByWater_s: number;
  /** Running time outside the fitted range of the performance map [s]. */
  clamped_s: number;
  steps: number;
}

export function openLedger(sources: number): Ledger {
  return {
    elementHeat_J: 0,
    heatPumpHeat_J: 0,
    compressor_J: 0,
    fan_J: 0,
    standby_J: 0,
    lost_J: 0,
    broughtIn_J: 0,
    drawnOut_J: 0,
    drawn_L: 0,
    condensed_kg: 0,
    taken_J: 0,
    ran_s: new Float64Array(sources),
    barredByCold_s: 0,
    barredByHot_s: 0,
    barredByWater_s: 0,
    clamped_s: 0,
    steps: 0,
  };
}

/** The energy books of a run: everything that went into the water, came out, and stayed. */
export interface EnergyBooks {
  readonly heatedIn_kWh: number;
  readonly broughtIn_kWh: number;
  readonly drawnOut_kWh: number;
  readonly lost_kWh: number;
  readonly storedMore_kWh: number;
  /** In less out less lost less stored [kWh]: zero but for rounding. */
  readonly gap_kWh: number;
  /** The gap as a share of all heat that passed [-]; a run whose share is over `GAP_LIMIT` is refused. */
  readonly gapShare: number;
}

export const GAP_LIMIT = 1e-9;
/** A run in which less than this passed is judged as if this had: one litre drawn warm is fifty times as much [J]. */
const LEAST_PASSED_J = 1000;
const J_PER_kWh = 3.6e6;

/**
 * Closes the books of a run.
 * @param ledger totals
 * @param storedAtStart_J heat in the tank at the start [J]
 * @param storedAtEnd_J heat in the tank at the end [J]
 * @throws if the gap is more than 1e-9 of the heat that passed, which would be an error of this program
 * @source first law: heated in + brought in - drawn out - lost - stored more = 0
 */
export function closeBooks(ledger: Ledger, storedAtStart_J: number, storedAtEnd_J: number): EnergyBooks {
  const heatedIn_J = ledger.elementHeat_J + ledger.heatPumpHeat_J;
  const storedMore_J = storedAtEnd_J - storedAtStart_J;
  const gap_J = heatedIn_J + ledger.broughtIn_J - ledger.drawnOut_J - ledger.lost_J - storedMore_J;
  const passed_J = heatedIn_J + Math.abs(ledger.broughtIn_J) + Math.abs(ledger.drawnOut_J) + Math.abs(ledger.lost_J);
  const gapShare = Math.abs(gap_J) / Math.max(passed_J, LEAST_PASSED_J);
  if (!(gapShare <= GAP_LIMIT)) throw new Error(`energy books do not close: ${gap_J} J of ${passed_J} J`);
  return {
    heatedIn_kWh: heatedIn_J / J_PER_kWh,
    broughtIn_kWh: ledger.broughtIn_J / J_PER_kWh,
    drawnOut_kWh: ledger.drawnOut_J / J_PER_kWh,
    lost_kWh: ledger.lost_J / J_PER_kWh,
    storedMore_kWh: storedMore_J / J_PER_kWh,
    gap_kWh: gap_J / J_PER_kWh,
    gapShare,
  };
}
