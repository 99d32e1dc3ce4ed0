import type { WaterHeater } from "../equipment/water-heater.ts";
import type { RoomLedger } from "../physics/room/room-books.ts";
import { openRoom, type RoomTrack, type RoomZone } from "../physics/room/room-zone.ts";
import { type AirState, airSeries, type RoomAir } from "../physics/tank/room-air.ts";
import { simulate } from "../physics/tank/simulate.ts";
import type { RunSummary } from "../physics/tank/summary.ts";
import { toBase } from "../units/convert.ts";
import { drawsOf, sampleDays } from "./cold-risk.ts";
import { describeRoom, type RoomCase, tankSide } from "./room-case.ts";
import { type DuctedAir, unitWithLessAir } from "./room-ducts.ts";
import { outdoorAt_C, ratioAt, type SeasonName } from "./room-weather.ts";
import type { SampledDay } from "./sample-day.ts";

/** A room on one kind of day, repeated until it comes back to where it was. */
export interface RoomDay {
  readonly season: SeasonName;
  /** The measured days, one after the other; the last is the one that a chart shows. */
  readonly track: RoomTrack;
  readonly days: number;
  readonly lowest_C: number;
  readonly mean_C: number;
  readonly highestHumidity: number;
  readonly summary: RunSummary;
  /** Heat that came into the room from each side over the measured days, and what else moved. */
  readonly ledger: RoomLedger;
  readonly air: DuctedAir;
  /** False: the room was still changing from one round of days to the next after the longest try. */
  readonly isSettled: boolean;
}

/** The same room with nothing in it that takes heat. */
export interface StillRoom {
  readonly track: RoomTrack;
  readonly ledger: RoomLedger;
  readonly mean_C: number;
  readonly lowest_C: number;
}

const DAY_s = 86_400;
const MEASURED_DAYS = 2;
const WARM_UP_DAYS = 2;
const MOST_ROUNDS = 4;
/** A room within this from one round to the next has settled [K]; the tank's own rhythm keeps it from being less. */
const SETTLED_K = 0.3;
/** Of so many sampled days the one in the middle by hot water is the day that is repeated. */
const SAMPLED = 21;
const SEED = 1;
/** Showers and sinks, as `size` takes them where nobody says. */
const WANTED_C = toBase(105, "F");

/** The sampled day whose hot water lies in the middle of three weeks. */
export function middlingDay(people: number): SampledDay {
  const days = sampleDays({ people, bathrooms: 2 }, SEED, SAMPLED);
  const ranked = days.toSorted((a, b) => volumeOf(a) - volumeOf(b));
  const middle = ranked[(SAMPLED - 1) / 2];
  if (middle === undefined) throw new RangeError("no days sampled");
  return middle;
}

function volumeOf({ uses }: SampledDay): number {
  return uses.reduce((sum, { flow_L_s, duration_s }) => sum + flow_L_s * duration_s, 0);
}

/**
 * Runs the unit in its room, the same day over and over, until the room begins a round as it ended the last.
 * @param known the case
 * @param season winter or summer day
 * @param day draws of that day
 * @returns room and unit over the last round of two days; energy and water books of the room closed to 1e-9
 * @source tank: `physics/tank/simulate.ts`; room: `physics/room/room-zone.ts`
 */
export function runRoomDay(known: RoomCase, season: SeasonName, day: SampledDay): RoomDay {
  const { spec, air } = describeRoom(known, season);
  const unit = fitUnit(known, season, air);
  const room = openRoom(spec);
  restRoom(room, WARM_UP_DAYS);
  let layers = runDays(known, season, day, unit, room, WARM_UP_DAYS).layersAtEnd_C;
  for (let round = 1; ; round += 1) {
    room.closeAndClear();
    const before_C = room.air_C();
    const run = runDays(known, season, day, unit, room, MEASURED_DAYS, layers);
    layers = run.layersAtEnd_C;
    const isSettled = Math.abs(room.air_C() - before_C) < SETTLED_K;
    if (!isSettled && round < MOST_ROUNDS) continue;
    const { ledger, track } = room.closeAndClear();
    const { summary } = run;
    return { season, track, days: MEASURED_DAYS, ...extremesOf(track), summary, ledger, air, isSettled };
  }
}

/** The room alone on the same kind of day, with cold of the unit and warmth of the tank left out. */
export function runStillRoom(known: RoomCase, season: SeasonName): StillRoom {
  const { spec } = describeRoom(
    { ...known, set: { ...known.set, ducts: { ...known.set.ducts, choice: "none" } } },
    season,
  );
  const room = openRoom(spec);
  restRoom(room, STILL_DAYS);
  room.closeAndClear();
  restRoom(room, 1);
  const { track, ledger } = room.closeAndClear();
  const { lowest_C, mean_C } = extremesOf(track);
  return { track, ledger, lowest_C, mean_C };
}

const STILL_DAYS = 8;

/** The same unit and day in air that it cannot change: that of the room when nothing takes heat from it. */
export function runInStillAir(known: RoomCase, still: StillRoom, season: SeasonName, day: SampledDay): RunSummary {
  const { spec } = describeRoom(known, season);
  const air = airSeries({
    every_s: spec.every_s,
    dryBulb_C: still.track.air_C,
    relativeHumidity: still.track.relativeHumidity.map((share) => Math.min(1, share)),
  });
  const { layersAtEnd_C } = runDays(known, season, day, known.unit, air, WARM_UP_DAYS);
  return runDays(known, season, day, known.unit, air, MEASURED_DAYS, layersAtEnd_C).summary;
}

function runDays(
  known: RoomCase,
  season: SeasonName,
  day: SampledDay,
  unit: WaterHeater,
  air: RoomAir,
  days: number,
  start_C?: ArrayLike<number>,
) {
  const { plan, ...site } = tankSide(known, season);
  const draws = drawsOf(new Array<SampledDay>(days).fill(day), WANTED_C);
  const schedule = { duration_s: days * DAY_s, draws, plan };
  return simulate(unit, { ...site, air }, schedule, start_C ? { start_C } : {});
}

/** The unit with the airflow that its ducts leave, at the air that it will draw. */
function fitUnit(known: RoomCase, season: SeasonName, air: DuctedAir): WaterHeater {
  const { outdoor_C, outdoorHumidity, adjoining_C, adjoiningHumidity } = known.weather[season];
  const { choice, end } = known.set.ducts;
  const isOutdoor = choice !== "exhaust" && end === "outdoors";
  const [t_C, humidity] = isOutdoor ? [outdoor_C, outdoorHumidity] : [adjoining_C, adjoiningHumidity];
  return unitWithLessAir(known.unit, air.airflow_m3_s, t_C, ratioAt(t_C, humidity));
}

/** Lets time pass in a room that nothing is done to. */
function restRoom(room: RoomZone, days: number): void {
  const air: AirState = { dryBulb_C: 0, humidityRatio: 0, pressure_kPa: 0, aroundTank_C: 0 };
  const nothing = { released_J: 0, taken_J: 0, condensed_kg: 0, ran_s: 0 };
  for (let time_s = 0; time_s <= days * DAY_s; time_s += room.every_s) room.update(time_s, nothing, air);
}

function extremesOf({ air_C, relativeHumidity }: RoomTrack) {
  let [lowest_C, sum_C, highestHumidity] = [Number.POSITIVE_INFINITY, 0, 0];
  for (let i = 0; i < air_C.length; i += 1) {
    lowest_C = Math.min(lowest_C, air_C[i] ?? 0);
    sum_C += air_C[i] ?? 0;
    highestHumidity = Math.max(highestHumidity, relativeHumidity[i] ?? 0);
  }
  return { lowest_C, mean_C: sum_C / air_C.length, highestHumidity };
}

/** Outdoor temperature of the hours of a chart. */
export function outdoorOf(known: RoomCase, season: SeasonName, time_s: number): number {
  return outdoorAt_C(known.weather[season], time_s);
}
