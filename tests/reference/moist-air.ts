/**
 * Moist air.
 *
 * SATURATION: ASHRAE Handbook - Fundamentals 2017, ch. 1, Table 2 (101.325 kPa): C, kg/kg, kJ/kg; and Table 3: C, Pa; as
 *   the test suite of the open psychrometrics library quotes them; published. The 85 C row is held to 1.1 % (see the test).
 * PRESSURES: the same chapter, Table 1, m and Pa; published.
 * RATING_AIR: 67.5 F with 56.4 F wet bulb, published with residential heat-pump curves; 50 % relative humidity follows.
 * WET_BULBS: 30 C / 25 C at 95461 Pa and -1 C / -5 C at 95461 Pa, worked without enhancement factor in the same suite.
 */
export const SATURATION = [
  { t_C: -50, W: 0.0000243, h_kJ_kg: -50.222, tolerance: 0.001 },
  { t_C: -20, W: 0.0006373, h_kJ_kg: -18.542, tolerance: 0.001 },
  { t_C: -5, W: 0.0024863, h_kJ_kg: 1.164, tolerance: 0.001 },
  { t_C: 5, W: 0.005425, h_kJ_kg: 18.639, tolerance: 0.001 },
  { t_C: 25, W: 0.020173, h_kJ_kg: 76.504, tolerance: 0.001 },
  { t_C: 50, W: 0.086863, h_kJ_kg: 275.353, tolerance: 0.001 },
  { t_C: 85, W: 0.838105, h_kJ_kg: 2307.539, tolerance: 0.011 },
] as const;

export const VAPOUR_PRESSURES = [
  { t_C: -20, p_Pa: 103.24 },
  { t_C: -5, p_Pa: 401.74 },
  { t_C: 5, p_Pa: 872.6 },
  { t_C: 25, p_Pa: 3169.7 },
  { t_C: 50, p_Pa: 12351.3 },
  { t_C: 100, p_Pa: 101418 },
  { t_C: 150, p_Pa: 476101.4 },
] as const;

export const PRESSURES = [
  { altitude_m: -500, p_Pa: 107478 },
  { altitude_m: 0, p_Pa: 101325 },
  { altitude_m: 500, p_Pa: 95461 },
  { altitude_m: 1000, p_Pa: 89875 },
  { altitude_m: 4000, p_Pa: 61640 },
] as const;

export const RATING_AIR = { dryBulb_F: 67.5, wetBulb_F: 56.4, relativeHumidity: 0.5 } as const;

export const WET_BULBS = [
  { t_C: 30, wetBulb_C: 25, p_kPa: 95.461, W: 0.0192281274241096 },
  { t_C: -1, wetBulb_C: -5, p_kPa: 95.461, W: 0.00120399819933844 },
] as const;
