/**
 * Branch circuits.
 *
 * AMPACITY: NEC 2023 Table 310.16, up to three conductors, 30 °C; copper 60/75/90 °C, aluminium 60/75/90 °C.
 * SMALL_LIMITS: NEC 240.4(D). BREAKERS: NEC 2023 240.6(A).
 * RESISTANCE: NEC Chapter 9 Table 8, stranded, uncoated, 75 °C, ohm per 1000 ft.
 * CIRCUITS: NEC 422.13 and 422.11(E)(3), worked in published questions and answers (4500 W and 5500 W at 240 V).
 * RECOVERIES: trade recovery table for electric elements, gallons an hour, every cell worked again as W 3.412 / (8.33 Δt).
 * DROPS: 2 I R L / 1000 on Table 8; computed. ELEMENTS: Ohm's law; 208 V rows also in a trade capacity table.
 */
type Ampacity = number | undefined;

export const AMPACITY: readonly (readonly [string, readonly [number, number, number], readonly Ampacity[]])[] = [
  ["14", [15, 20, 25], [undefined, undefined, undefined]],
  ["12", [20, 25, 30], [15, 20, 25]],
  ["10", [30, 35, 40], [25, 30, 35]],
  ["8", [40, 50, 55], [35, 40, 45]],
  ["6", [55, 65, 75], [40, 50, 55]],
  ["4", [70, 85, 95], [55, 65, 75]],
];

export const SMALL_LIMITS = { copper: { "14": 15, "12": 20, "10": 30 }, aluminium: { "12": 15, "10": 25 } } as const;

export const RESISTANCE: readonly (readonly [string, number, Ampacity])[] = [
  ["14", 3.14, undefined],
  ["12", 1.98, 3.25],
  ["10", 1.24, 2.04],
  ["8", 0.778, 1.28],
  ["6", 0.491, 0.808],
  ["4", 0.308, 0.508],
];

export const BREAKERS = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200] as const;

export const CIRCUITS = [
  { power_W: 4500, volts: 240, load_A: 18.75, design_A: 23.4375, smallest_A: 25, largest_A: 30 },
  { power_W: 5500, volts: 240, load_A: 22.9167, design_A: 28.6458, smallest_A: 30, largest_A: 35 },
] as const;

export const DROPS = [
  { size: "12", load_A: 18.75, run_ft: 100, volts: 240, drop_V: 7.425, percent: 3.094 },
  { size: "10", load_A: 18.75, run_ft: 100, volts: 240, drop_V: 4.65, percent: 1.9375 },
  { size: "8", load_A: 18.75, run_ft: 100, volts: 240, drop_V: 2.9175, percent: 1.2156 },
] as const;

export const ELEMENTS = [
  { rated_W: 4500, rated_V: 240, supply_V: 208, ohm: 12.8, power_W: 3380 },
  { rated_W: 5500, rated_V: 240, supply_V: 208, ohm: 10.4727, power_W: 4131.11 },
  { rated_W: 3000, rated_V: 240, supply_V: 208, ohm: 19.2, power_W: 2253.33 },
  { rated_W: 4500, rated_V: 240, supply_V: 120, ohm: 12.8, power_W: 1125 },
] as const;

/** 4500 W element behind 100 ft of 10 AWG copper, 0.248 ohm there and back, on 240 V; series circuit, tolerance 0.1 W. */
export const BEHIND_WIRE = { ohm: 12.8, supply_V: 240, wire_ohm: 0.248, power_W: 4330.56 };

/** Design current of a 4500 W element rated for 208 V, on 208 V; trade capacity table, tolerance 0.01 A. */
export const RATED_208 = { power_W: 4500, volts: 208, load_A: 21.63, design_A: 27.04 };

export const RECOVERIES = [
  { power_W: 4500, rise_F: 100, gph: 18.4 },
  { power_W: 5500, rise_F: 90, gph: 25 },
  { power_W: 5500, rise_F: 60, gph: 37.6 },
  { power_W: 3000, rise_F: 80, gph: 15.4 },
] as const;
