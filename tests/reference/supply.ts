/**
 * Fixture units and demand, US units.
 *
 * LOADS: IPC 2018 Table E103.3(2), private use, cold, hot and total, read in a copy.
 * IPC_DEMAND: IPC 2018 Table E103.3(3); rows as an engineering reference prints them.
 * IPC_REMEMBERED: further rows of the same table, from memory.
 * HUNTER_DEMAND: National Standard Plumbing Code, Table B.5.4, as published online.
 * HEAD: IPC 2018 E103.2.2, a fixture 20 ft up loses 8.66 psi; tolerance 0.2 %.
 * NEEDED: IPC 2018 Table 604.3, flow pressure in psi, read in a copy.
 */
export const LOADS = [
  { fixture: "bath_groups", flush: "tank", cold: 2.7, hot: 1.5, total: 3.6 },
  { fixture: "bath_groups", flush: "valve", cold: 6, hot: 3, total: 8 },
  { fixture: "tubs", flush: "tank", cold: 1, hot: 1, total: 1.4 },
  { fixture: "dishwashers", flush: "tank", cold: 0, hot: 1.4, total: 1.4 },
  { fixture: "kitchen_sinks", flush: "tank", cold: 1, hot: 1, total: 1.4 },
  { fixture: "lavatories", flush: "tank", cold: 0.5, hot: 0.5, total: 0.7 },
] as const;

export const IPC_DEMAND = {
  tank: [
    [1, 3],
    [2, 5],
    [4, 8],
    [8, 12.8],
    [15, 17.5],
    [30, 23.3],
    [50, 29.1],
  ],
  valve: [
    [5, 15],
    [7, 19.8],
    [10, 27],
    [15, 31],
    [20, 35],
    [30, 42],
    [50, 50],
  ],
} as const;

export const IPC_REMEMBERED = [
  [3, 6.5],
  [5, 9.4],
  [10, 14.6],
  [20, 19.6],
  [40, 26.3],
  [60, 32],
  [100, 43.5],
] as const;

export const HUNTER_DEMAND = {
  tank: [
    [3, 3],
    [5, 4.5],
    [10, 8],
    [14, 10.5],
    [120, 49],
    [200, 65],
    [300, 85],
  ],
  valve: [
    [5, 22],
    [10, 27],
    [14, 30],
    [120, 74],
    [200, 91],
    [300, 110],
  ],
} as const;

export const HEAD = { rise_ft: 20, psi: 8.66 };

export const NEEDED = [
  ["balanced_shower", 20],
  ["shower", 8],
  ["balanced_tub", 20],
  ["lavatory", 8],
  ["sink", 8],
  ["dishwasher", 8],
  ["laundry", 8],
  ["hose_bibb", 8],
] as const;
