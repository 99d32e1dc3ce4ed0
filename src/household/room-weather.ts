import type { Place } from "../books/places.ts";
import { humidityRatioFromRelativeHumidity } from "../physics/moist-air.ts";
import { ROOM_PRESSURE_kPa } from "../physics/room/room-spec.ts";
import { toBase } from "../units/convert.ts";

export type SeasonName = "winter" | "summer";

/** What stands around a room on one day. */
export interface RoomWeather {
  /** Outdoors: mean of the day and how far it swings to both sides. */
  readonly outdoor_C: number;
  readonly swing_K: number;
  readonly outdoorHumidity: number;
  readonly ground_C: number;
  /** Heated rooms of the house. */
  readonly house_C: number;
  readonly houseHumidity: number;
  /** Space behind the door. */
  readonly adjoining_C: number;
  readonly adjoiningHumidity: number;
}

/** A cold day lies this far under the mean of the coldest month; from memory of design tables, which give 8 to 12 K. */
export const COLD_DAY_K = 8;
/** Swing of a day to both sides of its mean [K]; from memory, half of a usual daily range. */
const SWING_K = { winter: 4, summer: 5.5 } as const;
/** Outdoor air at its mean: damp in winter, middling in summer; from memory. */
const OUTDOOR_HUMIDITY = { winter: 0.8, summer: 0.65 } as const;
/** House by its thermostat: common practice. */
const HOUSE_C = { winter: toBase(68, "F"), summer: toBase(76, "F") } as const;
const HOUSE_HUMIDITY = { winter: 0.35, summer: 0.55 } as const;
/** Ground around a basement follows the year with a third of its swing, late; common practice. */
const GROUND_SHARE = 0.3;
const GROUND_ABOVE_K = 2;
/** Without a place of the books: a cold inland town. */
const NO_PLACE = { yearMean_C: toBase(50, "F"), monthlySpan_K: toBase(50, "F_diff"), room_C: toBase(60, "F") } as const;

/** Told temperatures that stand instead of the place's. */
export interface ToldAir {
  readonly outdoor_C: number | undefined;
  readonly adjoining_C: number | undefined;
}

/**
 * A cold winter day or a warm summer day at a place.
 * @param place climate and the air where heaters stand; a cold inland town where absent
 * @param told what was told for the winter day
 * @param isAdjoiningHeated the space behind the door is part of the heated house
 * @source monthly means of the place; swings and humidities are common practice, each beside its constant
 * @limits one kind of day, repeated; no wind, no sun
 */
export function weatherOf(
  place: Place | undefined,
  season: SeasonName,
  told: ToldAir,
  isAdjoiningHeated: boolean,
): RoomWeather {
  const { yearMean_C, monthlySpan_K } = place ?? NO_PLACE;
  const isWinter = season === "winter";
  const sign = isWinter ? -1 : 1;
  const usual_C = yearMean_C + (sign * monthlySpan_K) / 2 - (isWinter ? COLD_DAY_K : 0);
  const outdoor_C = isWinter ? (told.outdoor_C ?? usual_C) : usual_C;
  const months = place?.heaterRoom_C ?? [NO_PLACE.room_C];
  const unheated_C = isWinter ? Math.min(...months) : Math.max(...months);
  const beside_C = isAdjoiningHeated ? HOUSE_C[season] : unheated_C;
  return {
    outdoor_C,
    swing_K: SWING_K[season],
    outdoorHumidity: OUTDOOR_HUMIDITY[season],
    ground_C: yearMean_C + GROUND_ABOVE_K + (sign * GROUND_SHARE * monthlySpan_K) / 2,
    house_C: HOUSE_C[season],
    houseHumidity: HOUSE_HUMIDITY[season],
    adjoining_C: isWinter ? (told.adjoining_C ?? beside_C) : Math.max(beside_C, told.adjoining_C ?? beside_C),
    adjoiningHumidity: isAdjoiningHeated ? HOUSE_HUMIDITY[season] : (place?.heaterRoomHumidity ?? 0.5),
  };
}

const DAY_s = 86_400;
const COLDEST_AT_s = 5 * 3600;

/** Outdoor temperature at a time of the day, coldest at five in the morning. */
export function outdoorAt_C({ outdoor_C, swing_K }: RoomWeather, time_s: number): number {
  return outdoor_C - swing_K * Math.cos((2 * Math.PI * (time_s - COLDEST_AT_s)) / DAY_s);
}

/** Humidity ratio of air at a temperature and relative humidity, at the pressure of every room here. */
export function ratioAt(t_C: number, humidity: number): number {
  return humidityRatioFromRelativeHumidity(t_C, humidity, ROOM_PRESSURE_kPa);
}
