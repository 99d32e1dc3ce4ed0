/**
 * Performance curves of heat-pump water heaters: f = c1 + c2 x + c3 x² + c4 y + c5 y² + c6 x y, x wet bulb, y water, C.
 *
 * SET_A: national-lab residential model, rated at 67.5 F dry and 56.4 F wet bulb; coefficients published. A_VALUES: [wet
 *   bulb, water, heat, COP]; arithmetic on them, held to 1e-3.
 * SET_B: whole-building engine example input: 4000 W, COP 3.2, 22.22 C wet bulb, 55.72 C water; coefficients published.
 *   It is 0.992 and 0.968 at its own rating point, not 1.
 * FIRST_LAW: 4000 W of heat at COP 3.2 takes 1250 W of power and 2750 W from the air; exact.
 * UNIT_RANGES: sizes from general knowledge of lab reports; from memory.
 */
export const SET_A = {
  heat: [0.563, 0.0437, 0.000039, 0.0055, -0.000148, -0.000145],
  cop: [1.1332, 0.063, -0.0000979, -0.00972, -0.0000214, -0.000686],
} as const;

export const A_VALUES = [
  [13.5556, 50, 0.9693, 0.9648],
  [13.5556, 60, 0.8418, 0.751],
  [5, 50, 0.6512, 0.7348],
  [20, 50, 1.2126, 1.1285],
  [5, 30, 0.7925, 1.032],
] as const;

export const SET_B = {
  heat: [0.369827, 0.043341, -0.00023, 0.000466, 0.000026, -0.00027],
  cop: [1.19713, 0.077849, -0.0000016, -0.02675, 0.000296, -0.00112],
  rating: { wetBulb_C: 22.22, water_C: 55.72 },
  atRating: { heat: 0.9917, cop: 0.968 },
} as const;

export const FIRST_LAW = { heat_W: 4000, cop: 3.2, power_W: 1250, fromAir_W: 2750 } as const;

export const UNIT_RANGES = { power_W: [300, 1000], cooling_W: [880, 1470], airflow_m3_s: [0.07, 0.24] } as const;
