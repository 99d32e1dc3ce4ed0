import type { Chart, ChartSeries } from "../declaration/chart.ts";
import type { RoomCase } from "./room-case.ts";
import { outdoorOf, type RoomDay } from "./room-day.ts";
import { CHILLY_ROOM_C } from "./room-verdict.ts";

export const ROOM_SERIES = ["room", "outdoors", "humidity", "heat_pump", "chilly"] as const;

const DAY_s = 86_400;
const HOUR_s = 3600;
const SHOWN_EVERY_s = 600;

/** The winter day that repeats itself: room, outdoors, humidity, and when the heat pump ran. */
export function chartRoomDay(known: RoomCase, { track, days }: RoomDay): Chart {
  const from_s = (days - 1) * DAY_s;
  const at = (time_s: number) => indexAt(track.time_s, from_s + time_s);
  const times_s = Array.from({ length: DAY_s / SHOWN_EVERY_s }, (_, k) => (k + 1) * SHOWN_EVERY_s);
  const x = times_s.map((time_s) => (time_s - SHOWN_EVERY_s) / HOUR_s);
  const line = (id: string, kind: ChartSeries["kind"], read: (time_s: number) => number): ChartSeries => ({
    id,
    mark: "line",
    kind,
    x,
    y: times_s.map((time_s) => Math.round(read(time_s) * 1000) / 1000),
  });
  const isOn = (time_s: number) => ((track.ran[at(time_s)] ?? 0) > 0.5 ? 1 : 0);
  return {
    id: "day",
    xKind: "hour_of_day",
    series: [
      line("room", "temperature", (time_s) => track.air_C[at(time_s)] ?? 0),
      line("outdoors", "temperature", (time_s) => outdoorOf(known, "winter", time_s)),
      line("humidity", "share", (time_s) => Math.min(1, track.relativeHumidity[at(time_s)] ?? 0)),
      { id: "heat_pump", mark: "strip", kind: "share", x, y: times_s.map(isOn) },
    ],
    marks: [{ id: "chilly", kind: "temperature", value: CHILLY_ROOM_C }],
  };
}

/** The first interval that ends at or after a time; intervals are in order. */
function indexAt(times_s: readonly number[], time_s: number): number {
  let [low, high] = [0, times_s.length - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((times_s[middle] ?? 0) < time_s - 1e-6) low = middle + 1;
    else high = middle;
  }
  return low;
}
