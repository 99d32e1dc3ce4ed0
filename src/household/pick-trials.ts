import { POLICIES } from "../equipment/policies.ts";
import type { Draws } from "../physics/tank/draw-list.ts";
import { airSeries, steadyAir } from "../physics/tank/room-air.ts";
import type { Site } from "../physics/tank/simulate.ts";
import { makeTrace } from "../physics/tank/trace.ts";
import { DAY_s, DAYS_A_YEAR, HOUR_s, HOURS_A_DAY } from "./calendar.ts";
import { type ColdRisk, drawsOf, findColdRisk, sampleDays } from "./cold-risk.ts";
import { type Candidate, needsValve, type PickCase, type Setting } from "./pick-case.ts";
import { priceHours } from "./price-year.ts";
import { type Household, sampleDay } from "./sample-day.ts";
import { SEED, VALVE_C } from "./size-case.ts";
import { dailyAir_C, dailyMains_C, type SampledYear, sampleYear, simulateYear, YEAR_SEED } from "./year.ts";

/** A first look at one way to run a model: a few days, enough to see what is not worth a year. */
export interface Look extends Setting {
  readonly coldDays: number;
  readonly days: number;
  /** A year's cost by the days looked at; nothing where the few days show already that somebody runs cold too often. */
  readonly cost_usd: number | undefined;
}
export interface ModelLooks {
  readonly model: string;
  readonly looks: readonly Look[];
}
/** How often a household runs cold with one way to run a model. */
export interface Chance extends Setting {
  readonly coldDays: number;
  readonly days: number;
  readonly share: number;
  readonly error: number;
  readonly low: number;
  readonly high: number;
}
/** The best way to run a model, with its full sample and its year. */
export interface Finalist extends Chance {
  readonly model: string;
  /** True: the chance is under the limit with 95 % confidence; else it is too close to call. */
  readonly isSure: boolean;
  readonly cost_usd: number;
  readonly energy_kWh: number;
  readonly cop: number;
}
export interface ModelTrials {
  readonly model: string;
  /** Nothing where every way to run it runs cold too often. */
  readonly best: Finalist | undefined;
  /** The way that runs cold least often. */
  readonly warmest: Chance;
}

/** Of the year every so many days are looked at: 23 days, each day of the week in turn. */
const LOOK_EVERY_DAYS = 16;
const FIRST_LOOK_DAY = 8;
/** Days of the coldest month that are looked at first. */
const COLD_LOOK_DAYS = 30;
/** Where the first look leans to cold, so many days more are tried before the full sample. */
const LEANING_DAYS = 80;
/**
 * What a first look may be wrong by, between two ways to run one model whose costs are near each other [share]. Beside
 * whole years of the demo models it was 0.5 to 5 percent, and 7 where one of the two ran its elements at dear hours.
 */
const LOOK_ERROR = 0.04;
/** Where the cheapest way is too close to call, a sure one is taken if it costs at most this much more: judgement [share]. */
const WORTH_BEING_SURE = 0.1;

/** The days of a first look, drawn and listed once for many models. */
export interface LookSample {
  readonly yearDays: readonly number[];
  readonly yearDraws: Draws;
  readonly yearSite: Omit<Site, "supply_V">;
  readonly coldDays: number;
  readonly coldDraws: Draws;
}
/** The full samples, drawn and listed once. */
export interface FullSample {
  readonly year: SampledYear;
  readonly coldDraws: Draws;
  /** The first days of those, where there are more. */
  readonly leaningDraws: Draws;
}

/** Draws a few days of the year, each with its own water and air, and a few of the month that counts. */
export function drawLookSample(known: PickCase): LookSample {
  const { place, facts } = known;
  const household = householdOf(known);
  const count = Math.ceil((DAYS_A_YEAR - FIRST_LOOK_DAY) / LOOK_EVERY_DAYS);
  const yearDays = Array.from({ length: count }, (_, index) => FIRST_LOOK_DAY + index * LOOK_EVERY_DAYS);
  const sampled = yearDays.map((day) => sampleDay(household, YEAR_SEED, day));
  const ofDays = (daily: Float64Array) => Float64Array.from(yearDays, (day) => daily[day] ?? Number.NaN);
  const relativeHumidity = new Float64Array(count).fill(place.heaterRoomHumidity);
  const coldDays = Math.min(COLD_LOOK_DAYS, facts.days);
  return {
    yearDays,
    yearDraws: drawsOf(sampled, facts.wanted_C),
    yearSite: {
      inlet_C: { every_s: DAY_s, values: ofDays(dailyMains_C(place)) },
      air: airSeries({ every_s: DAY_s, dryBulb_C: ofDays(dailyAir_C(place)), relativeHumidity }),
    },
    coldDays,
    coldDraws: drawsOf(sampleDays(household, SEED, coldDays), facts.wanted_C),
  };
}

export function drawFullSample(known: PickCase): FullSample {
  const { wanted_C, days } = known.facts;
  const household = householdOf(known);
  const cold = sampleDays(household, SEED, days);
  return {
    year: sampleYear(household, wanted_C),
    coldDraws: drawsOf(cold, wanted_C),
    leaningDraws: drawsOf(cold.slice(0, LEANING_DAYS), wanted_C),
  };
}

/** A first look at every way to run a model. */
export function lookAtModel(known: PickCase, sample: LookSample, candidate: Candidate): ModelLooks {
  const looks = candidate.settings.map((setting): Look => {
    const risk = countCold(known, candidate, setting, sample.coldDraws, sample.coldDays);
    const { coldDays, days } = risk;
    const cost_usd = risk.low > known.facts.limit ? undefined : lookAtCost(known, sample, candidate, setting);
    return { ...setting, coldDays, days, cost_usd };
  });
  return { model: candidate.model.id, looks };
}

/** A year's cost by a few days of it, each priced as the day it is; the same days for everything that is compared. */
function lookAtCost(known: PickCase, sample: LookSample, candidate: Candidate, setting: Setting): number {
  const { yearDays, yearDraws } = sample;
  const days = yearDays.length;
  const trace = makeTrace(days * DAY_s, HOUR_s);
  const site = { ...sample.yearSite, supply_V: candidate.supply_V, ...valveOf(known, setting) };
  findColdRisk({ ...runOf(known, candidate, setting), site, days, draws: yearDraws }, { trace });
  const looked_usd = yearDays.reduce((sum, day, index) => {
    const hours_kWh = trace.electricity_kWh.subarray(index * HOURS_A_DAY, (index + 1) * HOURS_A_DAY);
    return sum + priceHours(hours_kWh, known.plan, day).total_usd;
  }, 0);
  return (looked_usd * DAYS_A_YEAR) / days;
}

/** A way that was tried in full, with what it looked to cost. */
interface Trial {
  readonly looked_usd: number;
  readonly chance: Chance;
}

/**
 * Finds the cheapest way to run a model that keeps the household in hot water: the full sample for the ways that look
 * cheapest until one serves, then a whole year for all that looked as cheap as that one.
 * @param looks what the first look at this model came to
 * @returns the best way with its sample and its year, and the way that runs cold least often
 * @source days and years: `findColdRisk`, `simulateYear`; confidence: `shareInterval`
 * @limits a way that looked dearer by more than the look's error is not tried; one sample, one year
 */
export function tryModel(known: PickCase, sample: FullSample, candidate: Candidate, looks: ModelLooks): ModelTrials {
  const trials: Trial[] = [];
  let most_usd = Number.POSITIVE_INFINITY;
  for (const look of looks.looks.toSorted(byCost)) {
    const { cost_usd: looked_usd } = look;
    if (looked_usd === undefined || looked_usd > most_usd) break;
    const chance = leanChance(known, sample, candidate, look) ?? chanceOf(known, sample, candidate, look);
    trials.push({ looked_usd, chance });
    const margin = isSure(chance, known) ? 1 : 1 + WORTH_BEING_SURE;
    if (serves(chance, known)) most_usd = Math.min(most_usd, looked_usd * margin * (1 + LOOK_ERROR));
  }
  const warmest =
    leastCold(trials.map(({ chance }) => chance)) ?? chanceOf(known, sample, candidate, leastColdLook(looks));
  const years = finalistsOf(known, trials).map(({ chance }) => runYear(known, sample, candidate, chance));
  const [first, ...others] = years;
  const best = first && others.reduce((a, b) => (b.cost_usd < a.cost_usd ? b : a), first);
  return { model: candidate.model.id, best, warmest };
}

/** The ways that are worth a year: as cheap as the cheapest that serves, or as the cheapest sure one if it is near. */
function finalistsOf(known: PickCase, trials: readonly Trial[]): readonly Trial[] {
  const serving = trials.filter(({ chance }) => serves(chance, known));
  const sure = serving.filter(({ chance }) => isSure(chance, known));
  const cheapest_usd = Math.min(...serving.map(({ looked_usd }) => looked_usd));
  const sure_usd = Math.min(...sure.map(({ looked_usd }) => looked_usd));
  const isNear = sure_usd <= cheapest_usd * (1 + WORTH_BEING_SURE);
  const most_usd = (isNear ? sure_usd : cheapest_usd) * (1 + LOOK_ERROR);
  return (isNear ? sure : serving).filter(({ looked_usd }) => looked_usd <= most_usd);
}

function runYear(known: PickCase, { year }: FullSample, candidate: Candidate, chance: Chance): Finalist {
  const { model, supply_V } = candidate;
  const { unit, plan } = runOf(known, candidate, chance);
  const run = simulateYear({ unit, plan, supply_V, place: known.place, ...valveOf(known, chance) }, year);
  return {
    ...chance,
    model: model.id,
    isSure: isSure(chance, known),
    cost_usd: priceHours(run.hourly_kWh, known.plan).total_usd,
    energy_kWh: run.summary.electricity_kWh,
    cop: run.summary.systemCop,
  };
}

function serves({ share }: Chance, { facts }: PickCase): boolean {
  return share <= facts.limit;
}

function isSure({ high }: Chance, { facts }: PickCase): boolean {
  return high <= facts.limit;
}

/** The chance by fewer days, where those show already that somebody runs cold too often; else nothing. */
function leanChance(known: PickCase, sample: FullSample, candidate: Candidate, look: Look): Chance | undefined {
  const { limit, days } = known.facts;
  if (days <= LEANING_DAYS || look.coldDays <= limit * look.days) return undefined;
  const chance = chanceOf(known, { coldDraws: sample.leaningDraws }, candidate, look, LEANING_DAYS);
  return chance.low > limit ? chance : undefined;
}

function chanceOf(
  known: PickCase,
  { coldDraws }: Pick<FullSample, "coldDraws">,
  candidate: Candidate,
  { mode, setpoint_C }: Setting,
  days = known.facts.days,
): Chance {
  const risk = countCold(known, candidate, { mode, setpoint_C }, coldDraws, days);
  const { coldDays, share, error, low, high } = risk;
  return { mode, setpoint_C, coldDays, days, share, error, low, high };
}

function countCold(known: PickCase, candidate: Candidate, setting: Setting, draws: Draws, days: number): ColdRisk {
  const { cold_C: inlet_C, air_C, humidity } = known.season;
  const site = { supply_V: candidate.supply_V, inlet_C, air: steadyAir(air_C, humidity), ...valveOf(known, setting) };
  return findColdRisk({ ...runOf(known, candidate, setting), site, days, draws });
}

function runOf(known: PickCase, { model }: Candidate, { mode, setpoint_C }: Setting) {
  return {
    unit: model.heater,
    plan: [{ from_s: 0, policy: POLICIES[mode], setpoint_C }] as const,
    household: householdOf(known),
    wanted_C: known.facts.wanted_C,
    seed: SEED,
  };
}

/** A tank that is kept hotter than taps may get is run behind the mixing valve that it needs. */
function valveOf({ facts }: PickCase, setting: Setting): Pick<Site, "mixingValve_C"> {
  if (!needsValve(setting) && facts.mixing_valve !== true) return {};
  return { mixingValve_C: Math.min(VALVE_C, setting.setpoint_C) };
}

function householdOf({ people, facts }: PickCase): Household {
  return { people, bathrooms: facts.bathrooms };
}

/** The cheapest first; what runs cold too often at a first look last. */
export function byCost(a: Pick<Look, "cost_usd">, b: Pick<Look, "cost_usd">): number {
  const { POSITIVE_INFINITY: never } = Number;
  return (a.cost_usd ?? never) === (b.cost_usd ?? never) ? 0 : (a.cost_usd ?? never) - (b.cost_usd ?? never);
}

function leastCold<T extends Pick<Chance, "coldDays" | "days">>(all: readonly T[]): T | undefined {
  const share = ({ coldDays, days }: T) => coldDays / days;
  return all.reduce<T | undefined>((least, one) => (least && share(least) <= share(one) ? least : one), undefined);
}

function leastColdLook({ looks, model }: ModelLooks): Look {
  const least = leastCold(looks);
  if (least === undefined) throw new Error(`${model} was not looked at`);
  return least;
}
