/** The few calls of psychrolib 1.1.1 that the tests use; the package has no types of its own. SI: C, Pa, kg/kg, J/kg. */
declare module "psychrolib" {
  interface PsychroLib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetVapPresFromRelHum(dryBulb_C: number, relativeHumidity: number): number;
    GetHumRatioFromVapPres(vapour_Pa: number, pressure_Pa: number): number;
    GetMoistAirEnthalpy(dryBulb_C: number, humidityRatio: number): number;
    GetMoistAirVolume(dryBulb_C: number, humidityRatio: number, pressure_Pa: number): number;
    GetTWetBulbFromRelHum(dryBulb_C: number, relativeHumidity: number, pressure_Pa: number): number;
    GetTDewPointFromRelHum(dryBulb_C: number, relativeHumidity: number): number;
  }
  const psychrolib: PsychroLib;
  export default psychrolib;
}
