import { humidityRatioFromRelativeHumidity } from "../moist-air.ts";
import { requireWithin } from "../require-within.ts";
import { ATMOSPHERE_kPa } from "../water.ts";
import { checkAir } from "./condenser.ts";
import type { Engine } from "./engine.ts";

/** Air at the unit, held until the next update. */
export interface AirState {
  /** Air that the heat pump draws. */
  dryBulb_C: number;
  humidityRatio: number;
  pressure_kPa: number;
  /** Air around the tank, which takes up its loss; the same air unless the intake is ducted. */
  aroundTank_C: number;
}

/** What the unit did to its surroundings since the last update; the simulation sets it back to zero afterwards. */
export interface RoomExchange {
  /** Heat from the tank's surface and from the electronics into the air around the tank [J]. */
  released_J: number;
  /** Heat taken from the drawn air, sensible and latent together, less the fan's heat [J]. */
  taken_J: number;
  /** Water condensed out of the drawn air [kg]. */
  condensed_kg: number;
  /** Time for which the heat pump ran, and its fan moved air [s]. */
  ran_s: number;
}

/**
 * The seam between the tank and the room. The simulation calls `update` at the start and then every `every_s`, tells
 * what the unit gave and took since, and reads the air back. A plain series ignores the exchange; a room model uses it.
 */
export interface RoomAir {
  readonly every_s: number;
  update(time_s: number, exchange: Readonly<RoomExchange>, air: AirState): void;
}

/** Tells the room what the unit did since the last time, and takes the air from it. */
export function meetRoom(engine: Engine): void {
  const { air, given, roomAir, condenser } = engine;
  roomAir.update(engine.now_s, given, air);
  requireWithin("air dry bulb [C]", air.dryBulb_C, -50, 60);
  requireWithin("air around the tank [C]", air.aroundTank_C, -50, 60);
  given.released_J = 0;
  given.taken_J = 0;
  given.condensed_kg = 0;
  given.ran_s = 0;
  engine.nextAir_s = engine.now_s + roomAir.every_s;
  if (condenser) checkAir(engine, condenser);
}

/**
 * Air that never changes.
 * @param dryBulb_C dry bulb [C], -50..60
 * @param relativeHumidity relative humidity [share], 0..1
 * @param pressure_kPa air pressure [kPa], 50..120
 */
export function steadyAir(dryBulb_C: number, relativeHumidity: number, pressure_kPa = ATMOSPHERE_kPa): RoomAir {
  return airSeries({ every_s: FOREVER_s, dryBulb_C: [dryBulb_C], relativeHumidity: [relativeHumidity], pressure_kPa });
}

/** Long enough that no second update comes; finite, so that sums with it stay numbers. */
const FOREVER_s = 1e12;

/** Air as columns of equal length; each value holds for `every_s`, and the columns repeat when they run out. */
export interface AirColumns {
  readonly every_s: number;
  readonly dryBulb_C: ArrayLike<number>;
  readonly relativeHumidity: ArrayLike<number>;
  readonly pressure_kPa?: number;
  /** Air around the tank, where it is not the air that the heat pump draws. */
  readonly aroundTank_C?: ArrayLike<number>;
}

/** Air that follows columns of numbers, such as the hours of a year. */
export function airSeries(columns: AirColumns): RoomAir {
  const { every_s, dryBulb_C, relativeHumidity, aroundTank_C = dryBulb_C, pressure_kPa = ATMOSPHERE_kPa } = columns;
  const length = dryBulb_C.length;
  if (length === 0 || relativeHumidity.length !== length || aroundTank_C.length !== length)
    throw new RangeError("air columns must be of one length and not empty");
  const humidityRatio = Float64Array.from({ length }, (_, i) => {
    requireWithin("air dry bulb [C]", dryBulb_C[i] ?? Number.NaN, -50, 60);
    requireWithin("air around the tank [C]", aroundTank_C[i] ?? Number.NaN, -50, 60);
    return humidityRatioFromRelativeHumidity(dryBulb_C[i] ?? 0, relativeHumidity[i] ?? Number.NaN, pressure_kPa);
  });
  return {
    every_s,
    update(time_s, _exchange, air) {
      const i = Math.floor(time_s / every_s + 1e-9) % length;
      air.dryBulb_C = dryBulb_C[i] ?? 0;
      air.humidityRatio = humidityRatio[i] ?? 0;
      air.pressure_kPa = pressure_kPa;
      air.aroundTank_C = aroundTank_C[i] ?? 0;
    },
  };
}
