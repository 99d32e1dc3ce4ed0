/**
 * Expansion tanks, US units: gallons, °F, psi gauge.
 *
 * FULL_FORMULA: ASHRAE diaphragm tank equation (HVAC Systems and Equipment, hydronic chapter) worked with IAPWS-IF97
 * saturated-liquid volumes, 14.696 psi of atmosphere, steel 6.5e-6 per °F; computed, tolerance 0.1 %.
 * ACCEPTANCE: R. W. Griffith, Thermal Expansion Tanks, part 2 (2015), worked example; published, tolerance 0.01 gal.
 * GROWTH_50: published on an engineering calculation page, "roughly 0.84 gal" for 50 gal from 50 to 140 °F.
 */
export interface FullFormulaRow {
  readonly name: string;
  readonly system_gal: number;
  readonly cold_F: number;
  readonly hot_F: number;
  readonly line_psi: number;
  readonly ceiling_psi: number;
  readonly expanded_gal: number;
  readonly lessMetal_gal: number;
  readonly tank_gal: number;
  readonly tankLessMetal_gal: number;
}

const row = (
  name: string,
  [system_gal, cold_F, hot_F, line_psi, ceiling_psi]: readonly [number, number, number, number, number],
  [expanded_gal, lessMetal_gal, tank_gal, tankLessMetal_gal]: readonly [number, number, number, number],
): FullFormulaRow => ({
  name,
  system_gal,
  cold_F,
  hot_F,
  line_psi,
  ceiling_psi,
  expanded_gal,
  lessMetal_gal,
  tank_gal,
  tankLessMetal_gal,
});

export const FULL_FORMULA: readonly FullFormulaRow[] = [
  row("B", [50, 40, 140, 60, 150], [0.85177, 0.75427, 1.55871, 1.38029]),
  row("C", [50, 50, 140, 60, 135], [0.83803, 0.75028, 1.67266, 1.49752]),
  row("D", [80, 50, 140, 80, 135], [1.34085, 1.20045, 3.64944, 3.26731]),
  row("E", [66, 40, 140, 60, 125], [1.12434, 0.99564, 2.4164, 2.1398]),
  row("F", [50, 50, 120, 60, 80], [0.56384, 0.49559, 2.66966, 2.34651]),
];

export const ACCEPTANCE = {
  acceptance_gal: 2,
  line_psia: 94.7,
  ceiling_psia: 149.7,
  atmosphere_psi: 14.7,
  tank_gal: 5.44,
};

export const GROWTH_50 = { system_gal: 50, cold_F: 50, hot_F: 140, expanded_gal: 0.84 };
