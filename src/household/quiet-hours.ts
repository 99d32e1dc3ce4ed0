import type { HotWaterUse, SampledDay } from "./sample-day.ts";

const HOUR_s = 3600;
/** Washing machines start at two in the afternoon, one an hour; dishwashers fill from ten at night on, every ten minutes: judgement. */
const WASHERS_FROM_s = 14 * HOUR_s;
const DISHES_FROM_s = 22 * HOUR_s;
const NEXT_WASHER_s = HOUR_s;
const NEXT_FILL_s = 600;
const DAY_s = 86_400;

/** The same day with washing machines and dishwashers moved to hours in which few people draw hot water. */
export function moveToQuietHours(day: SampledDay): SampledDay {
  const moved = [
    ...day.uses.filter(({ use }) => use !== "clothes_washer" && use !== "dishwasher"),
    ...lineUp(day.uses, "clothes_washer", WASHERS_FROM_s, NEXT_WASHER_s),
    ...lineUp(day.uses, "dishwasher", DISHES_FROM_s, NEXT_FILL_s),
  ];
  return { ...day, uses: moved.sort((a, b) => a.start_s - b.start_s) };
}

function lineUp(
  uses: readonly HotWaterUse[],
  which: HotWaterUse["use"],
  from_s: number,
  next_s: number,
): readonly HotWaterUse[] {
  return uses
    .filter(({ use }) => use === which)
    .map((one, place) => ({ ...one, start_s: Math.min(from_s + place * next_s, DAY_s - one.duration_s) }));
}
