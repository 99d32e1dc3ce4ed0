import type { Verdict } from "../declaration/answer.ts";
import type { Source } from "../declaration/source.ts";
import { toBase } from "../units/convert.ts";
import type { RoomDay } from "./room-day.ts";

/** Air under this is outside what rooms for such units are advised to have all year. */
export const COLDEST_ROOM_C = toBase(40, "F");
export const COLDEST_ROOM: Source = {
  basis: "published",
  document: "ENERGY STAR, considerations for heat pump water heaters",
  section: "air of 40 to 90 °F all year",
};
/** Under this the coil may frost and pipes and people notice; common practice. */
export const CHILLY_ROOM_C = toBase(50, "F");
/** COP lost to the room that is worth a remedy, and that is too much; judgement. */
export const NOTABLE_LOSS = 0.1;
export const TOO_MUCH_LOSS = 0.2;
/** Damp air that lets mould grow on surfaces if it stays; common practice. */
export const DAMP = 0.8;

/** How well a room serves, in numbers. */
export interface RoomScore {
  readonly verdict: Verdict;
  /** COP lost against the same unit in air that it cannot change [share]. */
  readonly loss: number;
  /** True: ducts make the house heat more outdoor air than the unit takes out of its air. */
  readonly costsHeat: boolean;
}

/** Heat a day: for outdoor air that ducts bring into the house, and taken out of the air by the unit [kWh]. */
export interface HeatBill {
  readonly makeUp_kWh: number;
  readonly taken_kWh: number;
}

/** Judges a winter day against the same unit in unlimited air. */
export function scoreRoom({ lowest_C, highestHumidity, summary }: RoomDay, openCop: number, heat: HeatBill): RoomScore {
  const costsHeat = heat.makeUp_kWh > heat.taken_kWh;
  const loss = openCop > 0 ? 1 - summary.systemCop / openCop : 0;
  const isBarred = summary.barredByCold_s > 0;
  if (lowest_C < COLDEST_ROOM_C || isBarred || loss > TOO_MUCH_LOSS) return { verdict: "no", loss, costsHeat };
  const isSoSo = costsHeat || lowest_C < CHILLY_ROOM_C || loss > NOTABLE_LOSS || highestHumidity > DAMP;
  return { verdict: isSoSo ? "caution" : "good", loss, costsHeat };
}
