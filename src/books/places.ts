import type { PlaceClimate } from "../household/mains-temperature.ts";

/** A place the company works in, as the simulation needs it. */
export interface Place extends PlaceClimate {
  readonly id: string;
  readonly name: string;
  /** Air where heaters usually stand, month by month from January [°C]. */
  readonly heaterRoom_C: readonly number[];
  /** Relative humidity of that air [share]. */
  readonly heaterRoomHumidity: number;
}
