import type { Source } from "../declaration/source.ts";

export const AMPACITY_TABLE: Source = {
  basis: "published",
  document: "NEC (NFPA 70)",
  edition: "2023",
  section: "Table 310.16, up to three conductors, 30 °C",
};
export const RESISTANCE_TABLE: Source = {
  basis: "published",
  document: "NEC (NFPA 70)",
  edition: "2023",
  section: "Chapter 9 Table 8, stranded, uncoated, 75 °C",
};

export const WIRE_SIZES = ["14", "12", "10", "8", "6", "4"] as const;
export type WireSize = (typeof WIRE_SIZES)[number];
export const WIRE_METALS = ["copper", "aluminium"] as const;
export type WireMetal = (typeof WIRE_METALS)[number];
/** Temperature rating of the column [°C]. */
export const COLUMNS = ["60", "75", "90"] as const;
export type Column = (typeof COLUMNS)[number];

export interface ConductorRow {
  /** American Wire Gauge number. */
  readonly size: WireSize;
  readonly ampacity_A: Readonly<Record<Column, number>>;
  /** Highest breaker for a small conductor, NEC 240.4(D). */
  readonly smallLimit_A?: number;
  /** Direct-current resistance [ohm per 1000 ft], as printed. */
  readonly ohmPer1000Ft: number;
}

const row = (
  size: WireSize,
  [a60, a75, a90]: readonly [number, number, number],
  ohmPer1000Ft: number,
  smallLimit_A?: number,
): ConductorRow => ({
  size,
  ampacity_A: { "60": a60, "75": a75, "90": a90 },
  ohmPer1000Ft,
  ...(smallLimit_A === undefined ? {} : { smallLimit_A }),
});

/** Ampacity NEC 2023 Table 310.16; small-conductor limits NEC 240.4(D); resistance NEC Chapter 9 Table 8. Thinnest first. */
export const CONDUCTORS: Readonly<Record<WireMetal, readonly ConductorRow[]>> = {
  copper: [
    row("14", [15, 20, 25], 3.14, 15),
    row("12", [20, 25, 30], 1.98, 20),
    row("10", [30, 35, 40], 1.24, 30),
    row("8", [40, 50, 55], 0.778),
    row("6", [55, 65, 75], 0.491),
    row("4", [70, 85, 95], 0.308),
  ],
  aluminium: [
    row("12", [15, 20, 25], 3.25, 15),
    row("10", [25, 30, 35], 2.04, 25),
    row("8", [35, 40, 45], 1.28),
    row("6", [40, 50, 55], 0.808),
    row("4", [55, 65, 75], 0.508),
  ],
};

/** Standard breaker ratings [A], NEC 2023 240.6(A). */
export const STANDARD_BREAKERS_A: readonly number[] = [
  15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200,
];
