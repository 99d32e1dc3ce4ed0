import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";

/** The uses that the worksheet counts. */
export const WORKSHEET_USES = ["shower", "shave", "hand_dishes", "dishwasher", "clothes_washer"] as const;
export type WorksheetUse = (typeof WORKSHEET_USES)[number];
export type UseCounts = Readonly<Partial<Record<WorksheetUse, number>>>;

interface Edition {
  /** Gallons of hot water a use. */
  readonly gallons: Readonly<Record<WorksheetUse, number>>;
  readonly source: Source;
}
const DOCUMENT = "US Department of Energy, first-hour rating worksheet";

/** Editions of the worksheet that are told apart because their numbers differ by half. */
export const WORKSHEET_EDITIONS = {
  present: {
    gallons: { shower: 20, shave: 2, hand_dishes: 3, dishwasher: 7, clothes_washer: 15 },
    source: {
      basis: "from_memory",
      document: DOCUMENT,
      edition: "present page",
      section: "clothes washer: 15 gal is the horizontal-axis line, a top loader counts 25",
    },
  },
  middle: {
    gallons: { shower: 10, shave: 2, hand_dishes: 4, dishwasher: 6, clothes_washer: 7 },
    source: { basis: "published", document: DOCUMENT, edition: "ten-gallon shower, as kept in three trade copies" },
  },
} as const satisfies Record<string, Edition>;
export type WorksheetEdition = keyof typeof WORKSHEET_EDITIONS;

/**
 * Hot water that a household says it uses in its busiest hour.
 * @param counts how often each use happens in that hour, 0..20
 * @param edition which edition of the worksheet to follow
 * @returns volume of hot water [L]
 * @source sum of uses times gallons a use, US DOE first-hour rating worksheet, edition named
 * @limits counts whole uses; the editions differ by a factor of two on showers, so name the one followed
 */
export function peakHourDemand_L(counts: UseCounts, edition: WorksheetEdition): number {
  const { gallons } = WORKSHEET_EDITIONS[edition];
  const total_gal = WORKSHEET_USES.reduce((sum, use) => {
    const count = counts[use] ?? 0;
    if (!(count >= 0 && count <= 20)) throw new RangeError(`${use} must lie in 0..20, got ${count}`);
    return sum + count * gallons[use];
  }, 0);
  return toBase(total_gal, "gal");
}
