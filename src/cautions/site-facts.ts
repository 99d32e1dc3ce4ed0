/**
 * What may be known of a site, in base units. Cautions look only at this; topics fill in what their facts tell.
 * Every field is optional: an unknown fact never raises a caution.
 */
export interface SiteFacts {
  readonly storage_C?: number;
  readonly tap_C?: number;
  readonly hasMixingValve?: boolean;
  readonly isClosedSystem?: boolean;
  readonly hasExpansionTank?: boolean;
  /** True: the relief valve is what lets out the growth of the water. */
  readonly expandsThroughRelief?: boolean;
  readonly linePressure_kPa?: number;
  readonly reliefSetting_kPa?: number;
  readonly tank_L?: number;
  readonly elementPower_W?: number;
  readonly supply_V?: number;
  readonly ratedVoltage_V?: number;
  readonly breaker_A?: number;
  /** Continuous load of the circuit with its quarter on top. */
  readonly designCurrent_A?: number;
  /** Largest breaker that load and conductor allow. */
  readonly largestBreaker_A?: number;
  /** Conductor that is there, and what it may carry. */
  readonly wireAmpacity_A?: number;
  readonly voltageDrop_share?: number;
  readonly conductorMetal?: "copper" | "aluminium";
  readonly pipeMetal?: "copper" | "plastic";
  readonly hotPipeVelocity_m_s?: number;
  readonly coldPipeVelocity_m_s?: number;
  /** Temperature of the water in the hot pipe while it runs. */
  readonly hotPipe_C?: number;
  readonly hotPipeContents_L?: number;
  readonly hasCirculationLoop?: boolean;
}
