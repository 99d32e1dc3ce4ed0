import type { RunSummary } from "../physics/tank/summary.ts";
import type { RoomCase } from "./room-case.ts";
import { middlingDay, type RoomDay, runInStillAir, runRoomDay, runStillRoom, type StillRoom } from "./room-day.ts";
import { capacityLeft } from "./room-ducts.ts";
import { type HeatingPenalty, heatBill, heatingPenalty } from "./room-side.ts";
import { type RoomScore, scoreRoom } from "./room-verdict.ts";
import type { SampledDay } from "./sample-day.ts";

/** Everything that the coupled days say of one room. */
export interface RoomOutcome {
  readonly day: SampledDay;
  readonly winter: RoomDay;
  readonly summer: RoomDay;
  readonly still: StillRoom;
  /** The same unit in air that it cannot change. */
  readonly open: RunSummary;
  readonly score: RoomScore;
  readonly penalty: HeatingPenalty;
  /** Heat of the unit with the air that its ducts leave, over all of its air [share]. */
  readonly ductedShare: number;
}

/** Runs the room on a winter and a summer day, without the unit, and the unit without the room. */
export function measureRoom(known: RoomCase): RoomOutcome {
  const day = middlingDay(known.people);
  const winter = runRoomDay(known, "winter", day);
  const still = runStillRoom(known, "winter");
  const open = runInStillAir(known, still, "winter", day);
  return {
    day,
    winter,
    summer: runRoomDay(known, "summer", day),
    still,
    open,
    score: scoreRoom(winter, open.systemCop, heatBill(known, winter)),
    penalty: heatingPenalty(known, winter, still),
    ductedShare: capacityLeft(known.unit, winter.air.airflow_m3_s, still.mean_C, STILL_HUMIDITY),
  };
}

/** Middling room air, at which the cost of less airflow is quoted [-]. */
const STILL_HUMIDITY = 0.0045;
