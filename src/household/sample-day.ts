import { toBase } from "../units/convert.ts";
import { bedroomsFor } from "./daily-use.ts";
import { HOURLY_SHARES } from "./hourly-shares-table.ts";
import { drawCount, drawIndex, drawPositive, openRandomStream, type RandomStream } from "./random.ts";
import { DAILY_VOLUMES, SHOWERS_A_PERSON, USE_HABITS, USES, type Use } from "./use-habits-table.ts";

/** Who lives there and how they use hot water. */
export interface Household {
  readonly people: number;
  /** How many showers may run at once; later ones wait their turn. */
  readonly bathrooms: number;
  /** Mean shower, when it is known better than the published mean. */
  readonly shower_s?: number;
  readonly showerFlow_L_s?: number;
}
/** One opening of a tap. */
export interface HotWaterUse {
  readonly use: Use;
  readonly start_s: number;
  readonly duration_s: number;
  /** Flow at the fixture; mixed to the wanted temperature when `isMixed`, else plain hot water. */
  readonly flow_L_s: number;
  readonly isMixed: boolean;
}
export interface SampledDay {
  readonly isWeekend: boolean;
  readonly uses: readonly HotWaterUse[];
}

const DAY_s = 86_400;
const HOUR_s = 3_600;
/** Time to change over between two showers in one bathroom: judgement. */
const CHANGEOVER_s = 120;
/** No single event runs longer: judgement, keeps the tail of the spread from flooding a day. */
const LONGEST_s = 2_400;
/** A dishwasher fills about three times a load, a quarter of an hour apart: judgement. */
const DISHWASHER_FILLS = 3;
const FILL_GAP_s = 900;

/**
 * One day of hot-water use, drawn from published means and spreads; the same for the same seed and day.
 * @param household who lives there
 * @param seed whole number that names the sample
 * @param day index of the day; days 5 and 6 of each seven are the weekend
 * @returns uses in order of their start; uses may overlap, showers only up to the number of bathrooms
 * @source event means and spreads in `use-habits-table.ts`; hours in `hourly-shares-table.ts`
 * @limits all uses share one daily shape, so a family that showers together in half an hour is drawn too seldom
 */
export function sampleDay(household: Household, seed: number, day: number): SampledDay {
  const random = openRandomStream(seed, day);
  const isWeekend = day % 7 >= 5;
  const shares = isWeekend ? HOURLY_SHARES.weekend : HOURLY_SHARES.weekday;
  const uses = USES.flatMap((use) => drawUses(random, use, household, shares));
  const queued = queueShowers(uses, household.bathrooms);
  return { isWeekend, uses: queued.sort((a, b) => a.start_s - b.start_s) };
}

function drawUses(random: RandomStream, use: Use, household: Household, shares: readonly number[]): HotWaterUse[] {
  const { flow_L_s: mean_L_s, flowDeviation_L_s, duration_s, durationDeviation_s, isMixed } = habitOf(use, household);
  const fills = use === "dishwasher" ? DISHWASHER_FILLS : 1;
  const events = drawCount(random, eventsADay(use, household));
  const uses: HotWaterUse[] = [];
  for (let event = 0; event < events; event++) {
    const start_s = (drawIndex(random, shares) + random.next()) * HOUR_s;
    const flow_L_s = drawPositive(random, mean_L_s, flowDeviation_L_s);
    for (let fill = 0; fill < fills; fill++)
      uses.push({
        use,
        start_s: (start_s + fill * FILL_GAP_s) % DAY_s,
        duration_s: Math.min(LONGEST_s, drawPositive(random, duration_s, durationDeviation_s)),
        flow_L_s,
        isMixed,
      });
  }
  return uses;
}

function habitOf(use: Use, household: Household) {
  const habit = USE_HABITS[use];
  if (use !== "shower") return habit;
  return {
    ...habit,
    duration_s: household.shower_s ?? habit.duration_s,
    flow_L_s: household.showerFlow_L_s ?? habit.flow_L_s,
  };
}

/** Mean number of events a day of one kind of use in this household. */
export function eventsADay(use: Use, household: Household): number {
  if (use === "shower") return SHOWERS_A_PERSON.value * household.people;
  const { base, each } = DAILY_VOLUMES.values[use];
  const habit = USE_HABITS[use];
  const fills = use === "dishwasher" ? DISHWASHER_FILLS : 1;
  const volume_L = toBase(base + each * bedroomsFor(household.people), "gal");
  return volume_L / (habit.flow_L_s * habit.duration_s * fills);
}

/** Showers beyond the number of bathrooms wait until one is free; nobody is moved past midnight. */
function queueShowers(uses: readonly HotWaterUse[], bathrooms: number): HotWaterUse[] {
  const freeAt_s = new Array<number>(Math.max(1, bathrooms)).fill(0);
  const showers = uses.filter(({ use }) => use === "shower").sort((a, b) => a.start_s - b.start_s);
  const queued = showers.map((shower) => {
    const soonest = freeAt_s.indexOf(Math.min(...freeAt_s));
    const start_s = Math.min(Math.max(shower.start_s, freeAt_s[soonest] ?? 0), DAY_s - shower.duration_s);
    freeAt_s[soonest] = start_s + shower.duration_s + CHANGEOVER_s;
    return { ...shower, start_s };
  });
  return [...uses.filter(({ use }) => use !== "shower"), ...queued];
}
