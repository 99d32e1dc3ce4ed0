/**
 * Properties of liquid water.
 *
 * Source of the first three tables: IAPWS-IF97 (1997), evaluated with an independent open library; computed values.
 * Source of RELEASE_CHECKS and BOILING_CHECKS: IAPWS R7-97(2012), tables 5 and 35, computer-program verification.
 * Source of SR6: IAPWS SR6-08(2011), Properties of Liquid Water at 0.1 MPa, equations 1 and 2, coefficients as
 * transcribed; a different and more exact formulation than IF97.
 * Source of VISCOSITY: IAPWS 2008 viscosity, values at 1 atm and 20, 25, 60 °C printed in common tables (from memory).
 */

/** [°F, ft3/lb] saturated liquid, tolerance 1e-6 ft3/lb. */
export const SATURATED_VOLUMES: readonly (readonly [number, number])[] = [
  [40, 0.0160197],
  [60, 0.016035],
  [80, 0.0160737],
  [100, 0.0161312],
  [110, 0.0161661],
  [130, 0.0162469],
  [140, 0.0162926],
  [150, 0.0163415],
  [160, 0.0163937],
  [170, 0.016449],
  [180, 0.0165074],
];

/** [°F, lb/ft3, Btu/(lb °F)] compressed liquid at 74.696 psia, tolerance 0.01 %. */
export const AT_60_PSIG: readonly (readonly [number, number, number])[] = [
  [70, 62.313, 0.99904],
  [80, 62.2278, 0.99838],
  [90, 62.1248, 0.99798],
  [120, 61.7241, 0.99799],
  [150, 61.2071, 0.99946],
  [160, 61.0123, 1.00027],
  [170, 60.8071, 1.00122],
  [180, 60.592, 1.00233],
];

/** [°F, kg/m3] at one atmosphere, tolerance 0.02 kg/m3. */
export const AT_ONE_ATMOSPHERE: readonly (readonly [number, number])[] = [
  [40, 999.9736],
  [60, 999.0156],
  [100, 993.0544],
  [120, 988.5456],
  [140, 983.2106],
];

/** Growth from 60 to 140 °F, saturated liquid, from the rows above; tolerance 2e-6. */
export const GROWTH_60_TO_140 = 0.0160644;

/** [K, MPa, m3/kg, J/(kg K)] in nine digits. */
export const RELEASE_CHECKS: readonly (readonly [number, number, number, number])[] = [
  [300, 3, 0.100215168e-2, 4173.01218],
];
/** [K, MPa] in nine digits. */
export const BOILING_CHECKS: readonly (readonly [number, number])[] = [[300, 0.353658941e-2]];

/** [°C, µPa s] */
export const VISCOSITY: readonly (readonly [number, number])[] = [
  [20, 1001.6],
  [25, 890.0],
  [60, 466.0],
];

const ALPHA = [
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
] as const;
const BETA = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
] as const;

/** Density [kg/m3] by SR6 at 0.1 MPa. */
export function densityBySr6(temperature_C: number): number {
  const T = temperature_C + 273.15;
  const alpha = 10 / (593 - T);
  const beta = 10 / (T - 232);
  const terms = (list: readonly (readonly [number, number])[], z: number) =>
    list.reduce((sum, [a, n]) => sum + a * z ** n, 0);
  return 1 / (((461.51805 * 10) / 1e5) * (1.93763157e-2 + terms(ALPHA, alpha) + terms(BETA, beta)));
}
