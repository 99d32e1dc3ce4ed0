import type { Check, Outcome } from "./knowledge.ts";

interface Found {
  readonly at: readonly PropertyKey[];
  readonly reason: string;
}
type Ends = NonNullable<Outcome["share"]>;

/**
 * What is wrong with the ranges of a check's outcomes: a reading needs ranges of one scale that cover every number once.
 * @param check as read; outcomes without a range are buttons and stay out of it
 * @returns a line for each fault; none when every number falls in one range
 */
export function problemsOfRanges({ reading, outcomes }: Check): readonly Found[] {
  const ranged = outcomes.flatMap((outcome, index) => (outcome.share || outcome.range ? [{ outcome, index }] : []));
  if (reading === undefined)
    return ranged.map(({ index }) => ({ at: ["outcomes", index], reason: "has a range, but nothing is read" }));
  if (ranged.length < 2) return [{ at: ["outcomes"], reason: "a reading needs two ranges at least" }];
  const isShare = ranged.every(({ outcome }) => outcome.share !== undefined && outcome.range === undefined);
  const isRange = ranged.every(({ outcome }) => outcome.range !== undefined && outcome.share === undefined);
  if (!isShare && !isRange)
    return [{ at: ["outcomes"], reason: "write all ranges as shares of what is expected, or all in the base unit" }];
  return findGaps(ranged.map(({ outcome, index }) => ({ ends: outcome.share ?? outcome.range ?? {}, index })));
}

function findGaps(ranges: readonly { readonly ends: Ends; readonly index: number }[]): readonly Found[] {
  const inOrder = ranges.toSorted((a, b) => lowest(a.ends) - lowest(b.ends));
  return inOrder.flatMap(({ ends, index }, place) => {
    const at = ["outcomes", index];
    const [low, high] = [lowest(ends), highest(ends)];
    const below = inOrder[place - 1];
    const reached = below === undefined ? Number.NEGATIVE_INFINITY : highest(below.ends);
    return [
      ...(low < high ? [] : [{ at, reason: "ends before it begins" }]),
      ...(low > reached ? [{ at, reason: `leaves a gap from ${reached} to ${low}` }] : []),
      ...(low < reached ? [{ at, reason: `overlaps its neighbour from ${low} to ${reached}` }] : []),
      ...(place === inOrder.length - 1 && high !== Number.POSITIVE_INFINITY
        ? [{ at, reason: `leaves everything above ${high} to nobody` }]
        : []),
    ];
  });
}

function lowest({ from }: Ends): number {
  return from ?? Number.NEGATIVE_INFINITY;
}

function highest({ to }: Ends): number {
  return to ?? Number.POSITIVE_INFINITY;
}
