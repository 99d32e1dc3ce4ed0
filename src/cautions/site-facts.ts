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
  readonly linePressure_kPa?: number;
  readonly reliefSetting_kPa?: number;
  readonly tank_L?: number;
  readonly elementPower_W?: number;
  readonly supply_V?: number;
  readonly ratedVoltage_V?: number;
  readonly breaker_A?: number;
  readonly voltageDrop_share?: number;
  readonly conductorMetal?: "copper" | "aluminium";
  readonly hotPipeVelocity_m_s?: number;
  readonly hotPipeContents_L?: number;
  readonly hasCirculationLoop?: boolean;
}
