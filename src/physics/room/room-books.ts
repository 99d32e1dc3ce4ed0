import type { NeighbourId } from "./room-spec.ts";

/** Running totals of a room. Heat counts from dry air and liquid water at 0 C, so that flows and stores share one zero. */
export interface RoomLedger {
  /** Heat that came in from each neighbour through walls and with warm air, and with the vapour in that air [J]. */
  readonly from_J: Record<NeighbourId, number>;
  readonly vapour_J: Record<NeighbourId, number>;
  heater_J: number;
  gains_J: number;
  released_J: number;
  /** Taken from the room's own air by the heat pump, less the fan's heat [J]. */
  taken_J: number;
  /** Water that came in with air, that the coil took out, and that settled on cold surfaces [kg]. */
  waterIn_kg: number;
  coil_kg: number;
  settled_kg: number;
  /** Everything that moved, to judge a gap by. */
  passed_J: number;
  passed_kg: number;
  seconds: number;
}

export function openRoomLedger(): RoomLedger {
  return {
    from_J: { adjoining: 0, house: 0, outdoors: 0, ground: 0 },
    vapour_J: { adjoining: 0, house: 0, outdoors: 0, ground: 0 },
    heater_J: 0,
    gains_J: 0,
    released_J: 0,
    taken_J: 0,
    waterIn_kg: 0,
    coil_kg: 0,
    settled_kg: 0,
    passed_J: 0,
    passed_kg: 0,
    seconds: 0,
  };
}

/** What the room holds at one moment. */
export interface RoomStore {
  readonly heat_J: number;
  readonly water_kg: number;
}

/** Gaps of the two books, as shares of what passed [-]. */
export interface RoomGaps {
  readonly heatShare: number;
  readonly waterShare: number;
}

const GAP_LIMIT = 1e-9;
/** A room in which less than this passed is judged as if this had [J, kg]. */
const LEAST_PASSED_J = 1e5;
const LEAST_PASSED_kg = 0.01;

/**
 * Closes the energy and water books of a room.
 * @param ledger totals since `start`
 * @param start what the room held then
 * @param end what it holds now
 * @returns both gaps
 * @throws Error where a gap is over 1e-9 of what passed, which would be an error of this program
 * @source first law and mass balance: in - out - stored more = 0
 */
export function closeRoomBooks(ledger: RoomLedger, start: RoomStore, end: RoomStore): RoomGaps {
  const sum = (by: RoomLedger["from_J"]) => Object.values(by).reduce((all_J, one_J) => all_J + one_J, 0);
  const in_J =
    sum(ledger.from_J) + sum(ledger.vapour_J) + ledger.heater_J + ledger.gains_J + ledger.released_J - ledger.taken_J;
  const in_kg = ledger.waterIn_kg - ledger.coil_kg - ledger.settled_kg;
  const held_J = Math.abs(start.heat_J) + Math.abs(end.heat_J);
  const heatShare = Math.abs(in_J - (end.heat_J - start.heat_J)) / Math.max(LEAST_PASSED_J, ledger.passed_J + held_J);
  const water_kg = in_kg - (end.water_kg - start.water_kg);
  const waterShare = Math.abs(water_kg) / Math.max(LEAST_PASSED_kg, ledger.passed_kg + start.water_kg);
  if (!(heatShare <= GAP_LIMIT && waterShare <= GAP_LIMIT))
    throw new Error(`room books do not close: heat ${heatShare}, water ${waterShare} of what passed`);
  return { heatShare, waterShare };
}
