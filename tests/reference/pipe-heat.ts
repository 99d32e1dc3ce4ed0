/**
 * Heat lost by pipes in still air, and cooling.
 *
 * BARE_STEEL: Heating Ventilating Air Conditioning Guide 1941, Table 6, horizontal bare steel pipe in air at 70 °F,
 * Btu/(h ft °F) by the difference to the air; outside diameters of steel pipe 1/2, 3/4 and 1.
 * BRIGHT_COPPER: the same, Table 7, bright copper tube 1/2, 3/4 and 1.
 * WORKED: bare and foam-covered 1/2 in pipe worked by hand in a public newsgroup, film 1.5 Btu/(h ft2 °F), foam
 * 0.021 Btu/(h ft °F): resistance of one foot in h °F/Btu.
 * COOLING: exact e^(-t/τ) of 50 gal with 3 Btu/(h °F), 125 °F in air at 67.5 °F, τ = 138.833 h; computed.
 * FOAM_R3: R-3 is asked from 3/4 in up by IECC 2021 R403.5.2.
 */
export const BARE_STEEL = [
  { outside_in: 0.84, above_F: 50, loss: 0.455 },
  { outside_in: 0.84, above_F: 80, loss: 0.495 },
  { outside_in: 0.84, above_F: 110, loss: 0.546 },
  { outside_in: 1.05, above_F: 50, loss: 0.555 },
  { outside_in: 1.05, above_F: 80, loss: 0.605 },
  { outside_in: 1.05, above_F: 110, loss: 0.666 },
  { outside_in: 1.315, above_F: 50, loss: 0.684 },
  { outside_in: 1.315, above_F: 80, loss: 0.743 },
] as const;

export const BRIGHT_COPPER = [
  { outside_in: 0.625, above_F: 50, loss: 0.18 },
  { outside_in: 0.625, above_F: 80, loss: 0.21 },
  { outside_in: 0.875, above_F: 50, loss: 0.236 },
  { outside_in: 0.875, above_F: 80, loss: 0.275 },
  { outside_in: 1.125, above_F: 50, loss: 0.29 },
  { outside_in: 1.125, above_F: 80, loss: 0.338 },
] as const;

export const WORKED = { bare: 4.1, foam: 7.8 };

export const COOLING = [
  { hours: 1, left_F: 124.5873 },
  { hours: 6, left_F: 122.5679 },
] as const;
export const COOLING_CASE = { from_F: 125, air_F: 67.5, constant_h: 138.833 };

/** W/(m K) in one Btu/(h ft °F). */
export const BTU_H_FT_F = 1.730735;
