import type { Place } from "../books/places.ts";
import { mainsTemperature_C, midMonthDay } from "./mains-temperature.ts";

/** Water and air that a heater meets in one month. */
export interface Season {
  readonly month: number;
  readonly cold_C: number;
  readonly air_C: number;
  /** Relative humidity of that air [share]. */
  readonly humidity: number;
}

/** Water in the street does not come closer to ice than this; what the simulation takes at the least [C]. */
const COLDEST_MAINS_C = 0.5;
const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const;

/** What a place is like in the middle of a month, 1 = January. */
export function seasonOf(place: Place, month: number): Season {
  const air_C = place.heaterRoom_C[month - 1];
  if (air_C === undefined) throw new RangeError(`${place.id} has no air for month ${month}`);
  return {
    month,
    cold_C: Math.max(COLDEST_MAINS_C, mainsTemperature_C(place, midMonthDay(month))),
    air_C,
    humidity: place.heaterRoomHumidity,
  };
}

/** The month in which water comes in coldest: when a tank has the most to do. */
export function coldestSeason(place: Place): Season {
  return MONTHS.map((month) => seasonOf(place, month)).reduce((a, b) => (b.cold_C < a.cold_C ? b : a));
}
